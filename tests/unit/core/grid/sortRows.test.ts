import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { sortKeyOf } from '../../../../src/core/grid/sortKey.ts';
import { type SortKey, sortingPlaces } from '../../../../src/core/grid/sortRows.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row, Typed } from '../../../../src/core/show/row.ts';
import { finish } from '../../../../src/core/values/finish.ts';

const { compare } = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
const { settings } = readSettings({ mountSize: '600 x 450', border: '70' });

const sortedPlaces = (...asked: Parameters<typeof sortingPlaces>) => finish(sortingPlaces(...asked));

const keyOf = (column: Parameters<typeof sortKeyOf>[0], typed: Typed): SortKey => {
	const row: Row = { id: 'a', order: 1, typed };
	return sortKeyOf(column, { row, result: judgeRow(row, settings), steps: [3, 7], settings });
};

/** The titles of rows sorted by a column. */
const sorted = (column: Parameters<typeof sortKeyOf>[0], texts: readonly string[], way: 'up' | 'down' = 'up') => {
	const keys = texts.map((text) => keyOf(column, text === '' ? {} : { [column]: text }));
	return sortedPlaces(keys, way, compare).map((place) => texts[place]);
};

test.each([
	{ column: 'number', texts: ['10', '9.5', 'A-10', 'A-9', '', '2'], is: ['2', '9.5', '10', 'A-9', 'A-10', ''] },
	{
		column: 'number',
		texts: ['10', '9a', '12', '9', 'A1', '9.25', '9,5b'],
		is: ['9', '9a', '9.25', '9,5b', '10', '12', 'A1'],
	},
	{ column: 'hang order', texts: ['11', '2b', '2', ''], is: ['2', '2b', '11', ''] },
	{
		column: 'title',
		texts: ['Über', 'tar', 'Ufer', 'Pier 10', 'Pier 9'],
		is: ['Pier 9', 'Pier 10', 'tar', 'Über', 'Ufer'],
	},
	{
		column: 'picture width',
		texts: ['300', 'wide', '1,000', '25 cm', '10 in', '1/2'], // a comma and three digits is not guessed
		is: ['1/2', '25 cm', '10 in', '300', '1,000', 'wide'],
	},
	{ column: 'signing space', texts: ['1 cm', '', '6', '1/8'], is: ['1/8', '6', '1 cm', ''] },
	{ column: 'spacer', texts: ['1 cm', '6', '1/8'], is: ['1/8', '6', '1 cm'] },
	{
		column: 'price',
		texts: ['1,200.00', 'NFS', '90', '1 100', '95.50'],
		is: ['90', '95.50', '1 100', '1,200.00', 'NFS'],
	},
	{ column: 'year', texts: ['2024', 'c. 1990', '1998'], is: ['1998', '2024', 'c. 1990'] },
	{ column: 'shape', texts: ['3:2', '1:1', '2:3', '16:9'], is: ['2:3', '1:1', '3:2', '16:9'] },
	{ column: 'paper', texts: ['large', 'A3', '200 x 900', 'A4'], is: ['A4', 'A3', '200 x 900', 'large'] },
] as const)('$column: $texts', ({ column, texts, is }) => {
	expect(sorted(column, texts)).toEqual(is);
});

test('from the greatest, blanks are last all the same', () => {
	expect(sorted('signing space', ['1 cm', '', '6'], 'down')).toEqual(['1 cm', '6', '']);
});

test('sizes that are worked out count like typed ones, mounts of a size stand together whichever way they lie', () => {
	expect(keyOf('picture width', { shape: '3:2' })).toBe(keyOf('picture width', { 'picture width': '464' }));
	expect(keyOf('mount', { mount: '600 x 450' })).toBe(keyOf('mount', { mount: '450 x 600' }));
	expect(keyOf('mount', { mount: '600 x 451' })).toBeGreaterThan(keyOf('mount', { mount: '450 x 600' }) as number);
	expect(keyOf('overlap', {})).toBe(keyOf('overlap', { overlap: '3' }));
	expect(keyOf('steps', {})).toBe(3);
});

test('rows that are alike keep their sequence, and each row is there once', () =>
	fc.assert(
		fc.property(
			fc.array(fc.constantFrom(1, 2, 'a', 'b', undefined)),
			fc.constantFrom('up' as const, 'down' as const),
			(keys, way) => {
				const places = sortedPlaces(keys, way, compare);
				expect([...places].sort((a, b) => a - b)).toEqual(keys.map((_, place) => place));
				for (const [at, place] of places.entries()) {
					const next = places[at + 1];
					if (next !== undefined && keys[place] === keys[next]) expect(place).toBeLessThan(next);
				}
			},
		),
	));

test('a blank cell is sorted by what it shows of the show', () => {
	const overlap = settings.overlap;
	expect(keyOf('overlap', { shape: '3:2' })).toBe(overlap);
	// A reveal of zero takes away none: the show's overlap holds. Without a mount there is none.
	expect(keyOf('overlap', { shape: '3:2', reveal: '0' })).toBe(overlap);
	expect(keyOf('overlap', { shape: '3:2', reveal: '6' })).toBeUndefined();
	expect(keyOf('overlap', { shape: '3:2', mount: 'none' })).toBeUndefined();
});

test('by what a print costs, those of unknown cost last', () => {
	const row: Row = { id: 'a', order: 1, typed: {} };
	const result = judgeRow(row, settings);
	const keys = [900, undefined, 0, 10_000].map((minorUnits) => {
		const cost = minorUnits === undefined ? undefined : { minorUnits, isPartial: false };
		return sortKeyOf('cost', { row, result, steps: [], cost, settings });
	});
	expect(sortedPlaces(keys, 'up', compare)).toEqual([2, 0, 3, 1]);
});

test('by price, one that is worked out like one that is typed', () => {
	expect(keyOf('price', { net: '120' })).toBe(keyOf('price', { price: '120' }));
	expect(keyOf('price', { net: 'on loan' })).toBeUndefined();
});

test('how a print is framed sorts by its figures, and by the frame that it has without naming it', () => {
	const glazing = [{ name: 'Clear', width: 1000, height: 800 }];
	const frames = ['Oak', 'Ash'].map((name, place) => ({
		...{ name, width: 500 + 100 * place, height: 400 + 50 * place, moulding: 20, lip: 6, depth: 20, weight: 0.5 },
	}));
	const framed = readSettings({ mountSize: '600 x 450', border: '70', frames, glazing }).settings;
	const keysOf = (typed: Typed) => {
		const row: Row = { id: 'a', order: 1, typed: { 'picture width': '300', 'picture height': '200', ...typed } };
		const result = judgeRow(row, framed);
		return (column: Parameters<typeof sortKeyOf>[0]) => sortKeyOf(column, { row, result, steps: [], settings: framed });
	};
	const [blank, oak] = [keysOf({}), keysOf({ frame: 'Oak' })];
	expect([blank('frame'), blank('glazing'), blank('backing')]).toEqual(['Ash', 'Clear', undefined]);
	expect(keysOf({ frame: 'none' })('frame')).toBe('none');
	for (const column of ['framed width', 'framed height', 'weight'] as const)
		expect(oak(column), column).toBeLessThan(blank(column) as number);
	// 2 + 1.4 + 0.3 + 3 mm; 3 of play; two hinges; the side of 103 less 1.4 and 6 − 1.5
	expect((['stack', 'play', 'hinges', 'seen border'] as const).map(oak)).toEqual([67e6, 30e6, 2, 971e6]);
});

test('the number that a text begins with is read once, however often the text is compared', () => {
	const keys = Array.from({ length: 200 }, (_, place) => `${(place * 71) % 200}a`);
	const reads = vi.spyOn(RegExp.prototype, 'exec');
	const places = sortedPlaces(keys, 'up', compare);
	const times = reads.mock.calls.length;
	reads.mockRestore();
	expect(times).toBe(200);
	expect(places.map((place) => parseInt(keys[place]!, 10))).toEqual(Array.from({ length: 200 }, (_, at) => at));
});

test('thousands of rows are sorted as by one sort that keeps the sequence, and never for long without a halt', () => {
	const keys: SortKey[] = Array.from({ length: 3001 }, (_, place) => {
		const mixed = (place * 7919) % 1009;
		return mixed % 11 === 0 ? undefined : mixed % 3 === 0 ? `Pier ${mixed % 50}` : mixed % 70;
	});
	let compares = 0;
	const counted = (a: string, b: string) => (compares++, compare(a, b));
	for (const way of ['up', 'down'] as const) {
		const steps = sortingPlaces(keys, way, counted);
		let most = 0;
		let step = steps.next();
		for (; !step.done; step = steps.next()) {
			most = Math.max(most, compares);
			compares = 0;
		}
		expect(most).toBeLessThan(3000);
		const rank = (key: SortKey) => (key === undefined ? 2 : (typeof key === 'string') === (way === 'up') ? 1 : 0);
		const turn = way === 'up' ? 1 : -1;
		const wanted = keys
			.map((key, place) => ({ key, place }))
			.sort(({ key: a }, { key: b }) => {
				if (rank(a) !== rank(b)) return rank(a) - rank(b);
				return turn * (typeof a === 'string' ? compare(a, b as string) : (a ?? 0) - ((b ?? 0) as number));
			});
		expect(step.value).toEqual(wanted.map(({ place }) => place));
	}
});
