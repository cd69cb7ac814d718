import { expect, test } from 'vitest';
import { inSlices, sliceMs } from '../../../src/app/inSlices.ts';

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
