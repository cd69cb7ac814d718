/** How long work beside the screen may go on before the page may do something else: half a frame at 60 a second. */
export const sliceMs = 8;

/** Resolves when the page has had its turn. */
export const otherWork = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Does work a slice at a time: between two of its steps the page may have its turn. */
export async function inSlices<Result>(steps: Iterator<unknown, Result, undefined>): Promise<Result> {
	for (let until = performance.now() + sliceMs; ;) {
		const step = steps.next();
		if (step.done) return step.value;
		if (performance.now() < until) continue;
		await otherWork();
		until = performance.now() + sliceMs;
	}
}
