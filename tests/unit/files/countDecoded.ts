import { onTestFinished, vi } from 'vitest';

/** Counts from now on how often bytes become text, whoever makes them so, until the test is over. */
export function countDecoded(): () => number {
	const decode = vi.spyOn(TextDecoder.prototype, 'decode');
	onTestFinished(() => {
		decode.mockRestore();
	});
	return () => decode.mock.calls.filter(([bytes]) => bytes !== undefined).length;
}
