import { expect, test } from 'vitest';
import { addRows } from '../../../../src/core/commands/addRows.ts';
import { duplicateRows } from '../../../../src/core/commands/duplicateRows.ts';
import { apply } from '../../../../src/core/show/edit.ts';
import { moveRows } from '../../../../src/core/commands/moveRows.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { removeRows } from '../../../../src/core/commands/removeRows.ts';
import { replaceShow } from '../../../../src/core/commands/replaceShow.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import type { Show } from '../../../../src/core/show/show.ts';
import { allColumns, importEdit, namer } from '../show/randomEdits.ts';

const { settings } = readSettings({});
const row = (id: string, order: number, typed: Row['typed'] = { title: id }): Row => ({ id, order, typed });
/** A show with a row a letter. */
const showOf = (letters: string): Show => ({
	id: 'show',
	name: 'Spring',
	settings: {},
	rows: [...letters].map((letter, index) => row(letter, index + 1)),
});
const lettersOf = ({ rows }: Show) => rows.map(({ id }) => id).join('');

test.each([
	{ rows: 'bc', to: 0, gives: 'bcade', touches: 2 },
	{ rows: 'b', to: 5, gives: 'acdeb', touches: 1 },
	{ rows: 'b', to: 99, gives: 'acdeb', touches: 1 },
	{ rows: 'ad', to: 2, gives: 'badce', touches: 2 },
	{ rows: 'bc', to: 1, gives: 'abcde', touches: 0 },
	{ rows: 'bc', to: 3, gives: 'abcde', touches: 0 },
	{ rows: 'ec', to: 1, gives: 'acebd', touches: 2 }, // they keep their order
	{ rows: 'x', to: 1, gives: 'abcde', touches: 0 },
])('$rows of abcde moved before place $to gives $gives', ({ rows, to, gives, touches }) => {
	const show = showOf('abcde');
	const edit = moveRows(show, [...rows], to, 'move');
	expect(lettersOf(apply(show, edit))).toBe(gives);
	expect(edit.rows).toHaveLength(touches);
});

test.each([
	{ at: 0, gives: 'xyabc' },
	{ at: 2, gives: 'abxyc' },
	{ at: 3, gives: 'abcxy' },
	{ at: 50, gives: 'abcxy' },
	{ at: -1, gives: 'xyabc' },
])('two rows added at $at of abc give $gives, touching no other', ({ at, gives }) => {
	const show = showOf('abc');
	const edit = addRows(show, [{ cells: { title: 'x' } }, { cells: {} }], at, ['x', 'y'], settings, 'add');
	expect(lettersOf(apply(show, edit))).toBe(gives);
	expect(edit.rows).toHaveLength(2);
	expect(apply(show, edit).rows.find(({ id }) => id === 'x')?.typed).toEqual({ title: 'x' });
});

test('an added row may come with units and foreign columns, and a size in one cell', () => {
	const start = { cells: { 'picture width': '18 x 12' }, units: { top: 'in' }, extra: { lab: '7' } } as const;
	const edit = addRows(showOf(''), [start], 0, ['x'], settings, 'add');
	expect(edit.rows[0]?.after).toEqual({
		id: 'x',
		order: 1,
		typed: { 'picture width': '18', 'picture height': '12' },
		units: { top: 'in' },
		extra: { lab: '7' },
	});
});

test('rows are removed, and those that are not there are passed over', () => {
	const show = showOf('abc');
	expect(lettersOf(apply(show, removeRows(show, ['b', 'z', 'c'], 'remove')))).toBe('a');
});

test('copies stand behind the last row copied, without the print id', () => {
	const show = { ...showOf('abc'), rows: [row('a', 1, { 'print id': 'P-1', top: '70' }), row('b', 2), row('c', 3)] };
	const after = apply(show, duplicateRows(show, ['a', 'b'], ['x', 'y'], 'duplicate'));
	expect(lettersOf(after)).toBe('abxyc');
	expect(after.rows[2]).toEqual({ id: 'x', order: 2 + 1 / 3, typed: { top: '70' } });
});

test('imported rows take the place of those of the same print, and the others come last', () => {
	const show = { ...showOf('abc'), rows: [row('a', 1), row('b', 2, { 'print id': 'P-2' }), row('c', 3)] };
	const file = [row('P-2', 1, { 'print id': 'P-2', top: '70' }), row('new', 2), row('c', 3, { top: '80' })];
	const after = apply(show, importEdit(show, file, allColumns, namer()));
	expect(lettersOf(after)).toBe('abcnew');
	expect(after.rows.map(({ typed }) => typed.top)).toEqual([undefined, '70', '80', undefined]);
	expect(after.rows[1]?.id).toBe('b');
});

test('a row that was exported before its print id was typed still finds its place', () => {
	const show = { ...showOf('a'), rows: [row('a', 1, { 'print id': 'P-1' })] };
	expect(lettersOf(apply(show, importEdit(show, [row('a', 1, { top: '70' })], allColumns, namer())))).toBe('a');
});

test('a name that was only written to the file as a print id is not typed by taking the file in', () => {
	const show = showOf('ab');
	const file = show.rows.map((one) => ({ ...one, typed: { ...one.typed, 'print id': one.id } }));
	expect(importEdit(show, file, allColumns, namer()).rows).toEqual([]);
});

test('no imported row is lost where several name one print', () => {
	const show = showOf('ab');
	const file = [row('a', 1, { top: '1' }), row('a', 2, { top: '2' }), row('q', 3, { 'print id': 'a', top: '3' })];
	const after = apply(show, importEdit(show, file, allColumns, namer()));
	expect(after.rows.map(({ typed }) => typed.top)).toEqual(['1', undefined, '2', '3']);
	expect(new Set(after.rows.map(({ id }) => id)).size).toBe(4);
});

test('a file of some columns leaves what was typed into the others, and its blank cells clear', () => {
	const before: Row = {
		...row('a', 1, { title: 'Pier', top: '7', price: '120', note: 'x' }),
		units: { top: 'cm', bottom: 'in' },
		extra: { lab: '7', shelf: '2' },
	};
	const show = { ...showOf(''), rows: [before] };
	const file = [{ ...row('a', 1, { 'print id': 'a', price: '150' }), extra: { lab: '8' } }];
	expect(apply(show, importEdit(show, file, ['print id', 'price', 'note'], namer())).rows).toEqual([
		{ ...before, typed: { title: 'Pier', top: '7', price: '150' }, extra: { lab: '8', shelf: '2' } },
	]);
});

test('importing what is there changes nothing', () => {
	const show = showOf('abc');
	expect(importEdit(show, structuredClone(show.rows) as Row[], allColumns, namer()).rows).toEqual([]);
});

test('another show takes the place of all, rows that are the same are not touched', () => {
	const show = showOf('abc');
	const next = { name: 'Autumn', settings: { unit: 'in' }, rows: [row('b', 2), row('x', 7), row('x', 7)] };
	const edit = replaceShow(show, next, namer(), 'open');
	const after = apply(show, edit);
	expect(after).toMatchObject({ id: 'show', name: 'Autumn', settings: { unit: 'in' } });
	expect(lettersOf(after)).toBe('bxn0'); // orders 2, 7, 7 do not ascend: numbered afresh
	expect(after.rows.map(({ order }) => order)).toEqual([1, 2, 3]);
	expect(replaceShow(show, { ...show, rows: structuredClone(show.rows) }, namer(), 'open').rows).toEqual([]);
});
