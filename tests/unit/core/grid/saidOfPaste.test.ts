import { expect, test } from 'vitest';
import type { CellPlan } from '../../../../src/core/grid/planPaste.ts';
import {
	cannotFill,
	cellsTyped,
	saidOfNoChange,
	saidOfPaste,
	withoutCells,
} from '../../../../src/core/grid/saidOfPaste.ts';

const plan: CellPlan = {
	changes: [
		{ id: 'a', cells: { title: 'Pier', side: '' } },
		{ id: 'b', cells: { side: '70' } },
	],
	added: [],
	skipped: 0,
	outside: 0,
	range: { top: 0, bottom: 1, left: 0, right: 1 },
};

test.each([
	{ more: {}, unread: 0, said: 'Paste: 2 cells typed' },
	{ more: { added: [{ cells: { title: 'c', side: '' } }] }, unread: 0, said: 'Paste: 3 cells typed, 1 print added' },
	{ more: { skipped: 3 }, unread: 0, said: 'Paste: 2 cells typed, 3 cells skipped, as they are always worked out' },
	{ more: { outside: 1 }, unread: 0, said: 'Paste: 2 cells typed, 1 cell left out, past the last column' },
	{ more: {}, unread: 2, said: 'Paste: 2 cells typed, 2 cells not understood, kept as pasted' },
])('"$said"', ({ more, unread, said }) => {
	expect(saidOfPaste('Paste', { ...plan, ...more }, unread)).toBe(said);
});

test('cells that are cleared are not among those typed, and are not left alone', () => {
	expect(cellsTyped(plan)).toEqual([
		{ id: 'a', column: 'title' },
		{ id: 'b', column: 'side' },
	]);
	expect(withoutCells(plan, [{ id: 'b', column: 'side' }]).changes).toEqual([plan.changes[0]]);
	expect(withoutCells(plan, [{ id: 'a', column: 'title' }]).changes).toEqual([
		{ id: 'a', cells: { side: '' } },
		plan.changes[1],
	]);
});

test.each([
	{ more: {}, said: 'Paste: nothing was changed, the cells hold that already.' },
	{ more: { changes: [], skipped: 2 }, said: 'Paste: nothing was changed, those cells can only be worked out.' },
	{ more: { changes: [], outside: 1 }, said: 'Paste: nothing was changed, there is no column there.' },
])('"$said"', ({ more, said }) => {
	expect(saidOfNoChange('Paste', { ...plan, ...more })).toBe(said);
});

test('a fill that cannot begin says where it would fill from', () => {
	expect(cannotFill('down', 'cell')).toMatch(/no print above/);
	expect(cannotFill('right', 'cell')).toMatch(/no column before/);
	expect(cannotFill('right', 'head')).toMatch(/head of a column/);
});
