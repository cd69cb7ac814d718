import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
	alsoShown,
	keepShown,
	placeBehind,
	placeInShow,
	showAll,
	showAt,
} from '../../../../src/core/grid/shownRows.ts';
import type { Row } from '../../../../src/core/show/row.ts';

/** Rows in a line, a letter each: `abc`. */
const rowsOf = (ids: string): readonly Row[] => [...ids].map((id, order) => ({ id, order, typed: {} }));
/** What is seen, as a line of letters. */
const line = ({ rows }: { rows: readonly Row[] }) => rows.map(({ id }) => id).join('');
const seenOf = (show: string, seen: string, isSorted = false) =>
	showAt(
		rowsOf(show),
		[...seen].map((id) => show.indexOf(id)),
		isSorted,
	);

test.each([
	{ show: 'abcd', seen: 'bd', then: 'abcd', is: 'bd' },
	{ show: 'abcd', seen: 'bd', then: 'abd', is: 'bd' },
	{ show: 'abcd', seen: 'bd', then: 'acd', is: 'd' },
	{ show: 'abcd', seen: 'bd', then: 'abxcd', is: 'bxd' },
	{ show: 'abcd', seen: 'bd', then: 'dabc', is: 'db' },
	{ show: 'abcd', seen: '', then: 'abcdx', is: 'x' },
])('filtered: of $show $seen is seen; then, of $then: $is', ({ show, seen, then, is }) => {
	expect(line(keepShown(seenOf(show, seen), rowsOf(then)))).toBe(is);
});

test.each([
	{ show: 'abcd', seen: 'dbca', then: 'abcd', is: 'dbca' },
	{ show: 'abcd', seen: 'dbca', then: 'abxycd', is: 'dbxyca' },
	{ show: 'abcd', seen: 'dbca', then: 'xabcd', is: 'xdbca' },
	{ show: 'abcd', seen: 'dba', then: 'abcxd', is: 'dbxa' },
	{ show: 'abcd', seen: 'dbca', then: 'acd', is: 'dca' },
	{ show: 'abcd', seen: 'dbca', then: 'dcba', is: 'dbca' },
])('sorted: of $show $seen is seen; then, of $then: $is', ({ show, seen, then, is }) => {
	expect(line(keepShown(seenOf(show, seen, true), rowsOf(then)))).toBe(is);
});

test('typing keeps the sequence, and what is seen is the row as it is now', () => {
	const [a, b] = rowsOf('ab') as [Row, Row];
	const typed: Row = { ...b, typed: { title: 'Tar' } };
	expect(keepShown(showAt([a, b], [1, 0], true), [a, typed]).rows).toEqual([typed, a]);
});

test('a row that is left out can be seen all the same, in its place', () => {
	expect(line(alsoShown(seenOf('abcd', 'ad'), 'c'))).toBe('acd');
	expect(line(alsoShown(seenOf('abcd', 'da', true), 'c'))).toBe('dac');
	expect(line(alsoShown(seenOf('abcd', 'ad'), 'a'))).toBe('ad');
	expect(line(alsoShown(showAll(rowsOf('ab')), 'x'))).toBe('ab');
});

test('places in the show, and where something goes behind what is seen', () => {
	const shown = seenOf('abcd', 'db', true);
	expect([0, 1, 2].map((place) => placeInShow(shown, place))).toEqual([3, 1, -1]);
	expect([0, 1, 2, 9].map((place) => placeBehind(shown, place))).toEqual([0, 4, 2, 2]);
	expect([0, 2, 9].map((place) => placeBehind(showAll(rowsOf('ab')), place))).toEqual([0, 2, 2]);
});

test('whatever comes, goes and moves: every row that is new is seen, none that was left out, none twice', () =>
	fc.assert(
		fc.property(
			fc.shuffledSubarray('abcdef'.split('')),
			fc.shuffledSubarray('abcdefxyz'.split('')),
			fc.boolean(),
			(seen, then, isSorted) => {
				const sequence = isSorted ? seen : [...seen].sort();
				const after = line(keepShown(seenOf('abcdef', sequence.join(''), isSorted), rowsOf(then.join(''))));
				const wanted = then.filter((id) => seen.includes(id) || 'xyz'.includes(id));
				expect(after.split('').sort()).toEqual([...wanted].sort());
			},
		),
	));
