/**
 * Run in a page before the app: what plans boards, sticks and the order of the bench never answers there, as if it took
 * long. All other workers do their work.
 */
export function planNothing(): void {
	const planner = /\b(packing|sticks|ordering)\.worker\b/;
	const silent = () => Object.assign(new EventTarget(), { postMessage: () => undefined, terminate: () => undefined });
	globalThis.Worker = new Proxy(Worker, {
		construct: (worker, given) =>
			planner.test(String(given[0])) ? silent() : (Reflect.construct(worker, given) as Worker),
	});
}
