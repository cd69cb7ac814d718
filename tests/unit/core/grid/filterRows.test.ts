import { expect, test } from 'vitest';
import { cutStateOf } from '../../../../src/core/bench/cutState.ts';
import { tickFor } from '../../../../src/core/bench/ticks.ts';
import { type Filter, isNoFilter, noFilter } from '../../../../src/core/grid/filter.ts';
import { answers } from '../../../../src/core/grid/filterRows.ts';
import { askedOf, saidOfShown } from '../../../../src/core/grid/saidOfArranging.ts';
import { sortWords } from '../../../../src/core/grid/sortWords.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row, Typed } from '../../../../src/core/show/row.ts';

const { settings } = readSettings({ mountSize: '600 x 450', border: '70' });
const sourceOf = (typed: Typed) => {
	const row: Row = { id: 'a', order: 1, typed };
	return { row, result: judgeRow(row, settings), settings, cut: 'not cut' as const };
};

const even: Typed = {
	title: 'Salt road',
	maker: 'Ilse Tarnów',
	board: 'Chalk',
	'picture width': '456',
	'picture height': '306',
};
const uneven: Typed = { ...even, 'picture width': '300' };
const wrong: Typed = { ...even, 'picture width': 'abc' };

test.each<{ filter: Partial<Filter>; typed: Typed; is: boolean }>([
	{ filter: {}, typed: {}, is: true },
	{ filter: { words: 'tarnow ROAD' }, typed: even, is: true },
	{ filter: { words: 'salt sea' }, typed: even, is: false },
	{ filter: { check: 'none' }, typed: even, is: true },
	{ filter: { check: 'look' }, typed: even, is: false },
	{ filter: { check: 'look' }, typed: uneven, is: true },
	{ filter: { check: 'look' }, typed: { ...uneven, copies: 'abc' }, is: false },
	{ filter: { check: 'uneven' }, typed: { ...uneven, copies: 'abc' }, is: true },
	{ filter: { check: 'uneven' }, typed: uneven, is: true },
	{ filter: { check: 'stop' }, typed: wrong, is: true },
	{ filter: { check: 'not-read' }, typed: uneven, is: false },
	{ filter: { mount: '600 × 450 mm' }, typed: { ...even, mount: '450 x 600' }, is: true },
	{ filter: { mount: '600 × 450 mm' }, typed: { ...even, mount: 'none' }, is: false },
	{ filter: { board: 'chalk', maker: 'ilse tarnów' }, typed: even, is: true },
	{ filter: { board: 'Slate' }, typed: even, is: false },
	{ filter: { cut: 'cut' }, typed: even, is: false },
])('$filter of $typed: $is', ({ filter, typed, is }) => {
	expect(answers({ ...noFilter, ...filter }, sourceOf(typed))).toBe(is);
});

test('a row is cut when every cut of every copy stands as the row is now', () => {
	const { row, result } = sourceOf({ ...even, copies: '2' });
	const tick = (copy: number, side: 'top' | 'left' | 'right' | 'bottom') =>
		tickFor(row, result, settings, { row: 1, copy, part: 'mount', side })!;
	const all = [1, 2].flatMap((copy) => (['left', 'right', 'top', 'bottom'] as const).map((side) => tick(copy, side)));
	expect(cutStateOf(row, result, settings, [])).toBe('not cut');
	expect(cutStateOf(row, result, settings, all.slice(0, 7))).toBe('partly cut');
	expect(cutStateOf(row, result, settings, all)).toBe('cut');
	const changed = judgeRow({ ...row, typed: uneven }, settings);
	expect(cutStateOf(row, changed, settings, all)).not.toBe('cut');
});

test('what is asked and what is seen, in words', () => {
	expect(isNoFilter({ ...noFilter, words: '  ' })).toBe(true);
	expect(isNoFilter({ ...noFilter, check: 'stop' })).toBe(false);
	expect(askedOf({ ...noFilter, words: 'salt', check: 'thin-border', cut: 'partly cut' })).toEqual([
		'“salt”',
		'A thin border',
		'partly cut',
	]);
	expect(['stop', 'look', 'note', 'none'].map((check) => askedOf({ ...noFilter, check })[0])).toEqual([
		'can’t be cut yet',
		'to check',
		'notes',
		'nothing to check',
	]);
	expect(saidOfShown(12, 30, { column: 'title', way: 'down' })).toBe('12 of 30 prints, sorted by title, Z to A');
	expect(saidOfShown(3, 3, { column: 'side', way: 'down' })).toBe('3 prints, sorted by side, largest first');
	expect(saidOfShown(3, 3, { column: 'number', way: 'down' })).toBe('3 prints, sorted by number, largest first');
	expect(sortWords('findings')).toEqual({ up: 'most serious first', down: 'most serious last' });
	expect(saidOfShown(1, 1, undefined)).toBe('1 print');
});

test('words are found in what a print costs, as it is shown', () => {
	const source = { ...sourceOf(even), cost: { minorUnits: 9137, isPartial: false } };
	expect(answers({ ...noFilter, words: '91.37' }, source)).toBe(true);
	expect(answers({ ...noFilter, words: '91.37' }, sourceOf(even))).toBe(false);
	const wanted = sourceOf({ ...even, net: '91.37' });
	expect(answers({ ...noFilter, words: '92.00' }, wanted), 'nor in its price').toBe(true);
	expect(sortWords('cost')).toEqual(sortWords('copies'));
});

test('a print is found by its frame, named or not, by what lies in it, and by how it is framed', () => {
	const lists = {
		frames: [{ name: 'Éléphant oak', width: 600, height: 450, moulding: 20, lip: 6, depth: 20, weight: 0.5 }],
		glazing: [{ name: 'Clear glass', width: 1000, height: 800 }],
		backing: [{ name: 'Brown card', width: 1000, height: 800 }],
	};
	const framed = readSettings({ mountSize: '600 x 450', border: '70', ...lists }).settings;
	const finds = (filter: Partial<Filter>, typed: Typed = even) => {
		const row: Row = { id: 'a', order: 1, typed };
		const result = judgeRow(row, framed);
		return answers({ ...noFilter, ...filter }, { row, result, settings: framed, cut: 'not cut' });
	};
	expect(finds({ frame: 'éléphant OAK' })).toBe(true);
	expect(finds({ frame: 'Ash' })).toBe(false);
	expect(finds({ frame: 'Éléphant oak' }, { ...even, frame: 'none' })).toBe(false);
	// 603 + 2 · (20 − 6) wide; words of what was typed and of what follows may be mixed.
	for (const words of ['elephant', 'clear brown', '631', 'about 3.', 'tarnow elephant'])
		expect(finds({ words }), words).toBe(true);
	expect(finds({ words: 'elephant' }, { ...even, frame: 'none' })).toBe(false);
	expect(askedOf({ ...noFilter, frame: 'Ash' })).toEqual(['Ash']);
});
