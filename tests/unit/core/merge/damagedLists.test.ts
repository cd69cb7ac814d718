import { describe, expect, test } from 'vitest';
import { chooseAll, chooseMerge, type Choices } from '../../../../src/core/merge/choices.ts';
import { effectSentences, effectsOf } from '../../../../src/core/merge/effects.ts';
import type { Exchange } from '../../../../src/core/merge/exchange.ts';
import { exchangedRows } from '../../../../src/core/merge/exchangedRows.ts';
import { mergeEdit } from '../../../../src/core/merge/mergeEdit.ts';
import { type Merge, mergeRows, type RowsThere } from '../../../../src/core/merge/mergeRows.ts';
import { asideLines, differenceGroups } from '../../../../src/core/merge/mergeWords.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { ColumnName } from '../../../../src/core/show/columns.ts';
import { apply } from '../../../../src/core/show/edit.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { allColumns, namer } from '../show/randomEdits.ts';

const { settings } = readSettings({ unit: 'mm' });
const row = (id: string, order: number, typed: Row['typed']): Row => ({ id, order, typed });
const given = (rows: readonly Row[], at = 1): Exchange => ({
	...{ id: `x${at}`, direction: 'given', fileName: 'rows.csv', at, unit: 'mm', rows },
});
const merged = (
	here: readonly Row[],
	there: readonly Row[],
	exchanges: readonly Exchange[],
	more?: Partial<RowsThere>,
) => mergeRows(here, { rows: there, columns: allColumns, ...more }, exchanges, settings, namer('made'));
const taken = (here: readonly Row[], merge: Merge, choices: Choices = new Map()) =>
	apply({ id: 's', name: '', settings: {}, rows: here }, mergeEdit(here, merge, choices, settings, 'import')).rows;

/** The rows of a list that comes back without print ids: names are made up as it is read. */
const unnamed = (rows: readonly Row['typed'][]) => {
	const there = rows.map((typed, at) => row(`new${at}`, at + 1, typed));
	return { there, more: { unnamed: there.map(({ id }) => id) } };
};

const titles = ['Pier', 'Quay', 'Weir', 'Lock', 'Mole'];
const prints = titles.map((title, at) =>
	row(`r${at}`, at + 1, {
		...{ number: `${at + 1}`, title, maker: 'Ilse', edition: `${at + 1}/12`, shape: '3:2', price: `${100 + at}` },
	}),
);
const spoiled = prints.map(({ id, order, typed }, at) =>
	row(id, order, { ...typed, edition: `${at + 1}. Dez`, shape: '03:02:00' }),
);

describe('what a spreadsheet has made of cells', () => {
	test.each([
		['against what went out', [given(prints)]],
		['against what is here', []],
	])('is said in one line for each thing, and yours stay: %s', (_, exchanges) => {
		const merge = merged(prints, spoiled, exchanges);
		expect(asideLines(merge).map(({ sentence }) => sentence)).toEqual([
			'5 editions look as if a spreadsheet had turned them into dates.',
			'5 shapes look as if a spreadsheet had turned them into times.',
		]);
		expect(differenceGroups(merge)).toEqual([]);
		expect(taken(prints, merge)).toEqual(prints);
		expect(taken(prints, merge, chooseMerge(merge, 'there'))).toEqual(prints);
		const [dates] = asideLines(merge);
		const asked = taken(prints, merge, chooseAll(dates!.rows, 'there'));
		expect(asked.map(({ typed }) => [typed.edition, typed.shape])).toEqual(
			prints.map((_each, at) => [`${at + 1}. Dez`, '3:2']),
		);
	});

	test('does not hide an edit beside it, nor one made here since', () => {
		const here = prints.map((each) => (each.id === 'r1' ? row('r1', 2, { ...each.typed, edition: '9/12' }) : each));
		const there = spoiled.map((each) => (each.id === 'r0' ? row('r0', 1, { ...each.typed, price: '999' }) : each));
		const merge = merged(here, there, [given(prints)]);
		expect(differenceGroups(merge).map(({ title, rows }) => [title, rows.map(({ id }) => id)])).toEqual([
			['Changed in the file', ['r0']],
		]);
		expect(asideLines(merge)[0]!.rows).toHaveLength(5);
		const after = taken(here, merge);
		expect(after[0]!.typed).toEqual({ ...prints[0]!.typed, price: '999' });
		expect(after.slice(1)).toEqual(here.slice(1));
	});

	test('of an edit is that edit where it can have been only one', () => {
		const there = [row('r0', 1, { ...prints[0]!.typed, edition: '12-Jul', shape: '01.03.2025' }), ...spoiled.slice(1)];
		const merge = merged(prints, there, [given(prints)]);
		const cells = merge.rows[0]!.kind === 'changed' ? merge.rows[0]!.cells : [];
		expect(cells.map(({ column, there: cell, cameAs }) => [column.name, cell.text, cameAs])).toEqual([
			['edition', '7/12', '12-Jul'],
			['shape', '01.03.2025', undefined],
		]);
		expect(taken(prints, merge)[0]!.typed.edition).toBe('7/12');
	});

	test('is no change that brings back a print that was removed here', () => {
		const merge = merged(prints.slice(1), spoiled, [given(prints)]);
		expect(merge.rows[0]).toMatchObject({ kind: 'removed here', id: 'r0', isChangedThere: false });
	});

	test('is not what the next file is compared with', () => {
		const first = merged(prints, spoiled, [given(prints)]);
		const known = { ...given(exchangedRows(first, new Map()), 2), direction: 'taken' } as const;
		expect(known.rows.map(({ typed }) => typed)).toEqual(prints.map(({ typed }) => typed));
		const mended = spoiled.map((each) => (each.id === 'r2' ? row('r2', 3, { ...each.typed, edition: '7/12' }) : each));
		const next = merged(prints, mended, [known, given(prints)]);
		expect(taken(prints, next).map(({ typed }) => typed.edition)).toEqual(['1/12', '2/12', '7/12', '4/12', '5/12']);
	});
});

describe('a list that comes back without print ids', () => {
	const base = [given(prints)];

	test('sorted and renumbered: every print is found, and nothing is added', () => {
		const sorted = prints
			.toSorted((a, b) => (a.typed.title! < b.typed.title! ? -1 : 1))
			.map(({ typed }, at) => ({ ...typed, number: `${at + 1}` }));
		const { there, more } = unnamed(sorted);
		const merge = merged(prints, there, base, more);
		expect(merge.fileRows.map(({ id }) => id)).toEqual(['r3', 'r4', 'r0', 'r1', 'r2']);
		expect(merge.rows.filter(({ kind }) => kind !== 'changed')).toEqual([]);
		expect(asideLines(merge).map(({ sentence }) => sentence)).toEqual([
			'5 numbers only count the lines of the file, in order.',
		]);
		expect(taken(prints, merge)).toEqual(prints);
		expect(taken(prints, merge, chooseMerge(merge, 'there'))).toEqual(prints);
	});

	test.each<[what: string, change: (typed: Row['typed'], at: number) => Row['typed']]>([
		['letters lost in the title', (typed) => ({ ...typed, title: typed.title!.replace('ö', '?') })],
		['letters misread in the title', (typed) => ({ ...typed, title: typed.title!.replace('ö', 'Ã¶') })],
		['another title, with its number', (typed, at) => ({ ...typed, title: at === 0 ? 'Jetty' : typed.title! })],
		['no title, with its number', ({ title: _, ...typed }) => typed],
		['no title and no number', ({ title: _, number: __, ...typed }) => typed],
	])('with %s', (_, change) => {
		const here = prints.map((each) => row(each.id, each.order, { ...each.typed, title: `M${each.typed.title}ö` }));
		const { there, more } = unnamed(here.map(({ typed }, at) => change(typed, at)));
		expect(merged(here, there, [], more).fileRows.map(({ id }) => id)).toEqual(here.map(({ id }) => id));
	});

	test('prints of one title are told apart by their editions, as dates too', () => {
		const here = prints.map((each, at) => row(each.id, each.order, { title: 'Pier', edition: `${at + 1}/12` }));
		const { there, more } = unnamed(
			here.toReversed().map(({ typed }) => ({ ...typed, edition: `${typed.edition!.split('/')[0]!}-Dec` })),
		);
		expect(merged(here, there, [], more).fileRows.map(({ id }) => id)).toEqual(['r4', 'r3', 'r2', 'r1', 'r0']);
	});

	test('a list of titles and prices alone', () => {
		const { there, more } = unnamed([
			{ title: 'Weir', price: '1' },
			{ title: 'Pier', price: '2' },
		]);
		const columns: readonly ColumnName[] = ['title', 'price'];
		expect(merged(prints, there, [], { ...more, columns }).fileRows.map(({ id }) => id)).toEqual(['r2', 'r0']);
	});
});

describe('nothing whose title is here', () => {
	test('is added unasked, nor a row that is there twice, nor a total', () => {
		const more = [
			row('x', 6, { title: 'Pier', edition: '6/12' }),
			row('y', 7, { title: 'Dune', price: '5' }),
			row('z', 8, { title: 'Dune', price: '5' }),
			row('t', 9, { title: 'Total', price: '515' }),
		];
		const merge = merged(prints, [...prints, ...more], [given(prints)], { totals: ['t'] });
		expect(differenceGroups(merge).map(({ title, rows }) => [title, rows.map(({ id }) => id)])).toEqual([
			['New in the file', ['y']],
			['Perhaps not new', ['x', 'z', 't']],
		]);
		expect(taken(prints, merge).map(({ id }) => id)).toEqual([...prints.map(({ id }) => id), 'y']);
		expect(taken(prints, merge, chooseMerge(merge, 'there'))).toHaveLength(6);
		expect(taken(prints, merge, chooseAll(merge.rows, 'there'))).toHaveLength(9);
	});

	test('but the same title by another maker is another print', () => {
		const other = row('x', 6, { title: 'Pier', maker: 'Jonah' });
		expect(taken(prints, merged(prints, [...prints, other], [given(prints)]))).toHaveLength(6);
	});
});

test('what would go is said with its names, and again when something else is chosen', () => {
	const there = [row('r1', 2, { ...prints[1]!.typed, price: '9', shape: '' }), ...prints.slice(2)];
	const merge = merged(prints, there, [given(prints)]);
	const said = (choices: Choices) =>
		effectSentences(effectsOf(merge, choices), (each) => ('here' in each ? each.here.typed.title! : '?'));
	expect(said(new Map())).toEqual({
		losses: ['Removes 1 print: Pier.', 'Replaces 2 cells: Quay (shape, price).'],
		others: [],
	});
	expect(said(chooseMerge(merge, 'here'))).toEqual({ losses: [], others: ['Removes nothing, replaces nothing.'] });
});
