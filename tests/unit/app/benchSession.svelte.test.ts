import 'fake-indexeddb/auto';
import { beforeEach, expect, onTestFinished, test } from 'vitest';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { fewestSettings } from '../../../src/core/bench/fewestSettings.ts';
import { orderJob } from '../../../src/core/bench/orderJob.ts';
import { setUpKey } from '../../../src/core/bench/setUps.ts';
import type { CutTick } from '../../../src/core/show/tick.ts';
import { tickFor } from '../../../src/core/bench/ticks.ts';
import { readShowFile, writeShowFile } from '../../../src/files/showFile.ts';
import { importEdit, namer } from '../core/show/randomEdits.ts';
import { on } from './edits.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
});

async function open(): Promise<Session> {
	const session = await openSession({ databaseName, makeId: namer() });
	onTestFinished(() => session.close());
	return session;
}

const shapes = { shape: '3:2', 'picture width': '300' };

async function openTicked() {
	const session = await open();
	on(session).addRows([{ cells: shapes }, { cells: shapes }], 0, 'Add');
	on(session).tickCuts(ticksOf(session), true, 'Tick');
	return session;
}

/** Ticks of all four cuts of the first row. */
const ticksOf = ({ show, results, settings }: Session): CutTick[] =>
	(['left', 'right', 'top', 'bottom'] as const).map((side) =>
		tickFor(show.rows[0]!, results[0]!, settings, { row: 1, copy: 1, part: 'mount', side })!,
	);
const sorted = (ticks: Session['show']['ticks'] = []) => ticks.map((tick) => JSON.stringify(tick)).sort();

test('ticks are there after a reload, and in the show file, and undo takes them back', async () => {
	const session = await openTicked();
	const { ticks } = session.show;
	expect(ticks).toHaveLength(4);
	session.place.goTo({ atBench: 'step 7' });
	session.place.goTo({ atKnife: '550 #1' });
	await session.whenSaved();
	const again = await open();
	expect(sorted(again.show.ticks)).toEqual(sorted(ticks));
	expect([again.place.atBench, again.place.atKnife]).toEqual(['step 7', '550 #1']);
	const read = readShowFile(writeShowFile(again.show));
	expect('value' in read && sorted(read.value.ticks)).toEqual(sorted(ticks));
	session.undo();
	await session.whenSaved();
	expect((await open()).show.ticks ?? []).toEqual([]);
	session.redo();
	await session.whenSaved();
	expect(sorted((await open()).show.ticks)).toEqual(sorted(ticks));
});

test('a change of another row, or one that leaves the cuts as they are, is made at once', async () => {
	const session = await openTicked();
	const [first, second] = session.show.rows;
	on(session).typeCells([{ id: second!.id, cells: { 'picture width': '280' } }], 'Type');
	on(session).typeCells([{ id: first!.id, cells: { title: 'Ebb' } }], 'Type');
	expect(session.question).toBeUndefined();
	expect(session.show.rows.map(({ typed }) => typed['picture width'])).toEqual(['300', '280']);
	expect(session.show.rows[0]!.typed.title).toBe('Ebb');
});

test('a change that makes cuts wrong waits for a word; left, nothing has changed', async () => {
	const session = await openTicked();
	const before = session.show;
	on(session).typeCells([{ id: before.rows[0]!.id, cells: { 'picture width': '280' } }], 'Type picture width');
	expect(session.show).toBe(before);
	expect(session.question).toMatchObject({ label: 'Type picture width', wronged: [{ index: 0 }] });
	session.answer('leave');
	expect([session.show, session.question]).toEqual([before, undefined]);
});

test('made all the same, it keeps the cuts that stand, and is one step of undo', async () => {
	const session = await openTicked();
	const { ticks, rows } = session.show;
	const { top } = session.results[0]!.solved;
	on(session).typeCells([{ id: rows[0]!.id, cells: { top: `${top! / 10_000_000 + 3}` } }], 'Type top');
	session.answer('keep');
	expect(session.show.ticks!.map(({ side }) => side)).toEqual(['left', 'right']);
	await session.whenSaved();
	expect(sorted((await open()).show.ticks)).toEqual(sorted(session.show.ticks));
	session.undo();
	expect(sorted(session.show.ticks)).toEqual(sorted(ticks));
	expect(session.show.rows).toEqual(rows);
});

test('or the mount is begun again', async () => {
	const session = await openTicked();
	on(session).typeCells([{ id: session.show.rows[0]!.id, cells: { top: '90' } }], 'Type top');
	session.answer('begin again');
	expect(session.show.ticks).toEqual([]);
	expect(session.show.rows[0]!.typed.top).toBe('90');
});

test('settings, removing and importing ask too', async () => {
	const session = await openTicked();
	const before = session.show;
	on(session).changeSettings({ mountSize: '700 x 560 mm' });
	expect(session.question?.wronged).toHaveLength(1);
	session.answer('leave');
	on(session).removeRows([before.rows[0]!.id]);
	expect(session.question?.wronged[0]?.sentence).toMatch(/left over/);
	session.answer('leave');
	on(session).take(
		importEdit(session.show, [{ ...before.rows[0]!, typed: { shape: '1:1' } }], ['shape', 'picture width'], namer('i')),
	);
	expect(session.question?.wronged).toHaveLength(1);
	session.answer('leave');
	expect(session.show).toBe(before);
});

test('a spoilt board is counted, and its cuts are to be made again', async () => {
	const session = await openTicked();
	const mount = { row: session.show.rows[0]!.id, copy: 1, part: 'mount' } as const;
	on(session).spoilBoard(mount, 'Spoilt');
	expect(session.question).toBeUndefined();
	expect(session.show.ticks).toEqual([{ ...mount, side: 'spoilt', times: 1 }]);
	session.undo();
	expect(session.show.ticks).toHaveLength(4);
});

test('on a bench with end stops the list is there at once, and has the fewest changes when they are found', async () => {
	const answers: (() => void)[] = [];
	const session = await openSession({
		databaseName,
		makeId: namer(),
		search: (job) =>
			new Promise((resolve) => {
				const { order, leastChanges } = fewestSettings(job);
				answers.push(() => resolve({ order: order.toReversed(), leastChanges }));
			}),
	});
	onTestFinished(() => session.close());
	on(session).changeSettings({ bench: 'guide and stops' });
	const widths = ['300', '310', '320', '330', '340', '350'];
	on(session).addRows(
		widths.map((width, place) => ({ cells: { shape: place % 2 ? '3:2' : '4:5', 'picture width': width } })),
		0,
		'Add',
	);
	expect(session.bench.steps.length).toBeGreaterThan(12);
	await expect.poll(() => session.isOrdering).toBe(true);
	const atHand = session.bench.steps;
	answers.at(-1)!();
	await expect.poll(() => session.isOrdering).toBe(false);
	const { order } = fewestSettings(orderJob(atHand));
	expect(session.bench.steps.map(setUpKey), 'the one that was found').toEqual(order.toReversed().map(setUpKey));
	await expect.poll(() => session.lateBench.steps).toBe(session.bench.steps);
});
