import { expect, test } from 'vitest';
import {
	at,
	between,
	clamp,
	contains,
	everything,
	extendTo,
	follow,
	followColumns,
	headRow,
	isSingle,
	rangeOf,
	wholeColumns,
	wholeRows,
} from '../../../../src/core/grid/selection.ts';

/** A name a row. */
const letters = (rows: string) => rows.split('');
const extent = { rows: 4, columns: 6 };
const some = between({ row: 2, column: 3 }, { row: 1, column: 5 });

test('a range is the rectangle between two corners, whichever they are', () => {
	const range = { top: 1, bottom: 2, left: 3, right: 5 };
	expect(rangeOf(some)).toEqual(range);
	expect(rangeOf(between(some.head, some.anchor))).toEqual(range);
	expect([contains(range, { row: 1, column: 5 }), contains(range, { row: 0, column: 5 })]).toEqual([true, false]);
	expect([contains(range, { row: 2, column: 2 }), contains(range, { row: 3, column: 3 })]).toEqual([false, false]);
});

test('extending keeps the anchor', () => {
	expect(extendTo(some, { row: 3, column: 0 })).toEqual({ ...some, head: { row: 3, column: 0 } });
	expect([isSingle(some), isSingle(at(1, 1))]).toEqual([false, true]);
});

test('rows, columns and everything', () => {
	expect(rangeOf(wholeRows(some, extent))).toEqual({ top: 1, bottom: 2, left: 0, right: 5 });
	expect(rangeOf(wholeColumns(some, extent))).toEqual({ top: 0, bottom: 3, left: 3, right: 5 });
	expect(rangeOf(everything(some, extent))).toEqual({ top: 0, bottom: 3, left: 0, right: 5 });
	expect(everything(some, extent).active).toEqual({ row: 2, column: 3 });
});

test('a selection stays inside a grid that has shrunk', () => {
	expect(clamp(some, { rows: 2, columns: 4 })).toEqual(between({ row: 1, column: 3 }, { row: 1, column: 3 }));
	expect(clamp(at(headRow, 2), extent)).toEqual(at(headRow, 2));
	expect(clamp(some, { rows: 0, columns: 4 })).toBeUndefined();
	expect(clamp(some, extent)).toEqual(some);
});

test.each([
	{ after: 'xabcd', rows: [3, 2] }, // a row came before them
	{ after: 'acd', rows: [1, 1] }, // the row of the head is gone, the next takes its place
	{ after: 'ab', rows: [1, 1] }, // the active row is gone, and none is after it
	{ after: 'abcd', rows: [2, 1] },
	{ after: 'acbd', rows: [1, 2] },
])('rows abcd become $after: the selection from c to b stands at $rows', ({ after, rows: [active, head] }) => {
	expect(follow(some, letters('abcd'), letters(after))).toEqual(
		between({ row: active!, column: 3 }, { row: head!, column: 5 }),
	);
});

test('nothing is selected where no rows are left, and a head stays a head', () => {
	expect(follow(some, letters('abcd'), [])).toBeUndefined();
	expect(follow(at(headRow, 1), ['a'], ['b'])).toEqual(at(headRow, 1));
});

test('a range shrinks to its active cell where its ends no longer stand around it', () => {
	const middle = { ...between({ row: 0, column: 0 }, { row: 2, column: 0 }), active: { row: 1, column: 0 } };
	expect(follow(middle, letters('abc'), letters('acb'))).toEqual(at(2, 0));
});

test.each([
	{ after: 'xabcdef', columns: [4, 6] }, // a column came before them
	{ after: 'abcef', columns: [3, 4] }, // the active column is gone, the next takes its place
	{ after: 'abc', columns: [2, 2] }, // neither is left, nor any after them
])(
	'columns abcdef become $after: the selection from d to f stands at $columns',
	({ after, columns: [active, head] }) => {
		expect(followColumns(some, letters('abcdef'), letters(after))).toEqual(
			between({ row: 2, column: active! }, { row: 1, column: head! }),
		);
	},
);
