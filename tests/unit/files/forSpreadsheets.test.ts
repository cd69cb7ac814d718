import fc from 'fast-check';
import { expect, test } from 'vitest';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { settingsOfRows } from '../../../src/core/imports/settingsOfRows.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../src/core/settings/settings.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { type WriteOptions, writeRows } from '../../../src/files/csv.ts';
import { textForSpreadsheet } from '../../../src/files/spreadsheetGuard.ts';
import { unguardCell } from '../../../src/files/formulaGuard.ts';
import { rowsOfFile } from './rowsOfFile.ts';
import { programs, saved } from './spreadsheets.ts';
import { runs } from '../../soak.ts';

const row = (typed: Row['typed']): Row => ({ id: 'p23456789b', order: 1, typed });
function write(rows: readonly Row[], typed: TypedSettings, options: WriteOptions) {
	const { settings } = readSettings({ unit: 'mm', ...typed });
	const results = rows.map((each) => judgeRow(each, settings));
	return writeRows({ rows, results, settings, bench: orderBench(rows, results, settings) }, options);
}
const { settings } = readSettings({ unit: 'mm' });
const read = (text: string | Uint8Array) => {
	const file = rowsOfFile(text, settings, (place) => `made ${place}`);
	if ('problem' in file) throw new Error(file.problem);
	return file;
};

test.each([
	'3/12',
	'1/6',
	'3:2',
	'16:9',
	'1.5',
	'2-10',
	'007',
	'+7',
	'20 1/2',
	'12345678901234567890',
	'1e5',
	'March 12',
	'12 %',
])('%s stays text in a spreadsheet, and is read back unchanged', (text) => {
	expect(textForSpreadsheet(text)).toBe(`'${text}`);
	expect(unguardCell(textForSpreadsheet(text))).toBe(text);
});
test.each(['340', '51.25 mm', 'Pier', 'AP 1/2', '600 x 450', '', 'open'])('%j needs no mark', (text) => {
	expect(textForSpreadsheet(text)).toBe(text);
});

const texts = fc.oneof(
	fc.constantFrom('3/12', '3:2', '1.5', '20 1/2', '007', "'x", '=1', 'May 12', 'Möwen', '1,5', '12 %', '-', 'a\nb'),
	fc.string({ unit: fc.constantFrom('1', '2', '0', '/', ':', '.', ',', ' ', 'e', '-', '+', "'"), maxLength: 6 }),
);

test('a file for a spreadsheet has a byte order mark and comes back as it was, whatever program has saved it', () =>
	fc.assert(
		fc.property(texts, texts, texts, fc.constantFrom(...programs), (edition, shape, title, program) => {
			const typed = Object.fromEntries(
				Object.entries({ edition, shape, title }).filter(([, text]) => text.trim() !== ''),
			);
			const text = write([row(typed)], {}, { hasIds: true, isForSpreadsheet: true });
			expect(text.startsWith('\ufefftitle') || text.startsWith('\ufeffprint id')).toBe(true);
			expect(read(text).rows[0]!.typed).toEqual(typed);
			const file = saved(text, program);
			const back = read(file).rows[0]!.typed;
			const visible = (each: Row['typed']) =>
				Object.fromEntries(Object.entries(each).map(([name, value]) => [name, value.trim()]));
			expect(visible(back)).toEqual(visible(typed));
		}),
		{ numRuns: runs(30, 20_000) },
	));

test('any other file is plain UTF-8, its cells as typed', () => {
	const text = write([row({ edition: '3/12', shape: '3:2' })], {}, { hasIds: true });
	expect([text.startsWith('print id'), text.includes(',3/12,'), text.includes("'")]).toEqual([true, true, false]);
});

test('named sizes that rows name travel with them, and are offered where they are not the same', () => {
	const sizes = [
		{ name: 'Small; one=two', width: '400 mm', height: '300 mm' },
		{ name: 'Unused', width: 1, height: 1 },
	];
	const text = write([row({ mount: 'small; ONE=two' })], { sizes }, {});
	expect(text).not.toContain('Unused');
	const cells = read(text).results[0]!;
	const line = cells.find(({ name }) => name === 'result settings')!.text;
	expect(settingsOfRows([line], { unit: 'mm', sizes })).toBeUndefined();
	const none = settingsOfRows([line], { unit: 'mm' });
	expect(none).toEqual({
		sentence: 'The rows name a size that this show does not have: “Small; one=two” (400 × 300 mm).',
		change: { sizes: [{ name: 'Small; one=two', width: '400 mm', height: '300 mm' }] },
	});
	const other = [
		{ name: 'Large', width: '60 cm', height: '50 cm' },
		{ name: 'small; one=two', width: 1, height: 2 },
	];
	const change = settingsOfRows([line], { unit: 'mm', sizes: other })?.change;
	expect(change).toEqual({ sizes: [other[0], { name: 'Small; one=two', width: '400 mm', height: '300 mm' }] });
});
