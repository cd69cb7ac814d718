import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printsOf } from '../../../../src/core/show/blankRow.ts';
import {
	cellKey,
	type Choices,
	chooseAll,
	chooseMerge,
	isConflict,
	parted,
	rowKey,
} from '../../../../src/core/merge/choices.ts';
import { isSameCell } from '../../../../src/core/merge/cells.ts';
import type { Exchange } from '../../../../src/core/merge/exchange.ts';
import { mergeEdit } from '../../../../src/core/merge/mergeEdit.ts';
import { type Merge, mergeRows, type Side } from '../../../../src/core/merge/mergeRows.ts';
import { asideLines, differenceGroups } from '../../../../src/core/merge/mergeWords.ts';
import { type ColumnName, columns } from '../../../../src/core/show/columns.ts';
import { apply } from '../../../../src/core/show/edit.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { allColumns, namer } from '../show/randomEdits.ts';

const { settings } = readSettings({ unit: 'mm' });
const row = (id: string, order: number, typed: Row['typed'] = {}, more: Partial<Row> = {}): Row => ({
	...{ id, order, typed },
	...more,
});
const given = (rows: readonly Row[], at = 1, more: Partial<Exchange> = {}): Exchange => ({
	...{ id: `x${at}`, direction: 'given', fileName: 'rows.csv', at, unit: 'mm', rows },
	...more,
});
const merged = (
	here: readonly Row[],
	there: readonly Row[],
	exchanges: readonly Exchange[],
	inFile: readonly ColumnName[] = allColumns,
) => mergeRows(here, { rows: there, columns: inFile }, exchanges, settings, namer('made'));

/** The rows after a merge was taken. */
const taken = (here: readonly Row[], merge: Merge, choices: Choices = new Map()) =>
	apply({ id: 's', name: '', settings: {}, rows: here }, mergeEdit(here, merge, choices, settings, 'take')).rows;

/** What there is to decide. */
const cellsOf = (merge: Merge) => cellsIn(parted(merge.rows, 'theirs or both'));
/** What only here was changed. */
const onlyHere = (merge: Merge) => cellsIn(parted(merge.rows, 'only here'));
const cellsIn = (rows: Merge['rows']) =>
	rows.flatMap((difference) =>
		difference.kind === 'changed'
			? difference.cells.map(({ column, here, there, changedBy }) => [
					...[difference.id, column.name, here.text, there.text, changedBy],
				])
			: [[difference.id, difference.kind]],
	);

describe('pictures', () => {
	const picture = (sign: string, file = 'tide.jpg') => ({ picture: { hash: sign.repeat(64), file } });
	const named = (sign?: string, file = 'tide.jpg') =>
		row('a', 1, { title: 'Tide', 'picture file': file }, sign === undefined ? {} : picture(sign, file));

	test('which picture a print was given comes with the name of its file', () => {
		const here = [row('a', 1, { title: 'Tide' })];
		const merge = merged(here, [named('b')], [given(here)]);
		expect(taken(here, merge)[0]).toMatchObject(picture('b'));
	});

	test('another picture of the same name is a difference, and is taken as one', () => {
		const here = [named('a')];
		const merge = merged(here, [named('b')], [given(here)]);
		expect(cellsOf(merge)).toEqual([['a', 'picture file', 'tide.jpg', 'tide.jpg', 'there']]);
		expect(taken(here, merge)[0]).toMatchObject(picture('b'));
	});

	test('a list, which does not say which picture it is, changes none', () => {
		const here = [named('a')];
		const merge = merged(here, [named()], [given(here)]);
		expect([merge.same, cellsOf(merge)]).toEqual([1, []]);
		expect(taken(here, merge)[0]).toMatchObject(picture('a'));
	});
});

describe('against the file exchanged last', () => {
	const base = [row('a', 1, { title: 'Pier', price: '100', note: 'x' }), row('b', 2, { title: 'Quay' })];

	test('a list from before the medium was a column is complete where nobody uses it; one that lacks another is not', () => {
		const inFile = allColumns.filter((name) => name !== 'medium');
		const isRemoved = (here: readonly Row[], columns = inFile) =>
			taken(here, merged(here, [base[0]!], [given(base)], columns)).length === 1;
		expect(isRemoved(base)).toBe(true);
		expect(
			isRemoved(
				base,
				inFile.filter((name) => name !== 'wall'),
			),
		).toBe(false);
		expect(isRemoved([{ ...base[0]!, typed: { ...base[0]!.typed, medium: 'etching' } }, base[1]!])).toBe(false);
	});

	test('a list without buyers is complete, for none that is passed on has them, and those that are here stay', () => {
		const here = [{ ...base[0]!, typed: { ...base[0]!.typed, buyer: 'R. Thistle' } }, base[1]!];
		const inFile = allColumns.filter((name) => name !== 'buyer');
		const back = [row('a', 1, { title: 'Pier', price: '120', note: 'x' })];
		const after = taken(here, merged(here, back, [given(here)], inFile));
		expect(after.map(({ typed }) => typed)).toEqual([{ title: 'Pier', price: '120', note: 'x', buyer: 'R. Thistle' }]);
	});

	test('what only they changed is taken, what only here was changed stays, what both changed is asked', () => {
		const here = [row('a', 1, { title: 'Pier', price: '120', note: 'mine' }), base[1]!];
		const there = [row('a', 1, { title: 'Pier head', price: '130', note: 'x' }), row('b', 2, { title: 'Quay' })];
		const merge = merged(here, there, [given(base)]);
		expect(cellsOf(merge)).toEqual([
			['a', 'title', 'Pier', 'Pier head', 'there'],
			['a', 'price', '120', '130', 'both'],
		]);
		expect(onlyHere(merge)).toEqual([['a', 'note', 'mine', 'x', 'here']]);
		expect(merge.same).toBe(1);
		expect(taken(here, merge)[0]!.typed).toEqual({ title: 'Pier head', price: '120', note: 'mine' });
		const all = taken(here, merge, chooseMerge(merge, 'there'));
		expect(all[0]!.typed).toEqual({ title: 'Pier head', price: '130', note: 'mine' });
		const price = merge.rows[0]!.kind === 'changed' ? merge.rows[0]!.cells[1]! : undefined;
		const one = taken(here, merge, new Map([[cellKey(merge.rows[0]!, price!), 'there']]));
		expect(one[0]!.typed.price).toBe('130');
		// What only here was changed can be taken back, if it is said.
		const back = taken(here, merge, chooseAll(parted(merge.rows, 'only here'), 'there'));
		expect(back[0]!.typed).toEqual({ title: 'Pier head', price: '120', note: 'x' });
		expect(taken(here, merge, chooseMerge(merge, 'here'))).toEqual(here);
	});

	test('a blank cell of theirs clears what they cleared, and leaves what was filled here since', () => {
		const here = [row('a', 1, { ...base[0]!.typed, maker: 'Ilse' }), base[1]!];
		const there = [row('a', 1, { title: 'Pier', price: '100' }), base[1]!];
		const merge = merged(here, there, [given(base)]);
		expect(cellsOf(merge)).toEqual([['a', 'note', 'x', '', 'there']]);
		expect(taken(here, merge)[0]!.typed).toEqual({ title: 'Pier', price: '100', maker: 'Ilse' });
	});

	test('prints added and removed on either side', () => {
		const here = [base[0]!, row('c', 3, { title: 'Mine' })];
		const there = [row('b', 1, { title: 'Quay' }), row('d', 2, { title: 'Theirs' })];
		const merge = merged(here, there, [given(base)]);
		expect(cellsOf(merge)).toEqual([
			['d', 'added'],
			['a', 'removed there'],
		]);
		expect(onlyHere(merge)).toEqual([['b', 'removed here']]); // unchanged there
		expect(merge.onlyHere).toBe(1); // c
		expect(taken(here, merge).map(({ id }) => id)).toEqual(['c', 'd']);
		expect(taken(here, merge, chooseMerge(merge, 'there')).map(({ id }) => id)).toEqual(['c', 'd']);
		const back = new Map([[rowKey({ id: 'b' }), 'there']] as const);
		expect(taken(here, merge, back).map(({ id }) => id)).toEqual(['c', 'b', 'd']);
	});

	test('a print that one side removed and the other changed is asked about, and kept', () => {
		const changedHere = [row('a', 1, { title: 'Pier, day' }), base[1]!];
		const merge = merged(changedHere, [base[1]!], [given(base)]);
		expect(merge.rows).toMatchObject([{ kind: 'removed there', id: 'a', isChangedHere: true }]);
		expect(taken(changedHere, merge)).toEqual(changedHere);
		const removedHere = [base[1]!];
		const back = merged(removedHere, [row('a', 1, { title: 'Pier, day' }), base[1]!], [given(base)]);
		expect(back.rows).toMatchObject([{ kind: 'removed here', id: 'a', isChangedThere: true }]);
		expect(taken(removedHere, back).map(({ id }) => id)).toEqual(['a', 'b']);
		expect(taken(removedHere, back, new Map([[rowKey(back.rows[0]!), 'here']]))).toEqual(removedHere);
	});

	test('a print that is gone here, and of which a cell was only cleared there, is asked about too', () => {
		const base = [row('a', 1, { title: 'Low water', note: 'torn' }), row('b', 2, { title: 'Kiln door' })];
		const [kept, cleared] = [[base[1]!], [row('a', 1, { title: 'Low water' }), base[1]!]];
		expect(merged(kept, cleared, [given(base)]).rows).toEqual([
			expect.objectContaining({ kind: 'removed here', id: 'a', isChangedThere: true }),
		]);
		expect(merged(kept, base, [given(base)]).rows).toEqual([
			expect.objectContaining({ kind: 'removed here', id: 'a', isChangedThere: false }),
		]);
	});

	test('a list of some columns removes nothing unless it is said, and says nothing of other columns', () => {
		const merge = merged(base, [row('a', 1, { price: '150' })], [given(base)], ['print id', 'price']);
		expect(cellsOf(merge)).toEqual([
			['a', 'price', '100', '150', 'there'],
			['b', 'removed there'],
		]);
		expect(taken(base, merge)).toEqual([row('a', 1, { title: 'Pier', price: '150', note: 'x' }), base[1]]);
		expect(taken(base, merge, chooseMerge(merge, 'there')), 'all of theirs removes none').toHaveLength(2);
		expect(taken(base, merge, chooseAll(merge.rows, 'there'))).toHaveLength(1);
	});

	test('of files that crossed, the one that a file comes from counts, not the one that went out last', () => {
		const changedHere = [row('a', 1, { ...base[0]!.typed, price: '120' }), base[1]!];
		const there = [row('a', 1, { ...base[0]!.typed, note: 'theirs' }), base[1]!]; // made before they had ours
		const merge = merged(changedHere, there, [given(changedHere, 2), given(base, 1)]);
		expect(merge.base?.at).toBe(1);
		expect(cellsOf(merge)).toEqual([['a', 'note', 'x', 'theirs', 'there']]);
		expect(taken(changedHere, merge)[0]!.typed).toMatchObject({ price: '120', note: 'theirs' });
	});

	test('a list of prices that came between does not hide what a whole file comes from', () => {
		const prices = given([row('a', 1, { price: '100' }), row('b', 2)], 2, { columns: ['print id', 'price'] });
		const there = [row('a', 1, { ...base[0]!.typed, title: 'Pier head' }), base[1]!];
		const merge = merged(base, there, [prices, given(base, 1)]);
		expect(cellsOf(merge)).toEqual([['a', 'title', 'Pier', 'Pier head', 'there']]);
		// Where there is only the list to compare with, what it does not say is not known.
		const alone = merged(base, there.slice(0, 1), [prices]);
		expect(cellsOf(alone)).toEqual([
			['a', 'title', 'Pier', 'Pier head', 'unknown'],
			['b', 'removed there'],
		]);
		expect(taken(base, alone)).toEqual(base);
	});

	test('a file without rows removes none', () => {
		expect(merged(base, [], [given(base)]).rows).toEqual([]);
	});

	test('a file that lacks a print, or has one, of a later exchange comes from the one before; of two alike the newer', () => {
		const more = [...base, row('c', 3)];
		expect(merged(more, base, [given(more, 2), given(base, 1)])).toMatchObject({ rows: [], base: { at: 1 } });
		const removed = merged(base, more, [given(base, 2), given(more, 1)]);
		expect(onlyHere(removed)).toEqual([['c', 'removed here']]);
		expect(merged(base, base, [given(base, 2), given(base, 1)]).base?.at).toBe(2);
	});

	test('what was exchanged under another unit is read in that, and a cell taken leaves its unit behind', () => {
		const here = [row('a', 1, { side: '7', top: '70' }, { units: { side: 'cm' } })];
		const there = [row('a', 1, { side: '80 mm', top: '70 mm' })];
		const merge = merged(here, there, [given([row('a', 1, { side: '7', top: '70 mm' })], 1, { unit: 'cm' })]);
		expect(cellsOf(merge)).toEqual([['a', 'side', '7', '80 mm', 'there']]);
		expect(onlyHere(merge)).toEqual([]);
		expect(taken(here, merge)).toEqual([row('a', 1, { side: '80 mm', top: '70' })]);
	});

	test('the columns of other programs are compared like ours', () => {
		const hued = (mine: string, other: string) => row('a', 1, {}, { extra: { hue: mine, tone: other } });
		const here = [hued('blue', 'dark')];
		const merge = merged(here, [hued('red', 'light')], [given([hued('blue', 'light')])]);
		expect([cellsOf(merge), onlyHere(merge)]).toEqual([
			[['a', 'hue', 'blue', 'red', 'there']],
			[['a', 'tone', 'dark', 'light', 'here']],
		]);
		expect(taken(here, merge)).toEqual([hued('red', 'dark')]);
		const back = chooseAll(parted(merge.rows, 'only here'), 'there');
		expect(taken(here, merge, back)).toEqual([hued('red', 'light')]);
		expect(taken(here, merge, new Map([...back, ...chooseMerge(merge, 'here')])), 'keep all of yours').toEqual(here);
	});

	test('a print brought back stands where it stood among what the file has no more', () => {
		const all = ['a', 'b', 'c', 'd', 'e'].map((id, at) => row(id, at + 1, { title: id }));
		const [a, b, c, d, e] = all as [Row, Row, Row, Row, Row];
		const here = [a, b, { ...c, typed: { title: 'c', note: 'mine' } }, e];
		const there = [a, b, { ...d, typed: { title: 'd', note: 'theirs' } }, row('new', 9, { title: 'new' }), e];
		const merge = merged(here, there, [given(all)]);
		expect(taken(here, merge).map(({ id }) => id)).toEqual(['a', 'b', 'c', 'd', 'new', 'e']);
		expect(merge.order.there).toEqual(['a', 'b', 'c', 'd', 'new', 'e']);
	});

	test('another order is applied only when it is asked for', () => {
		const three = [...base, row('c', 3)];
		const there = [three[2]!, three[0]!, three[1]!];
		const merge = merged(three, there, [given(three)]);
		expect(merge.order.changedBy).toBe('there');
		expect(taken(three, merge)).toEqual(three);
		expect(taken(three, merge, chooseMerge(merge, 'there'))).toEqual(three);
		expect(taken(three, merge, new Map([['order', 'there']])).map(({ id }) => id)).toEqual(['c', 'a', 'b']);
		expect(taken(three, merge, chooseMerge(merge, 'here'))).toEqual(three);
		const moved = [three[1]!, three[0]!, three[2]!].map((each, at) => ({ ...each, order: at + 1 }));
		expect(taken(moved, merged(moved, there, [given(three)]))).toEqual(moved);
	});

	test('rows that only one side has stand behind their neighbour', () => {
		const here = [base[0]!, row('mine', 1.5), base[1]!];
		const there = [row('first', 1), base[0]!, row('theirs', 2), base[1]!, row('last', 9)];
		const ids = taken(here, merged(here, there, [given(base)])).map(({ id }) => id);
		expect(ids).toEqual(['first', 'a', 'theirs', 'mine', 'b', 'last']);
	});
});

describe('with no file exchanged before', () => {
	test('what differs is asked, what is only blank here is filled, and nothing here is removed', () => {
		const here = [row('a', 1, { price: '100', maker: 'Ilse' }), row('b', 2)];
		const merge = merged(here, [row('a', 1, { price: '130', note: 'new' })], []);
		expect(cellsOf(merge)).toEqual([
			['a', 'maker', 'Ilse', '', 'unknown'],
			['a', 'price', '100', '130', 'unknown'],
			['a', 'note', '', 'new', 'there'],
		]);
		expect(taken(here, merge)).toEqual([row('a', 1, { price: '100', maker: 'Ilse', note: 'new' }), row('b', 2)]);
	});

	test('all of theirs leaves the order', () => {
		const here = [row('a', 1), row('b', 2, { price: '1' })];
		const merge = merged(here, [row('b', 1, { price: '2' }), row('a', 2)], []);
		expect(taken(here, merge, chooseMerge(merge, 'there')).map(({ id }) => id)).toEqual(['a', 'b']);
	});

	test('new rows come last', () => {
		const here = [row('a', 1), row('b', 2)];
		expect(taken(here, merged(here, [row('q', 1), row('b', 2)], [])).map(({ id }) => id)).toEqual(['a', 'b', 'q']);
	});
});

describe('the same print', () => {
	const pier = { number: '7', title: 'Pier' };
	test.each([
		{
			what: 'the print id typed',
			here: row('h', 1, { 'print id': 'P-1' }),
			there: row('P-1', 1, { 'print id': 'P-1' }),
		},
		{ what: 'the name of the row', here: row('h', 1), there: row('h', 1) },
		{ what: 'number and title', here: row('h', 1, pier), there: row('t', 1, { number: '7 ', title: 'pier' }) },
		{ what: 'a title alone', here: row('h', 1, { title: 'Pier' }), there: row('t', 1, { title: 'Pier' }) },
	])('is found by $what', ({ here, there }) => {
		expect(merged([here], [there], []).fileRows.map(({ id }) => id)).toEqual(['h']);
	});
	test.each([
		{
			what: 'two prints share number and title, and it agrees with neither more',
			here: [row('h', 1, { ...pier, price: '1' }), row('i', 2, { ...pier, price: '2' })],
			there: row('t', 1, { ...pier, price: '3' }),
		},
		{
			what: 'two of the file share number and title, and agree with neither more',
			here: [row('h', 1, { ...pier, price: '1' })],
			there: [row('t', 1, { ...pier, price: '2' }), row('u', 2, { ...pier, price: '3' })],
		},
		{
			what: 'the makers differ',
			here: [row('h', 1, { ...pier, maker: 'Ilse' })],
			there: row('t', 1, { ...pier, maker: 'Jonah' }),
		},
		{ what: 'neither has a number or title', here: [row('h', 1)], there: row('t', 1) },
	])('is not guessed where $what', ({ here, there }) => {
		const rows = [there].flat();
		expect(merged(here, rows, []).rows.map(({ kind }) => kind)).toEqual(rows.map(() => 'added'));
	});
	test.each([
		['one that nobody knows', {}],
		['none', { unnamed: ['made'] }],
	])('a row whose print id is now %s is found by its title', (_, more) => {
		const here = [row('h', 1, pier)];
		const file = { rows: [row('made', 1, pier)], columns: allColumns, ...more };
		expect(mergeRows(here, file, [given(here)], settings, namer()).rows).toEqual([]);
	});
	test('a row is found by its title, though another print id was typed there: it is said once, and yours stay', () => {
		const mine = ['Pier', 'Quay', 'Weir'].map((title, at) => row(`h${at}`, at, { title, 'print id': `P-${at}` }));
		const there = mine.map(({ typed: cells }, at) => row(`${at}`, at, { ...cells, 'print id': `${at + 1}` }));
		const merge = merged(mine, there, [given(mine)]);
		expect(cellsOf(merge)).toEqual([]);
		expect(asideLines(merge).map(({ kind, rows, sentence }) => [kind, rows.length, sentence])).toEqual([
			[...['print id', 3], '3 print ids are not the ones here. The prints were found by what else the file says.'],
		]);
		expect(taken(mine, merge)).toEqual(mine);
	});
	const typedRow = (id: string, printId: string, more: Row['typed'] = {}) =>
		row(id, 1, { 'print id': printId, ...more });
	test.each([
		{
			what: 'in another normal form, with spaces that do not break',
			title: 'Cafe\u0301\u00a0 at noon',
			here: 'Café at noon',
		},
		{ what: 'in capitals', title: 'CAFÉ AT NOON', here: 'Café at noon' },
	])('is found by a title $what', ({ title, here }) => {
		expect(merged([row('h', 1, { title: here })], [row('t', 1, { title })], []).rows).not.toMatchObject([
			{ kind: 'added' },
		]);
	});
	test('is found by the title alone in a file that has no numbers', () => {
		const here = [row('h', 1, pier), row('i', 2, { number: '8', title: 'Quay' })];
		const file = {
			rows: [row('t', 1, { title: 'Quay', price: '9' })],
			columns: ['title', 'price'] as const,
			unnamed: ['t'],
		};
		expect(mergeRows(here, file, [], settings, namer()).rows).toMatchObject([{ kind: 'changed', id: 'i' }]);
	});
	test('is found by the print id that it had when it was exchanged, though it has another here now', () => {
		const base = [typedRow('h', 'P-1', pier), typedRow('i', 'P-2')];
		const here = [typedRow('h', 'P-2', pier), typedRow('i', 'P-1')];
		const there = [typedRow('P-1', 'P-1', { ...pier, price: '9' }), typedRow('P-2', 'P-2')];
		const merge = merged(here, there, [given(base)]);
		expect(cellsOf(merge)).toEqual([['h', 'price', '', '9', 'there']]);
		expect(merge.rows).toHaveLength(2);
	});
	test('is found by the name of its row, though it has got a print id here since', () => {
		expect(merged([typedRow('h', 'P-2')], [row('h', 1)], []).fileRows.map(({ id }) => id)).toEqual(['h']);
	});
	test('is not taken for another of its title that stands in its place here', () => {
		const merge = merged([row('new', 1, pier)], [typedRow('h', 'P-1', pier)], [given([typedRow('h', 'P-1', pier)])]);
		expect(onlyHere(merge)).toEqual([['h', 'removed here']]);
	});
	test('is found where the other side has given it a print id', () => {
		const merge = merged([row('h', 1, pier)], [typedRow('P-1', 'P-1', pier)], [given([row('h', 1, pier)])]);
		expect(taken([row('h', 1, pier)], merge)).toEqual([typedRow('h', 'P-1', pier)]);
	});
	test('is found where a spreadsheet has taken the zeros before a print id, or put spaces behind it', () => {
		const here = [typedRow('h', '0012'), typedRow('i', 'P-2'), typedRow('j', '013'), typedRow('k', '13')];
		const there = [typedRow('12', '12'), typedRow('P-2', 'P-2\u00a0'), typedRow('13', '13')];
		expect(merged(here, there, []).fileRows.map(({ id }) => id)).toEqual(['h', 'i', 'k']);
	});
	test('is found again where two have one print id, so that the same file taken twice adds nothing', () => {
		const there = [typedRow('P-1', 'P-1', { price: '1' }), typedRow('t', 'P-1', { price: '2' })];
		const file = { rows: there, columns: allColumns, unnamed: ['t'] };
		const first = mergeRows([], file, [], settings, namer('made'));
		const here = taken([], first);
		expect(here).toHaveLength(2);
		const known = given(first.fileRows, 2, { direction: 'taken' });
		const again = { ...file, rows: [there[0]!, { ...there[1]!, id: 'u' }], unnamed: ['u'] };
		expect(mergeRows(here, again, [known], settings, namer('new')).rows).toEqual([]);
	});
	test('a made name that is taken is replaced', () => {
		const here = [row('a', 1, { 'print id': 'P-1' })];
		const there = [row('P-1', 1, { 'print id': 'P-1' }), row('a', 2, { 'print id': 'P-9', title: 'Other' })];
		const after = taken(here, merged(here, there, []));
		expect(after.map(({ id }) => id)).toEqual(['a', 'made0']);
	});
});

describe('cells that mean the same', () => {
	const cm = { units: { side: 'cm' } } as const;
	test.each([
		[row('a', 1, { side: '7' }, cm), row('a', 1, { side: '7 cm' }), true],
		[row('a', 1, { side: '70' }), row('a', 1, { side: '70 mm' }), true],
		[row('a', 1, { side: '7' }, cm), row('a', 1, { side: '7' }), false],
		[row('a', 1, { side: '70' }), row('a', 1, { side: '7 cm' }), true],
		[row('a', 1, { side: '51,2' }), row('a', 1, { side: '51.2' }), true],
		[row('a', 1, { side: '51,2' }, cm), row('a', 1, { side: '512 mm' }), true],
		[row('a', 1, { side: '51,2' }), row('a', 1, { side: '512' }), false],
		[row('a', 1, { side: '2 5/8' }), row('a', 1, { side: '2.625"' }), true],
		[row('a', 1, { shape: '3:2' }), row('a', 1, { shape: '03:02' }), true],
		[row('a', 1, { shape: '3:2' }), row('a', 1, { shape: '1,5' }), true],
		[row('a', 1, { shape: '3:2' }), row('a', 1, { shape: '2:3' }), false],
		[row('a', 1, { paper: '594 x 420' }), row('a', 1, { paper: '59,4 × 42 cm' }), true],
		[row('a', 1, { paper: 'A3' }), row('a', 1, { paper: '297 x 420' }), false], // what a name stands for may change
		[row('a', 1, { copies: '2' }), row('a', 1, { copies: '02' }), true],
		[row('a', 1, { 'bottom weight': '12 %' }), row('a', 1, { 'bottom weight': '12,0 %' }), true],
		[row('a', 1, { edition: '3/25' }), row('a', 1, { edition: '3 of 25' }), true],
		[row('a', 1, { price: '340' }), row('a', 1, { price: '£340.00' }), true],
		[row('a', 1, { price: '1,250' }), row('a', 1, { price: '1250' }), true],
		[row('a', 1, { price: '£340' }), row('a', 1, { price: '€340' }), false],
		[row('a', 1, { price: '340' }), row('a', 1, { price: 'POA' }), false],
		[row('a', 1, { side: '2 5/8' }), row('a', 1, { side: '2 5/8 in' }), true],
		[row('a', 1, { 'bottom weight': '12' }), row('a', 1, { 'bottom weight': '12 %' }), true],
		// What nobody can see: normal forms, spaces that do not break, line ends.
		[row('a', 1, { note: 'Cafe\u0301\u00a0x\r\ny' }), row('a', 1, { note: 'Café x\ny' }), true],
		[row('a', 1, { number: '007' }), row('a', 1, { number: '7' }), false], // what a spreadsheet makes of it is shown
		[row('a', 1, { edition: '3/25' }), row('a', 1, { edition: '25-Mar' }), false],
	])('%j and %j: %s', (a, b, isSame) => {
		const column = columns.find(({ name }) => a.typed[name] !== undefined)!;
		expect(isSameCell(a, b, { name: column.name, isExtra: false }, settings)).toBe(isSame);
	});
	test('half of a size that is taken alone keeps the length that it was', () => {
		const here = row('a', 1, { 'picture width': '456', 'picture height': '11' });
		const there = row('a', 1, { 'picture width': '16 1/2', 'picture height': '12' });
		const merge = merged([here], [there], []);
		const width = merge.rows[0]!.kind === 'changed' ? merge.rows[0]!.cells[0]! : undefined;
		const [after] = taken([here], merge, new Map([[cellKey(merge.rows[0]!, width!), 'there']]));
		expect(after!.typed).toEqual({ 'picture width': '16 1/2 in', 'picture height': '11' });
	});
});

/** Small rows, so that both sides often touch the same. */
const names = ['title', 'price', 'side', 'note'] as const satisfies readonly ColumnName[];
const typed = fc.dictionary(fc.constantFrom(...names), fc.constantFrom('1', '2', '3', '7 cm'), { maxKeys: 3 });
const change = fc.oneof(
	{
		weight: 4,
		arbitrary: fc.record({
			at: fc.nat(5),
			column: fc.constantFrom(...names),
			text: fc.constantFrom('', '4', '5', '71'),
		}),
	},
	{ weight: 1, arbitrary: fc.record({ remove: fc.nat(5) }) },
	{ weight: 1, arbitrary: fc.record({ add: typed }) },
	{ weight: 1, arbitrary: fc.record({ move: fc.nat(5), to: fc.nat(5) }) },
);
type Change = typeof change extends fc.Arbitrary<infer Value> ? Value : never;

/** A side after its edits. */
function edited(rows: readonly Row[], changes: readonly Change[], who: string): readonly Row[] {
	let after = [...rows];
	for (const [index, each] of changes.entries()) {
		if ('remove' in each) after = after.filter((_, at) => at !== each.remove);
		else if ('add' in each) {
			// A title that is here is not added unasked; see "Nothing whose title is here".
			after.push(row(`${who}${index}`, 0, { ...each.add, title: `${who}${index}` }));
		} else if ('move' in each) after.splice(each.to, 0, ...after.splice(each.move, 1));
		else if (after[each.at]) {
			const { [each.column]: _, ...others } = after[each.at]!.typed;
			// A print that is new gets no title that another may have: it would be found by it.
			const isOwnTitle = each.column === 'title' && after[each.at]!.id.startsWith(who);
			const text = each.text !== '' && isOwnTitle ? `${who} ${each.text}` : each.text;
			const now = text === '' ? others : { ...others, [each.column]: text };
			after[each.at] = { ...after[each.at]!, typed: now };
		}
	}
	// Where everything was cleared, no print is left: no file has such a row.
	return printsOf(after).map((one, at) => ({ ...one, order: at + 1 }));
}

const sides = fc
	.record({
		base: fc.array(typed, { minLength: 1, maxLength: 6 }),
		mine: fc.array(change, { maxLength: 5 }),
		theirs: fc.array(change, { maxLength: 5 }),
	})
	.map(({ base, mine, theirs }) => {
		const rows = printsOf(base.map((cells, at) => row(`b${at}`, at + 1, cells)));
		return { base: rows, here: edited(rows, mine, 'h'), there: edited(rows, theirs, 't') };
	})
	.filter(({ here, there }) => here.length > 0 && there.length > 0); // a file without rows removes none

const byId = (rows: readonly Row[]) => new Map(rows.map((one) => [one.id, one.typed]));
/** Where both sides have changed the same, as one can name it on either side. */
const conflicts = (merge: Merge): string[] =>
	merge.rows
		.flatMap((difference) =>
			difference.kind === 'changed'
				? difference.cells.filter(isConflict).map(({ column }) => `${difference.id} ${column.name}`)
				: isConflict(difference)
					? [difference.id]
					: [],
		)
		.sort();

/** One side in every conflict, and what was suggested for all else. */
const settle = (merge: Merge, side: Side): Choices =>
	new Map(
		merge.rows.flatMap((difference): [string, Side][] =>
			difference.kind === 'changed'
				? difference.cells.filter(isConflict).map((cell) => [cellKey(difference, cell), side])
				: isConflict(difference)
					? [[rowKey(difference), side]]
					: [],
		),
	);

describe('three ways, whatever was edited', () => {
	test('either order gives the same rows, apart from the conflicts that were shown', () =>
		fc.assert(
			fc.property(sides, ({ base, here, there }) => {
				const [ours, theirs] = [merged(here, there, [given(base)]), merged(there, here, [given(base)])];
				expect(conflicts(ours)).toEqual(conflicts(theirs));
				const [one, other] = [byId(taken(here, ours)), byId(taken(there, theirs))];
				expect([...one.keys()].sort()).toEqual([...other.keys()].sort());
				const isAsked = new Set(conflicts(ours));
				for (const [id, cells] of one)
					for (const name of names)
						if (!isAsked.has(`${id} ${name}`))
							expect([id, name, cells[name]]).toEqual([id, name, other.get(id)![name]]);
				// With the same side chosen in each conflict, everything is the same.
				const settled = byId(taken(there, theirs, settle(theirs, 'there')));
				expect(byId(taken(here, ours, settle(ours, 'here')))).toEqual(settled);
			}),
		));

	test('each cell and print is shown and taken as the three that it has been say', () =>
		fc.assert(
			fc.property(sides, ({ base, here, there }) => {
				const merge = merged(here, there, [given(base)]);
				const [was, ours, theirs] = [base, here, there].map((rows) => new Map(rows.map((one) => [one.id, one])));
				const shown = new Set<string>();
				const [suggested, all] = [new Map<string, Row['typed']>(), new Map<string, Row['typed']>()];
				for (const id of new Set([...was!.keys(), ...ours!.keys(), ...theirs!.keys()])) {
					const [before, mine, other] = [was!.get(id), ours!.get(id), theirs!.get(id)];
					const isSame = (one: Row | undefined) => names.every((name) => one?.typed[name] === before?.typed[name]);
					if (mine && other) {
						const [one, every] = [new Map<string, string>(), new Map<string, string>()];
						for (const name of names) {
							const [b, h, t] = [before, mine, other].map((each) => each?.typed[name]);
							const changedBy = t === b ? 'here' : h === b ? 'there' : 'both';
							if (h !== t) shown.add(`${id} ${name} ${h ?? ''} ${t ?? ''} ${changedBy}`);
							const [stays, taken] = [h === t || changedBy !== 'there' ? h : t, changedBy === 'here' ? h : t];
							if (stays !== undefined) one.set(name, stays);
							if (taken !== undefined) every.set(name, taken);
						}
						suggested.set(id, Object.fromEntries(one));
						all.set(id, Object.fromEntries(every));
					} else if (mine) {
						if (before) shown.add(`${id} removed there ${!isSame(mine)}`);
						if (!before || !isSame(mine)) suggested.set(id, mine.typed);
						if (!before) all.set(id, mine.typed);
					} else if (other) {
						shown.add(before ? `${id} removed here ${!isSame(other)}` : `${id} added`);
						if (!before || !isSame(other)) [suggested, all].forEach((rows) => rows.set(id, other.typed));
					}
				}
				const told = merge.rows.flatMap((difference) => {
					const { id, kind } = difference;
					if (kind === 'added') return [`${id} added`];
					if (kind === 'removed here') return [`${id} removed here ${difference.isChangedThere}`];
					if (kind === 'removed there') return [`${id} removed there ${difference.isChangedHere}`];
					return difference.cells.map(
						({ column, here: h, there: t, changedBy }) => `${id} ${column.name} ${h.text} ${t.text} ${changedBy}`,
					);
				});
				expect(told.toSorted()).toEqual([...shown].sort());
				expect(byId(taken(here, merge))).toEqual(suggested);
				expect(byId(taken(here, merge, chooseMerge(merge, 'there')))).toEqual(all);
				expect(taken(here, merge, chooseMerge(merge, 'here'))).toEqual(expect.arrayContaining([...here]));
				// All that a print is called by in the groups is there once.
				const grouped = differenceGroups(merge).flatMap(({ rows }) => rows);
				const cells = (rows: Merge['rows']) =>
					cellsIn(rows)
						.map((cell) => JSON.stringify(cell))
						.sort();
				expect(cells(grouped)).toEqual(cells(merge.rows));
			}),
		));

	test('the order of here stays, whoever moved prints, and that of the file is there to be asked for', () =>
		fc.assert(
			fc.property(fc.shuffledSubarray(['a', 'b', 'c', 'd', 'e'], { minLength: 5 }), fc.boolean(), (ids, isMine) => {
				const base = ['a', 'b', 'c', 'd', 'e'].map((id, at) => row(id, at + 1));
				const moved = ids.map((id, at) => row(id, at + 1));
				const [here, there] = isMine ? [moved, base] : [base, moved];
				const merge = merged(here, there, [given(base)]);
				expect(taken(here, merge)).toEqual(here);
				const asked = taken(here, merge, new Map([['order', 'there']]));
				expect(asked.map(({ id }) => id)).toEqual(there.map(({ id }) => id));
			}),
		));

	test('no edit of either side vanishes unshown', () =>
		fc.assert(
			fc.property(sides, ({ base, here, there }) => {
				const merge = merged(here, there, [given(base)]);
				const [before, ours, theirs, after] = [base, here, there, taken(here, merge)].map(byId);
				const shown = new Set(cellsOf(merge).map(([id, name]) => `${id} ${name}`));
				const isShown = (id: string, name: string) =>
					shown.has(`${id} ${name}`) || shown.has(`${id} removed here`) || shown.has(`${id} removed there`);
				for (const side of [ours!, theirs!])
					for (const [id, cells] of side)
						for (const name of names) {
							const isEdited = cells[name] !== before!.get(id)?.[name];
							if (!isEdited || isShown(id, name)) continue;
							expect([id, name, after!.get(id)?.[name]]).toEqual([id, name, cells[name]]);
						}
				// A print that one side removed is gone, or its staying was shown.
				for (const id of before!.keys())
					if ((!ours!.has(id) || !theirs!.has(id)) && after!.has(id))
						expect(shown.has(`${id} removed here`) || shown.has(`${id} removed there`)).toBe(true);
			}),
		));

	test('a file that was taken in as it was suggested leaves nothing more to take', () =>
		fc.assert(
			fc.property(sides, ({ base, here, there }) => {
				const merge = merged(here, there, [given(base)]);
				const after = taken(here, merge);
				const again = merged(after, there, [given(merge.fileRows, 2, { direction: 'taken' }), given(base)]);
				expect(taken(after, again)).toEqual(after);
			}),
		));
});
