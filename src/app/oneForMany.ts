/**
 * Work that is asked for more often than it need be done: asked for while it is under way, it is done once more after.
 * @returns asks for it; resolves when all that was asked for until then is done
 */
export function oneForMany(work: () => Promise<void>): () => Promise<void> {
	let running: Promise<void> | undefined;
	let next: Promise<void> | undefined;
	const run = (): Promise<void> => {
		next = undefined;
		running = work().finally(() => (running = undefined));
		return running;
	};
	return () => {
		if (running === undefined) return run();
		const again = () => run();
		return (next ??= running.then(again, again));
	};
}
