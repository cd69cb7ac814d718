import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { Packing } from '../../../src/app/packing.svelte.ts';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import type { BoardPlan } from '../../../src/core/sheets/boardPlan.ts';
import type { PackingJob } from '../../../src/core/sheets/packingJob.ts';
import { packBoard } from '../../../src/core/sheets/packBoard.ts';
import { openPlanStore } from '../../../src/storage/planStore.ts';
import type { packInWorker } from '../../../src/workers/packInWorker.ts';
import { namer } from '../core/show/randomEdits.ts';
import { showOf } from '../core/sheets/sheetsOf.ts';
import { on } from './edits.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
});
afterEach(() => vi.useRealTimers());

/** A search as it was asked for, answered by the test. */
interface Asked {
	readonly jobs: readonly PackingJob[];
	readonly signal: AbortSignal;
	readonly tell: (plan: BoardPlan, place?: number) => void;
	readonly finish: (plans?: readonly BoardPlan[]) => void;
	readonly fail: (cause: Error) => void;
}

const planFor = (job: PackingJob) => packBoard(job, { secondsLeft: () => 0 });

async function open(
	prints = 4,
): Promise<{ session: Session; packing: Packing; asked: Asked[]; pause: () => Promise<void> }> {
	const session = await openSession({ databaseName, makeId: namer() });
	on(session).replaceShow(showOf(prints), 'Open');
	await session.whenSaved();
	const asked: Asked[] = [];
	const pack: typeof packInWorker = ({ jobs }, onPlan, signal) =>
		new Promise((resolve, reject) => {
			signal.addEventListener('abort', () => reject(signal.reason as Error));
			asked.push({
				jobs,
				signal,
				tell: (plan, place = 0) => onPlan(plan, place),
				finish: (plans = jobs.map(planFor)) => resolve(plans),
				fail: reject,
			});
		});
	const packing = new Packing(session, { databaseName, pack });
	await packing.restored;
	vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] });
	onTestFinished(() => {
		packing.close();
		void session.close();
	});
	const pause = async () => {
		packing.later();
		await vi.advanceTimersByTimeAsync(1000);
	};
	return { session, packing, asked, pause };
}

/** A plan that is answered at once. */
async function openPlanned() {
	const all = await open();
	await all.pause();
	all.asked[0]!.finish();
	await vi.advanceTimersByTimeAsync(0);
	return all;
}

const planOf = ({ boards }: Packing) => {
	const [board] = boards;
	if (board === undefined || !('plan' in board)) throw new Error('there is no plan yet');
	return board;
};
const widen = (session: Session) =>
	on(session).typeCells([{ id: 'r1', cells: { mount: '500 x 400 mm' } }], 'Type mount');

test('changes close together are planned once, after the pause; a title changes nothing', async () => {
	const { session, packing, asked, pause } = await open();
	packing.later();
	packing.later();
	await pause();
	expect(asked).toHaveLength(1);
	expect(packing.isBusy).toBe(true);
	asked[0]!.finish();
	await vi.advanceTimersByTimeAsync(0);
	expect(packing.isBusy).toBe(false);
	expect(planOf(packing).sheets).toHaveLength(2);
	on(session).typeCells([{ id: 'r1', cells: { title: 'Ebb' } }], 'Type title');
	await pause();
	expect(asked).toHaveLength(1);
});

test('the last good plan stays, marked as old, until a new one comes; the last job wins', async () => {
	const { session, packing, asked, pause } = await openPlanned();
	const before = planOf(packing);
	widen(session);
	await pause();
	expect(asked[0]!.signal.aborted).toBe(true);
	expect(planOf(packing)).toMatchObject({ plan: before.plan, isOld: true });
	const { jobs } = asked[1]!;
	on(session).typeCells([{ id: 'r2', cells: { mount: '500 x 400 mm' } }], 'Type mount');
	await pause();
	expect(asked[1]!.signal.aborted).toBe(true);
	asked[1]!.tell(planFor(jobs[0]!)); // a stale plan
	expect(planOf(packing).isOld).toBe(true);
	asked[2]!.tell(planFor(asked[2]!.jobs[0]!));
	expect(planOf(packing)).toMatchObject({ isOld: false });
	expect(packing.isBusy).toBe(true);
	expect(asked).toHaveLength(3);
});

test('a change taken back while it is planned leaves the plan as it was, and ends the search', async () => {
	const { session, packing, asked, pause } = await openPlanned();
	widen(session);
	await pause();
	session.undo();
	await pause();
	expect(planOf(packing).isOld).toBe(false);
	expect(packing.isBusy).toBe(false);
	expect(asked[1]!.signal.aborted).toBe(true);
});

test('a sheet begun as its plan has it leaves the plan standing; a spoilt one is planned again', async () => {
	const { session, packing, asked, pause } = await openPlanned();
	const [first] = planOf(packing).sheets;
	on(session).markCut([first!], 'Mark a sheet as cut');
	await pause();
	expect(asked).toHaveLength(1);
	expect(planOf(packing)).toMatchObject({ isOld: false, sheets: [{ id: first!.id }, {}] });
	on(session).spoilSheet(session.show.cutSheets![0]!, 'Mark a sheet as spoilt');
	await pause();
	expect(asked).toHaveLength(2);
	expect(asked[1]!.jobs[0]).toMatchObject({ cutSheets: [{ blanks: [], isCut: true }] });
	expect(asked[1]!.jobs[0]!.blanks).toHaveLength(4);
});

test('after a change the rest is planned round a sheet that is cut', async () => {
	const { session, packing, asked, pause } = await openPlanned();
	const [first] = planOf(packing).sheets;
	const rowsOfFirst = first!.blanks.map(({ rowId }) => rowId);
	on(session).markCut([first!], 'Mark a sheet as cut');
	on(session).typeCells([{ id: 'r4', cells: { mount: '500 x 400 mm' } }], 'Type mount');
	await pause();
	expect(asked[1]!.jobs[0]!.cutSheets).toHaveLength(1);
	expect(asked[1]!.jobs[0]!.blanks.filter(({ rowId }) => rowsOfFirst.includes(rowId))).toEqual([]);
	asked[1]!.finish();
	await vi.advanceTimersByTimeAsync(0);
	expect(
		planOf(packing)
			.sheets.flatMap(({ blanks }) => blanks.map(({ rowId }) => rowId))
			.sort(),
	).toEqual(['r1', 'r2', 'r3', 'r4'].filter((id) => !rowsOfFirst.includes(id)));
});

test('a better plan does not take the place of one that the knife has begun', async () => {
	const { session, packing, asked, pause } = await open();
	await pause();
	const { jobs, tell } = asked[0]!;
	tell(planFor(jobs[0]!));
	const [first] = planOf(packing).sheets;
	on(session).tickKnife([{ sheet: first!, places: [0] }], true, 'Tick');
	const other = planFor(jobs[0]!);
	tell({ ...other, layouts: other.layouts.toReversed() });
	expect(planOf(packing).sheets[0]!.id).toBe(first!.id);
	await pause();
	expect(packing.isBusy, 'nothing is left to search').toBe(false);

	on(session).tickKnife([{ sheet: first!, places: [0] }], false, 'Untick');
	await pause();
	expect(packing.isBusy, 'not begun after all, its search goes on').toBe(true);
	expect(asked.at(-1)!.jobs).toHaveLength(1);
	asked.at(-1)!.finish([{ ...planFor(jobs[0]!), proven: true }]);
	await vi.advanceTimersByTimeAsync(0);
	await pause();
	expect(planOf(packing).plan.proven).toBe(true);
	expect(packing.isBusy, 'once it has come to its end it is over').toBe(false);
});

test('of a plan that the knife has begun it is said how good it is, once the search knows', async () => {
	const { session, packing, asked, pause } = await open();
	await pause();
	const { jobs, tell } = asked[0]!;
	const quick = { ...planFor(jobs[0]!), leastCost: 0, leastCount: 1, proven: false };
	tell(quick);
	const [first] = planOf(packing).sheets;
	on(session).tickKnife([{ sheet: first!, places: [0] }], true, 'Tick');
	tell({ ...quick, leastCost: quick.cost, leastCount: quick.count, proven: true });
	expect(planOf(packing).plan).toEqual({ ...quick, leastCost: quick.cost, leastCount: quick.count, proven: true });
	tell({ ...quick, cost: quick.cost - 1, count: quick.count - 1, leastCost: quick.cost - 1, proven: true });
	expect(planOf(packing).plan.cost, 'a cheaper one comes too late').toBe(quick.cost);
	asked[0]!.finish([{ ...quick, count: quick.count - 1 }]);
	await vi.advanceTimersByTimeAsync(0);
	await pause();
	expect(packing.isBusy).toBe(false);
	on(session).tickKnife([{ sheet: first!, places: [0] }], false, 'Untick');
	await pause();
	expect(packing.isBusy, 'not begun after all, the better one is looked for again').toBe(true);
});

test('a search is stopped with what it has found, and taken up again; what goes wrong is told', async () => {
	const { packing, asked, pause } = await open();
	await pause();
	asked[0]!.tell(planFor(asked[0]!.jobs[0]!));
	packing.stop();
	expect(packing).toMatchObject({ isBusy: false, isStopped: true });
	expect(planOf(packing).isOld).toBe(false);
	await pause();
	expect(asked).toHaveLength(1);
	packing.again();
	expect(packing).toMatchObject({ isBusy: true, isStopped: false });
	asked[1]!.fail(new Error('planning boards stopped: no memory'));
	await vi.advanceTimersByTimeAsync(0);
	expect(packing).toMatchObject({ isBusy: false, problem: 'planning boards stopped: no memory' });
	expect(planOf(packing).plan.count).toBe(2);
});

test('without stock nothing is searched', async () => {
	const { session, packing, asked, pause } = await open();
	on(session).changeSettings({ boards: undefined });
	expect(packing.hasLooked).toBe(false);
	await pause();
	expect(packing.hasLooked, 'it is known that there is nothing to plan').toBe(true);
	expect(asked).toHaveLength(0);
	expect(packing.boards).toEqual([]);
});

test('after a reload the sheets are those that they were, and nothing is planned again', async () => {
	const { packing, session, asked } = await openPlanned();
	on(session).markCut([planOf(packing).sheets[0]!], 'Mark a sheet as cut');
	vi.useRealTimers();
	await session.whenSaved();
	await expect.poll(() => openPlanStore(databaseName).read(session.show.id)).toHaveLength(1);
	const again = await openSession({ databaseName, makeId: namer() });
	const packingAgain = new Packing(again, { databaseName, pack: () => Promise.reject(new Error('planned again')) });
	onTestFinished(() => {
		packingAgain.close();
		void again.close();
	});
	await packingAgain.restored;
	packingAgain.later();
	await new Promise((resolve) => setTimeout(resolve, 400));
	expect(planOf(packingAgain).sheets.map(({ id }) => id)).toEqual(planOf(packing).sheets.map(({ id }) => id));
	expect(planOf(packingAgain).isOld).toBe(false);
	expect(packingAgain.problem).toBeUndefined();
	expect(asked).toHaveLength(1);
});

test('glazing is planned in a show that lists no board, and its boards are not', async () => {
	const { session, packing, asked, pause } = await open(1);
	const { show } = session;
	const settings = {
		frames: [{ name: 'Box', width: 500, height: 400, depth: 40 }],
		glazing: [{ name: 'Clear', material: 'glass', width: 1000, height: 800 }],
	};
	const typed = { 'picture width': '300', 'picture height': '200', frame: 'Box' };
	on(session).replaceShow({ ...show, settings, rows: [{ id: 'r1', order: 1, typed }] }, 'Open');
	await pause();
	expect(asked.at(-1)!.jobs.map(({ board, material }) => [board, material])).toEqual([['Clear', 'glazing']]);
	asked.at(-1)!.finish();
	await vi.advanceTimersByTimeAsync(0);
	expect(packing.boards.map((board) => 'plan' in board && board.plan.material)).toEqual(['glazing']);
});

test('a session that begins to close ends the search; where it cannot close, boards are planned again after the next edit', async () => {
	const { session, packing, asked, pause } = await open();
	await pause();
	const closing = session.close(() => Promise.reject(new Error('no room')));
	expect(asked[0]!.signal.aborted).toBe(true);
	expect([packing.isBusy, packing.isStopped]).toEqual([false, true]);
	packing.again();
	expect(asked).toHaveLength(1);
	await expect(closing).rejects.toThrow('no room');
	expect(packing.problem).toBeUndefined();
	on(session).rename('Other');
	await pause();
	expect(asked).toHaveLength(2);
});

test('looked at a row at a time: what changes meanwhile is looked at again, and a plan that comes meanwhile stays', async () => {
	const { session, packing, asked } = await open();
	let time = 0;
	vi.spyOn(performance, 'now').mockImplementation(() => (time += 100));
	onTestFinished(() => void vi.restoreAllMocks());
	const begin = () => (packing.later(), vi.advanceTimersByTimeAsync(301));
	await begin();
	widen(session);
	packing.later();
	await vi.advanceTimersByTimeAsync(100);
	expect([asked.length, packing.hasLooked]).toEqual([0, false]);
	await vi.advanceTimersByTimeAsync(1000);
	expect(asked).toHaveLength(1);
	expect(asked[0]!.jobs[0]!.blanks[0]).toMatchObject({ width: 5_000_000_000 });
	await begin();
	const plan = planFor(asked[0]!.jobs[0]!);
	asked[0]!.tell(plan);
	await vi.advanceTimersByTimeAsync(100);
	expect(planOf(packing)).toMatchObject({ plan, isOld: false });
	await begin();
	packing.close();
	const before = packing.boards;
	await vi.advanceTimersByTimeAsync(100);
	expect(packing.boards).toBe(before);
});
