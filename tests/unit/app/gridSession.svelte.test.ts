import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { removeRows } from '../../../src/core/commands/removeRows.ts';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { mostAtOnce } from '../../../src/app/workedOut.svelte.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import type { GridFocus } from '../../../src/ui/grid/gridFocus.ts';
import { GridSeen } from '../../../src/ui/grid/gridSeen.svelte.ts';
import { GridState } from '../../../src/ui/grid/gridState.svelte.ts';
import { typeCells } from '../../../src/core/commands/typeCells.ts';
import { namer } from '../core/show/randomEdits.ts';
import { runs } from '../../soak.ts';

/** What a person does to the grid, by place, so that it can be done to any. */
type Gesture =
	| {
			readonly kind: 'select';
			readonly row: number;
			readonly column: number;
			readonly tall: number;
			readonly wide: number;
	  }
	| { readonly kind: 'whole'; readonly what: 'rows' | 'columns' | 'everything' }
	| { readonly kind: 'type'; readonly text: string }
	| { readonly kind: 'paste'; readonly table: readonly (readonly string[])[] }
	| { readonly kind: 'draw'; readonly down: number; readonly right: number }
	| { readonly kind: 'add' | 'move'; readonly place: number }
	| { readonly kind: 'sort'; readonly column: 'title' | 'picture width' | undefined; readonly way: 'up' | 'down' }
	| { readonly kind: 'keep order' }
	| { readonly kind: 'clear' | 'fill down' | 'fill right' | 'duplicate' | 'remove' | 'leave' | 'undo' | 'redo' };

const text = fc.constantFrom('', '70', '300', '2,5', '456 x 306', '1,500', '2 5/8 in', 'Pier', '7');
const gesture: fc.Arbitrary<Gesture> = fc.oneof(
	{
		weight: 6,
		arbitrary: fc.record({
			kind: fc.constant('select' as const),
			row: fc.nat(6),
			column: fc.nat(gridColumns.length - 1),
			tall: fc.nat(3),
			wide: fc.nat(4),
		}),
	},
	{
		weight: 1,
		arbitrary: fc.record({
			kind: fc.constant('whole' as const),
			what: fc.constantFrom('rows' as const, 'columns' as const, 'everything' as const),
		}),
	},
	{ weight: 3, arbitrary: fc.record({ kind: fc.constant('type' as const), text }) },
	{
		weight: 3,
		arbitrary: fc.record({
			kind: fc.constant('paste' as const),
			table: fc.array(fc.array(text, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 }),
		}),
	},
	{ weight: 1, arbitrary: fc.record({ kind: fc.constant('draw' as const), down: fc.nat(3), right: fc.nat(3) }) },
	{
		weight: 3,
		arbitrary: fc.record({ kind: fc.constantFrom('add' as const, 'move' as const), place: fc.nat(7) }),
	},
	{
		weight: 2,
		arbitrary: fc.record({
			kind: fc.constant('sort' as const),
			column: fc.constantFrom('title' as const, 'picture width' as const, undefined),
			way: fc.constantFrom('up' as const, 'down' as const),
		}),
	},
	{ weight: 1, arbitrary: fc.record({ kind: fc.constant('keep order' as const) }) },
	{
		weight: 8,
		arbitrary: fc.record({
			kind: fc.constantFrom(
				'clear' as const,
				'fill down' as const,
				'fill right' as const,
				'duplicate' as const,
				'remove' as const,
				'leave' as const,
				'undo' as const,
				'redo' as const,
			),
		}),
	},
);

function make(grid: GridState, session: Session, done: Gesture): void {
	const rows = session.show.rows.length;
	switch (done.kind) {
		case 'select': {
			const [top, left] = [Math.min(done.row, Math.max(0, rows - 1)), done.column];
			return grid.selection.selectRange({ top, left, bottom: top + done.tall, right: left + done.wide });
		}
		case 'whole':
			return grid.selection.selectWhole(done.what);
		case 'type':
			if (!grid.editor.open(true)) return;
			grid.editor.setText(done.text);
			return void grid.editor.commit('stay', true);
		case 'paste':
			return grid.pasting.paste(done.table);
		case 'draw':
			if (grid.selection.range)
				grid.blocks.drawTo(
					Math.min(rows - 1, grid.selection.range.bottom + done.down),
					grid.selection.range.right + done.right,
				);
			return grid.blocks.fillDrawn();
		case 'add':
			grid.rowEdits.add(Math.min(done.place, rows));
			return;
		case 'move':
			return grid.rowEdits.moveTo(Math.min(done.place, rows));
		case 'sort':
			return grid.order.sortBy(done.column && { column: done.column, way: done.way });
		case 'keep order':
			return grid.order.keep();
		case 'clear':
			return grid.blocks.clear();
		case 'fill down':
			return grid.blocks.fill('down');
		case 'fill right':
			return grid.blocks.fill('right');
		case 'duplicate':
			return grid.rowEdits.duplicate();
		case 'remove':
			return grid.rowEdits.remove();
		case 'leave':
			return grid.pasting.leaveWorkedOut();
		case 'undo':
			return grid.edits.undo();
		case 'redo':
			return grid.edits.redo();
	}
}

/** One step of undo, as it should be: the rows and the selection on either side of it. */
interface Step {
	readonly before: { readonly rows: readonly Row[]; readonly focus: GridFocus | undefined };
	readonly after: { readonly rows: readonly Row[]; readonly focus: GridFocus | undefined };
}

/** The rows on disk. */
async function storedRows(name: string): Promise<readonly Row[]> {
	const store = openShowStore(name);
	const { show } = await store.openShow(() => {
		throw new Error('nothing is kept');
	});
	store.close();
	return show.rows;
}

/** Holds what the grid shows to what is kept, to what is worked out from nothing, and its selection to its bounds. */
async function holdTogether(grid: GridState, session: Session, name: string): Promise<void> {
	await session.whenSaved();
	const { rows } = session.show;
	expect(await storedRows(name)).toEqual(rows);
	expect(session.results.map(({ solved }) => solved)).toEqual(
		rows.map((row) => judgeRow(row, session.settings).solved),
	);
	expect(
		[...grid.cells.rows].sort((a, b) => a.order - b.order),
		'every row is seen once',
	).toEqual(rows);
	if (session.views.sort === undefined) expect(grid.cells.rows).toEqual(rows);
	expect(grid.selection.now === undefined).toBe(rows.length === 0);
	if (grid.selection.range === undefined) return;
	expect(grid.selection.range.top).toBeGreaterThanOrEqual(0);
	expect(grid.selection.range.bottom).toBeLessThan(rows.length);
	expect(grid.selection.range.right).toBeLessThan(gridColumns.length);
	expect(grid.selection.rowIds).toHaveLength(grid.selection.range.bottom - grid.selection.range.top + 1);
}

function holdTo(grid: GridState, session: Session, { rows, focus }: Step['before']): void {
	expect(session.show.rows).toEqual(rows);
	if (focus === undefined || rows.length === 0) return;
	const now = grid.selection.focus!;
	expect(now.active).toEqual(focus.active);
	// After another sort the rows may stand in another sequence, or with others between them.
	const places = focus.rows!.map((id) => grid.cells.indexOf(id));
	const isTogether = Math.max(...places) - Math.min(...places) === places.length - 1;
	expect(new Set(now.rows)).toEqual(new Set(isTogether ? focus.rows : [focus.active.id]));
	const columns = isTogether ? [focus.anchor.key, focus.head.key] : [focus.active.key, focus.active.key];
	expect([now.anchor.key, now.head.key]).toEqual(columns);
}

test('any gestures: each is one step with its selection, and undo to the start and redo to the end give both', () =>
	fc.assert(
		fc.asyncProperty(fc.array(gesture, { minLength: 4, maxLength: 16 }), async (gestures) => {
			// Not of fast-check: it favours some, and gives the same again where it looks for a shorter example.
			const name = `gestures ${crypto.randomUUID()}`;
			const session = await openSession({ databaseName: name, makeId: namer() });
			const grid = new GridState(session, new GridSeen(session));
			grid.pasting.paste([
				['Low water', '', '300', '200'],
				['Salt road', '3:2'],
				['Kiln door', '', '', '', '290'],
			]);
			const begun = session.show.rows;
			const done: Step[] = [];
			const undone: Step[] = [];
			for (const each of gestures) {
				const { show } = session;
				const before = { rows: show.rows, focus: grid.selection.focus };
				make(grid, session, each);
				const after = { rows: session.show.rows, focus: grid.selection.focus };
				if (each.kind === 'undo') {
					const step = done.pop();
					if (step === undefined) {
						session.redo(); // what the test began with is not to be taken back
						continue;
					}
					undone.push(step);
					holdTo(grid, session, step.before);
				} else if (each.kind === 'redo') {
					const step = undone.pop();
					if (step) done.push(step);
					if (step) holdTo(grid, session, step.after);
				} else if (each.kind === 'leave' && before.rows !== after.rows) {
					// A sort may have been made since: it stays, with the rows as they are now.
					const place = done.findLastIndex((step) => step.before.rows !== step.after.rows);
					const [pasted] = done.splice(place, 1) as [Step];
					const { rows } = after;
					const since = done.splice(place).map((step) => ({
						before: { ...step.before, rows },
						after: { ...step.after, rows },
					}));
					if (session.nextStep !== undefined) undone.push(pasted);
					else {
						done.push({
							before: pasted.before,
							after: { ...after, focus: since.length > 0 ? undefined : after.focus },
						});
						undone.length = 0;
					}
					done.push(...since);
				} else if (show !== session.show) {
					// A sort moves rows away from under a range: what was selected then is not held to it.
					const isSort = each.kind === 'sort';
					const without = ({ rows }: Step['before']) => ({ rows, focus: undefined });
					done.push(isSort ? { before: without(before), after: without(after) } : { before, after });
					undone.length = 0;
				}
				await holdTogether(grid, session, name);
			}
			const end = session.show.rows;
			for (const step of done.toReversed()) {
				grid.edits.undo();
				holdTo(grid, session, step.before);
			}
			expect(session.show.rows).toEqual(begun);
			for (const step of done) {
				grid.edits.redo();
				holdTo(grid, session, step.after);
			}
			expect(session.show.rows).toEqual(end);
			await holdTogether(grid, session, name);
			await session.close();
		}),
		{ numRuns: runs(6, 1000) },
	));

/** A grid of prints with these titles and picture widths, its first cell active. */
async function gridOf(...prints: readonly (readonly [title: string, width: string])[]) {
	const session = await openSession({ databaseName: crypto.randomUUID(), makeId: namer() });
	const grid = new GridState(session, new GridSeen(session));
	grid.pasting.paste(prints.map(([title, width]) => [title, '', width]));
	grid.selection.select(0, 1);
	const titles = () => grid.cells.rows.map(({ typed }) => typed.title ?? '').join(' ');
	const own = () => session.show.rows.map(({ typed }) => typed.title ?? '').join(' ');
	return { session, grid, titles, own };
}

/** The titles of the prints that are selected, in the sequence in which they are seen. */
const selectedTitles = ({ cells, selection }: GridState): string =>
	cells.rows.flatMap(({ id, typed }) => (selection.rowIds.includes(id) ? (typed.title ?? '') : [])).join(' ');

const three = [
	['Tar', '300'],
	['Ebb', '290'],
	['Fog', '310'],
] as const;

test('the first row is not moved up, nor the last one down: nothing is done that could be undone', async () => {
	const { session, grid, own } = await gridOf(...three);
	const label = session.lastStep?.label;
	grid.rowEdits.move(-1);
	expect([own(), session.lastStep?.label]).toEqual(['Tar Ebb Fog', label]);
	grid.selection.select(2, 1);
	grid.rowEdits.move(1);
	expect([own(), session.lastStep?.label]).toEqual(['Tar Ebb Fog', label]);
	grid.rowEdits.move(-1);
	grid.rowEdits.move(-1);
	expect([own(), grid.selection.rowIndex], 'to the top').toEqual(['Fog Tar Ebb', 0]);
	await session.close();
});

test('sorted, the active row stays active, typing moves no row until they are arranged again, and undo takes it back', async () => {
	const { session, grid, titles, own } = await gridOf(...three);
	grid.order.sortBy({ column: 'title', way: 'up' });
	expect([titles(), own(), grid.selection.row?.typed.title, grid.selection.rowIndex]).toEqual([
		'Ebb Fog Tar',
		'Tar Ebb Fog',
		'Tar',
		2,
	]);
	grid.editor.open(true);
	grid.editor.setText('Ash');
	grid.editor.commit('stay');
	expect([titles(), grid.selection.rowIndex, grid.arranged.isLate]).toEqual(['Ebb Fog Ash', 2, true]);
	grid.order.arrangeAnew();
	expect([titles(), grid.selection.rowIndex, grid.arranged.isLate]).toEqual(['Ash Ebb Fog', 0, false]);
	grid.rowEdits.move(1);
	expect(grid.notices.shown).toContain('sorted by title');
	expect(own()).toBe('Ash Ebb Fog');
	grid.order.sortBy({ column: 'picture width', way: 'down' });
	expect(titles()).toBe('Fog Ash Ebb');
	grid.order.keep();
	expect([own(), session.views.sort]).toEqual(['Fog Ash Ebb', undefined]);
	grid.edits.undo();
	expect([own(), titles(), session.views.sort?.column]).toEqual(['Ash Ebb Fog', 'Fog Ash Ebb', 'picture width']);
	grid.edits.undo();
	expect(titles()).toBe('Ash Ebb Fog');
	await session.close();
});

test('filtered, what is pasted, filled, moved and deleted is what is seen, and it is said', async () => {
	const { session, grid, titles, own } = await gridOf(...three, ['Ebb two', '320'], ['Pier', '330']);
	grid.order.filterBy({ ...grid.arranged.filter, words: 'ebb' });
	expect([titles(), grid.selection.row?.typed.title]).toEqual(['Ebb Ebb two', 'Ebb']);
	grid.selection.select(0, 3);
	grid.pasting.paste([['400'], ['410'], ['420']]);
	const widths = () => session.show.rows.map(({ typed }) => typed['picture width']);
	expect(widths()).toEqual(['300', '400', '310', '410', '420', '330']);
	expect(grid.notices.heard).toContain('3 prints left out');
	grid.edits.undo();
	grid.selection.selectRange({ top: 0, bottom: 1, left: 3, right: 3 });
	grid.blocks.fill('down');
	expect(widths()).toEqual(['300', '290', '310', '290', '330']);
	grid.edits.undo();
	grid.selection.select(1, 1);
	grid.rowEdits.move(-1);
	expect([titles(), own()]).toEqual(['Ebb two Ebb', 'Tar Ebb two Ebb Fog Pier']);
	grid.edits.undo();
	grid.rowEdits.remove();
	expect([titles(), own()]).toEqual(['Ebb', 'Tar Ebb Fog Pier']);
	grid.edits.undo();
	expect(titles()).toBe('Ebb Ebb two');
	await session.close();
});

test('the filter cleared, one is back where one was; a row that is gone to is seen whatever is left out', async () => {
	const { session, grid, titles } = await gridOf(...three);
	grid.selection.select(2, 3);
	const none = grid.arranged.filter;
	grid.order.filterBy({ ...none, words: 'tar' });
	expect(grid.selection.row?.typed.title).toBe('Tar');
	grid.order.filterBy({ ...none, words: 'no such print' });
	expect([grid.cells.rows.length, grid.selection.now]).toEqual([0, undefined]);
	grid.order.filterBy(none);
	expect([grid.selection.row?.typed.title, grid.selection.columnIndex]).toEqual(['Fog', 3]);
	grid.editor.open(false);
	grid.order.filterBy({ ...none, words: 'tar' });
	expect(titles(), 'what is being typed into stays').toBe('Tar Fog');
	grid.editor.cancel();
	grid.order.arrangeAnew();
	expect(titles()).toBe('Tar');
	grid.order.filterBy(none);
	grid.order.filterBy({ ...none, words: 'tar' });
	grid.selection.selectCell(session.show.rows[1]!.id, 'title');
	expect([titles(), grid.selection.rowIndex]).toEqual(['Tar Ebb', 1]);
	await session.close();
});

test('columns that are hidden, moved and sized leave the active cell in its column, each one step; results stay what they are', async () => {
	const { session, grid } = await gridOf(...three);
	const { results } = session;
	const shown = () => grid.columns.list.slice(0, 5).map(({ key }) => key);
	grid.selection.select(1, 3);
	grid.columnEdits.move(-1);
	expect(shown()).toEqual(['number', 'title', 'picture width', 'shape', 'picture height']);
	expect([grid.selection.column.key, grid.selection.columnIndex]).toEqual(['picture width', 2]);
	grid.columnEdits.move(-1);
	expect(grid.selection.columnIndex, 'not before those that stay').toBe(2);
	grid.columnEdits.hide();
	expect(shown()).toEqual(['number', 'title', 'shape', 'picture height', 'window width']);
	expect(grid.selection.column.key).toBe('shape');
	grid.edits.undo();
	expect(shown()[2]).toBe('picture width');
	grid.columns.choose('Labels');
	expect(grid.columns.list.map(({ key }) => key)).toEqual([
		...[
			'number',
			'title',
			'picture',
			'maker',
			'edition',
			'medium',
			'year',
			'signed on',
			'picture width',
			'picture height',
			'price',
			'note',
		],
	]);
	grid.selection.select(0, 1);
	grid.columnEdits.hide();
	expect(grid.notices.shown).toContain('can’t be hidden');
	expect(session.results, 'nothing was worked out again').toBe(results);
	await session.close();
});

test('after a delete in a sorted list, undo selects exactly the prints that came back', async () => {
	const { session, grid, titles } = await gridOf(
		['Tar', '300'],
		['Ash', '310'],
		['Fog', '320'],
		['Ebb', '330'],
		['Oak', '340'],
	);
	grid.order.sortBy({ column: 'title', way: 'up' });
	expect(titles()).toBe('Ash Ebb Fog Oak Tar');
	grid.selection.selectRows(1, 3);
	const deleted = grid.selection.rowIds;
	grid.rowEdits.remove();
	expect(titles()).toBe('Ash Tar');
	grid.edits.undo();
	expect([titles(), grid.selection.rowIds]).toEqual(['Ash Ebb Fog Oak Tar', deleted]);
	await session.close();
});

test.each([
	{ own: 'Fog Tar Oak Ash', shown: 'Fog Ash Tar Oak', selected: 'Fog', why: 'Ash and Tar stand between them' },
	{ own: 'Oak Elm Fog Tar Ash', shown: 'Oak Elm Fog Ash Tar', selected: 'Oak Elm Fog', why: 'they stand together' },
])(
	'arranged again between a delete and its undo, the rows come back as $shown: $selected selected, for $why',
	async (at) => {
		const { session, grid, titles } = await gridOf(...at.own.split(' ').map((title) => [title, '300'] as const));
		grid.order.sortBy({ column: 'title', way: 'up' });
		grid.selection.selectRows(1, titles().split(' ').indexOf('Oak'));
		const active = grid.selection.row;
		grid.rowEdits.remove();
		expect(titles()).toBe('Ash Tar');
		grid.order.arrangeAnew();
		grid.edits.undo();
		expect([titles(), selectedTitles(grid)]).toEqual([at.shown, at.selected]);
		expect(grid.selection.row?.id).toBe(active?.id);
		await session.close();
	},
);

test('filtered again between a delete and its undo, no print is selected that was left out when they were deleted', async () => {
	const { session, grid, titles } = await gridOf(['Low fog', '320'], ['Ash', '310'], ['Low oak', '330']);
	const none = grid.arranged.filter;
	grid.order.filterBy({ ...none, words: 'low' });
	expect(titles()).toBe('Low fog Low oak');
	grid.selection.selectRows(0, 1);
	grid.rowEdits.remove();
	grid.order.filterBy(none);
	grid.edits.undo();
	expect([titles(), selectedTitles(grid)]).toEqual(['Low fog Ash Low oak', 'Low fog']);
	await session.close();
});

test('worked-out cells are left alone after a column was hidden: that stays hidden, and one undo takes the paste back', async () => {
	const { session, grid } = await gridOf(['Tar', '300']);
	const id = session.show.rows[0]!.id;
	session.do((show, settings) => typeCells(show, [{ id, cells: { shape: '3:2' } }], settings, 'Type shape'));
	const before = session.show.rows;
	grid.selection.selectCell(id, 'picture width');
	grid.pasting.paste([['360', '240']]);
	expect(grid.pasting.offer?.workedOut).toHaveLength(1);
	grid.columns.hide(['maker']);
	grid.pasting.leaveWorkedOut();
	expect(session.show.rows[0]?.typed).toMatchObject({ 'picture width': '360' });
	expect(session.show.rows[0]?.typed).not.toHaveProperty('picture height');
	expect([grid.columns.indexOf('maker'), session.lastStep?.label]).toEqual([-1, 'Hide column']);
	grid.edits.undo();
	grid.edits.undo();
	expect(session.show.rows).toEqual(before);
	await session.close();
});

test('whole rows that are selected leave the columns where one is reading', async () => {
	const { session, grid } = await gridOf(['Tar', '300'], ['Ash', '310'], ['Fog', '320']);
	const column = grid.columns.indexOf('picture width');
	grid.selection.select(0, column);
	grid.selection.selectRows(0, 2);
	expect([grid.selection.rowIds.length, grid.selection.lookedAt]).toEqual([3, { row: 2, column }]);
	await session.close();
});

test('in a long show the order comes in later, by undo too: what is selected stays selected, and what is seen is said then', async () => {
	const prints = Array.from({ length: mostAtOnce + 2 }, (_, n) => [`P${(n * 7) % 211}`, `${200 + n}`] as const);
	const { session, grid } = await gridOf(...prints);
	await session.whenJudged;
	const first = () => grid.cells.rows[0]!.typed.title;
	const arranged = () => expect.poll(() => grid.arranged.isArranging).toBe(false);
	grid.selection.select(3, 1);
	grid.order.sortBy({ column: 'title', way: 'up' });
	expect([first(), grid.selection.rowIndex, grid.arranged.isArranging]).toEqual(['P0', 3, true]);
	expect(grid.notices.heard).not.toContain('sorted');
	await arranged();
	expect([first(), grid.selection.row?.typed.title]).toEqual(['P0', 'P21']);
	expect(grid.notices.heard).toBe('202 prints, sorted by title');
	grid.order.sortBy({ column: 'title', way: 'down' });
	await arranged();
	expect(first()).toBe('P210');
	// The neighbour in the sequence that is seen, where the active print goes.
	const next = grid.cells.rows[grid.selection.rowIndex + 1]!.typed.title;
	session.do((show) => removeRows(show, [grid.selection.row!.id], 'Delete print'));
	expect(grid.selection.row?.typed.title).toBe(next);
	grid.selection.selectRows(4, 6);
	const selected = grid.selection.rowIds;
	grid.edits.undo();
	grid.edits.undo();
	expect([first(), grid.arranged.isArranging]).toEqual(['P210', true]);
	await arranged();
	expect([first(), grid.selection.rowIds.every((id) => selected.includes(id))]).toEqual(['P0', true]);
	await session.close();
});
