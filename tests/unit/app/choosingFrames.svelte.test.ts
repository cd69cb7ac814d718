import { expect, test } from 'vitest';
import { ChoosingFrames } from '../../../src/app/choosingFrames.svelte.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { type FrameChoice, giveFrames } from '../../../src/core/frameChoice/giveFrames.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { framesInWorker } from '../../../src/workers/framesInWorker.ts';

const { settings } = readSettings({ frames: [{ name: 'Oak', width: 400, height: 300, count: 1 }] });
const rows = ['a', 'b'].map((id, order) => ({ id, order, typed: { shape: '3:2' } }));
const ending = new AbortController();
const session = { show: { rows }, settings, signal: ending.signal } as unknown as Session;

/** A search that goes on when it is told to. */
function held() {
	const jobs: {
		readonly news: (done: number, of: number) => void;
		readonly answer: (choice: FrameChoice) => void;
		readonly fail: (cause: Error) => void;
		readonly signal: AbortSignal;
	}[] = [];
	const choose: typeof framesInWorker = (_job, signal, onNews) =>
		new Promise((answer, fail) => {
			jobs.push({ news: (done, of) => onNews?.({ done, of }), answer, fail, signal });
		});
	return { choosing: new ChoosingFrames(session, choose), jobs };
}

test('it says how far it is, then proposes, and the prints that get a frame are chosen', async () => {
	const { choosing, jobs } = held();
	const search = choosing.start();
	jobs[0]!.news(1, 2);
	expect([choosing.isBusy, choosing.progress]).toEqual([true, { done: 1, of: 2 }]);
	jobs[0]!.answer(giveFrames(rows, settings));
	await search;
	expect(choosing.isBusy).toBe(false);
	expect([...choosing.chosenRows]).toEqual(['a']);
	choosing.toggle('a');
	expect([...choosing.chosenRows]).toEqual([]);
});

test('stopped, the search ends and what it still says is not heard', async () => {
	const { choosing, jobs } = held();
	const search = choosing.start();
	choosing.stop();
	expect(jobs[0]!.signal.aborted).toBe(true);
	jobs[0]!.news(2, 2);
	jobs[0]!.answer(giveFrames(rows, settings));
	await search;
	expect([choosing.isBusy, choosing.progress, choosing.proposal]).toEqual([false, undefined, undefined]);
});

test('a search that fails says why', async () => {
	const { choosing, jobs } = held();
	const search = choosing.start();
	jobs[0]!.fail(new Error('no room left'));
	await search;
	expect([choosing.isBusy, choosing.problem]).toEqual([false, 'no room left']);
});

test('a session that begins to close ends the search, and begins none', async () => {
	const { choosing, jobs } = held();
	const search = choosing.start();
	ending.abort(new Error('closed'));
	expect(jobs[0]!.signal.aborted).toBe(true);
	jobs[0]!.answer(giveFrames(rows, settings));
	await search;
	await choosing.start();
	expect([choosing.isBusy, choosing.proposal, choosing.problem, jobs.length]).toEqual([false, undefined, undefined, 1]);
});
