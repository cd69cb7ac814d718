import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { noFilter } from '../../../../src/core/grid/filter.ts';
import { answers } from '../../../../src/core/grid/filterRows.ts';
import { sortKeyOf } from '../../../../src/core/grid/sortKey.ts';
import { recordSettings } from '../../../../src/core/record/inCurrency.ts';
import { costInShow, pricesOf } from '../../../../src/core/record/pricesOf.ts';
import { priceText } from '../../../../src/core/record/priceWords.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { cellViews } from '../../../../src/ui/grid/cellView.ts';
import { columnIndexOf, gridColumns } from '../../../../src/ui/grid/gridColumns.ts';

// 1000 / (1 − 35 %) = 1538.46…, up to a whole one: yen have no hundredths, and the show names no currency itself.
const { settings } = readSettings({ commission: '35%' });
const rows = [
	{ id: 'a', order: 1, typed: { title: 'Ebb', net: '1000' } },
	{ id: 'b', order: 2, typed: { title: 'Quay', price: '500 JPY' } },
];
const results = rows.map((row) => judgeRow(row, settings));
const moneySettings = recordSettings(results, settings);
const source = { row: rows[0]!, result: results[0]!, settings, moneySettings, steps: [] };

test('a show without a currency has its prices in the one that a cell names: in lists, in the grid, sought and sorted', () => {
	const [first] = pricesOf({ rows, results, settings, costOf: () => undefined });
	expect(priceText(first!)).toBe('1539 JPY');
	expect(cellViews(source, gridColumns)[columnIndexOf('price')]!.text).toBe('1539');
	expect(sortKeyOf('price', source)).toBe(1539);
	const seek = (words: string) => answers({ ...noFilter, words }, { ...source, cut: 'not cut' });
	expect([seek('1539'), seek('1539.00')]).toEqual([true, false]);
});

test('a cost in hundredths is none in a currency without them', () => {
	const cost = { minorUnits: 1250, isPartial: false };
	expect(costInShow({ ...source, cost })).toBeUndefined();
	expect(costInShow({ ...source, moneySettings: undefined, cost })).toBe(cost);
});
