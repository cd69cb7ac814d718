import { expect, test } from 'vitest';
import { BenchOrder } from '../../../src/app/benchOrder.svelte.ts';
import { fewestSettings, type SetUpOrder } from '../../../src/core/bench/fewestSettings.ts';
import type { OrderJob } from '../../../src/core/bench/orderJob.ts';
import type { BoardSetUp } from '../../../src/core/bench/setUps.ts';
import { mm } from '../../../src/core/length/length.ts';

const jobOf = (setUps: readonly BoardSetUp[]): OrderJob => ({ setUps, later: setUps.map(() => []) });

const setUps = (count: number, from = 0): OrderJob =>
	jobOf(
		Array.from({ length: count }, (_, place) => {
			const [guide, start, end] = [50 + from + (place % 5), 60 + (place % 3), 60 + (place % 7)].map(mm);
			return { guide: guide!, start, end, border: guide!, thickness: undefined, isTaped: false };
		}),
	);

/** A search that answers when it is told to. */
function heldSearch() {
	const jobs: { readonly signal: AbortSignal; readonly answer: () => void }[] = [];
	const order = new BenchOrder(
		(job, signal) =>
			new Promise<SetUpOrder>((resolve, reject) => {
				signal.addEventListener('abort', () => reject(signal.reason as Error));
				jobs.push({ signal, answer: () => resolve(fewestSettings(job)) });
			}),
	);
	return { order, jobs };
}

test('the order at hand stays until the one with the fewest changes is there', async () => {
	const { order, jobs } = heldSearch();
	const asked = setUps(20);
	const found = fewestSettings(asked);
	const looking = order.look(asked);
	expect(order.isSearching).toBe(true);
	expect(order.orderOf(asked).order).toHaveLength(20);
	expect(order.orderOf(asked)).not.toEqual(found);
	jobs[0]!.answer();
	await looking;
	expect(order.isSearching).toBe(false);
	expect(order.orderOf(asked)).toEqual(found);
	// One set-up less: what is left stays in its place, and the same set-ups again are not looked for again.
	const less = jobOf(asked.setUps.slice(1));
	expect(order.orderOf(less).order).toEqual(found.order.filter((setUp) => setUp !== asked.setUps[0]));
	await order.look(jobOf(asked.setUps.toReversed()));
	expect(jobs).toHaveLength(1);
});

test('the last search wins: the one before it is ended, and what it finds is not taken', async () => {
	const { order, jobs } = heldSearch();
	const [first, second] = [setUps(20), setUps(20, 3)];
	const looking = order.look(first);
	const lookingAgain = order.look(second);
	void order.look(second); // the same once more goes on
	expect(jobs).toHaveLength(2);
	expect(jobs[0]!.signal.aborted).toBe(true);
	await looking;
	expect(order.isSearching).toBe(true);
	jobs[1]!.answer();
	await lookingAgain;
	expect(order.orderOf(second)).toEqual(fewestSettings(second));
});

test('where the search breaks off the order at hand is kept; a few set-ups need none', async () => {
	const order = new BenchOrder(() => Promise.reject(new Error('no worker')));
	await order.look(setUps(20));
	expect(order.isSearching).toBe(false);
	expect(order.orderOf(setUps(20)).order).toHaveLength(20);
	expect(order.orderOf(setUps(12))).toEqual(fewestSettings(setUps(12)));
});
