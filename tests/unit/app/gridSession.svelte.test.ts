import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { openSession, type Session } from '../../../src/app/session.svelte.ts';
import { workOut } from '../../../src/core/row/workOut.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import type { GridFocus } from '../../../src/ui/grid/gridHand.svelte.ts';
import { GridState } from '../../../src/ui/grid/gridState.svelte.ts';
import { namer } from '../core/show/randomEdits.ts';

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
			return grid.selectRange({ top, left, bottom: top + done.tall, right: left + done.wide });
		}
		case 'whole':
			return grid.selectWhole(done.what);
		case 'type':
			if (!grid.edit(true)) return;
			grid.setText(done.text);
			return void grid.commit('stay', true);
		case 'paste':
			return grid.paste(done.table);
		case 'draw':
			if (grid.range) grid.drawTo(Math.min(rows - 1, grid.range.bottom + done.down), grid.range.right + done.right);
			return grid.fillDrawn();
		case 'add':
			return grid.addRow(Math.min(done.place, rows));
		case 'move':
			return grid.moveRowsTo(Math.min(done.place, rows));
		case 'clear':
			return grid.clear();
		case 'fill down':
			return grid.fill('down');
		case 'fill right':
			return grid.fill('right');
		case 'duplicate':
			return grid.duplicateRows();
		case 'remove':
			return grid.removeRows();
		case 'leave':
			return grid.leaveWorkedOut();
		case 'undo':
			return grid.undo();
		case 'redo':
			return grid.redo();
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
	expect(session.results.map(({ solved }) => solved)).toEqual(rows.map((row) => workOut(row, session.settings).solved));
	expect(grid.selection === undefined).toBe(rows.length === 0);
	if (grid.range === undefined) return;
	expect(grid.range.top).toBeGreaterThanOrEqual(0);
	expect(grid.range.bottom).toBeLessThan(rows.length);
	expect(grid.range.right).toBeLessThan(gridColumns.length);
	expect(grid.rowsInHand).toHaveLength(grid.range.bottom - grid.range.top + 1);
}

function holdTo(grid: GridState, session: Session, { rows, focus }: Step['before']): void {
	expect(session.show.rows).toEqual(rows);
	if (focus !== undefined && rows.length > 0) expect(grid.focus).toEqual(focus);
}

test('any gestures: each is one step with its selection, and undo to the start and redo to the end give both', () =>
	fc.assert(
		fc.asyncProperty(fc.array(gesture, { minLength: 4, maxLength: 16 }), fc.uuid(), async (gestures, name) => {
			const session = await openSession({ databaseName: name, makeId: namer() });
			const grid = new GridState(session);
			grid.paste([
				['Low water', '', '300', '200'],
				['Salt road', '3:2'],
				['Kiln door', '', '', '', '290'],
			]);
			const begun = session.show.rows;
			const done: Step[] = [];
			const undone: Step[] = [];
			for (const each of gestures) {
				const before = { rows: session.show.rows, focus: grid.focus };
				make(grid, session, each);
				const after = { rows: session.show.rows, focus: grid.focus };
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
					const pasted = done.pop()!;
					if (session.canRedo) undone.push(pasted);
					else done.push({ before: pasted.before, after });
				} else if (before.rows !== after.rows) {
					done.push({ before, after });
					undone.length = 0;
				}
				await holdTogether(grid, session, name);
			}
			const end = session.show.rows;
			for (const step of done.toReversed()) {
				grid.undo();
				holdTo(grid, session, step.before);
			}
			expect(session.show.rows).toEqual(begun);
			for (const step of done) {
				grid.redo();
				holdTo(grid, session, step.after);
			}
			expect(session.show.rows).toEqual(end);
			await holdTogether(grid, session, name);
			session.close();
		}),
		{ numRuns: 150 },
	));
