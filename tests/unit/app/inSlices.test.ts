import { expect, test, vi } from 'vitest';
import { inSlices, sliceMs, writtenInSlices } from '../../../src/app/inSlices.ts';

test('long work lets the page have its turn, and gives its result', async () => {
	let done = 0;
	function* work() {
		for (; done < 6; done++) {
			for (const until = performance.now() + sliceMs; performance.now() < until;);
			yield;
		}
		return 'all';
	}
	const turns: number[] = [];
	const timer = setInterval(() => turns.push(done));
	expect(await inSlices(work())).toBe('all');
	clearInterval(timer);
	expect(turns.some((at) => at > 0 && at < 6)).toBe(true);
});

/** Pieces that each take half a slice, and how many have been written. */
function slowPieces(count: number) {
	let now = 0;
	vi.spyOn(performance, 'now').mockImplementation(() => now);
	const written = { count: 0 };
	const pieces = (function* () {
		for (; written.count < count; written.count++) {
			now += sliceMs / 2;
			yield `${written.count}`;
		}
	})();
	return { written, pieces };
}

test('a text is written a slice at a time, with the page’s turn in between', async () => {
	const { written, pieces } = slowPieces(9);
	let turns = 0;
	const turn = setInterval(() => turns++);
	const text = writtenInSlices(pieces);
	expect(written.count).toBeLessThan(9);
	expect(await (await text).text()).toBe('012345678');
	clearInterval(turn);
	expect(turns).toBeGreaterThan(1);
});

test('called off, it writes no more and says so', async () => {
	const { written, pieces } = slowPieces(1000);
	const job = new AbortController();
	const text = writtenInSlices(pieces, job.signal);
	job.abort(new Error('closed'));
	await expect(text).rejects.toThrow('closed');
	expect(written.count).toBeLessThan(10);
});
