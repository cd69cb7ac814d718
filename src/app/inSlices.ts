/** How long work beside the screen may go on before the page may do something else: half a frame at 60 a second. */
export const sliceMs = 8;

/** How much of a text is held until it goes into a file: less at a time makes a file of thousands of parts. */
const longestText = 100_000;

/** Resolves when the page has had its turn. */
export const otherWork = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/**
 * Does work a slice at a time: between two of its steps the page may have its turn.
 * @throws what a signal is aborted with, at the end of a slice
 */
export async function inSlices<Result>(
	steps: Iterator<unknown, Result, undefined>,
	signal?: AbortSignal,
): Promise<Result> {
	for (let until = performance.now() + sliceMs; ;) {
		const step = steps.next();
		if (step.done) return step.value;
		if (performance.now() < until) continue;
		await otherWork();
		signal?.throwIfAborted();
		until = performance.now() + sliceMs;
	}
}

/** Writes a text a slice at a time, for a file. */
export async function writtenInSlices(pieces: Iterable<string>, signal?: AbortSignal): Promise<Blob> {
	const written: Blob[] = [];
	let text = '';
	await inSlices(
		(function* () {
			for (const piece of pieces) {
				text += piece;
				yield;
				if (text.length < longestText) continue;
				written.push(new Blob([text]));
				text = '';
			}
		})(),
		signal,
	);
	return new Blob([...written, text]);
}
