import { describe, expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readMoney } from '../../../../src/core/row/readMoney.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { currencyOf } from '../../../../src/core/values/money.ts';

const amount = (text: string, currency?: string) => {
	const read = readMoney(text, currency === undefined ? undefined : currencyOf(currency));
	return 'problem' in read ? read : (read.value?.minorUnits ?? 'a word');
};

describe('thousands as people part them', () => {
	test.each<[text: string, minorUnits: number, currency?: string]>([
		['1 200', 120_000],
		['1 200,50', 120_050],
		['1\u00a0200,50 €', 120_050, 'EUR'],
		['1\u202f234\u202f567', 123_456_700],
		["1'200", 120_000],
		['CHF 1’200.50', 120_050, 'CHF'],
		['1,200.00', 120_000],
		['£1,200.5', 120_050, 'GBP'],
		['1.200,00', 120_000],
		['1,234,567', 123_456_700],
		['1.234.567', 123_456_700],
		['₹1,23,456.00', 12_345_600, 'INR'],
		['450,-', 45_000, 'EUR'],
		["1'450.–", 145_000, 'CHF'],
		['1,200', 1200, 'JPY'],
		['1.200', 1200, 'JPY'],
		['1.200', 1200, 'KWD'],
		['0', 0],
	])('“%s” is %d', (text, minorUnits, currency) => expect(amount(text, currency)).toBe(minorUnits));

	test.each<[text: string, readings: readonly string[], currency?: string]>([
		['1,200', ['1200', '1.20']],
		['£1.250', ['£1250', '£1.25'], 'GBP'],
		['1,255 EUR', ['1255 EUR'], 'EUR'],
		['1,200', ['1200', '1.200'], 'KWD'],
	])('“%s” is not guessed: %j', (text, readings, currency) => {
		const read = amount(text, currency);
		expect(read).toMatchObject({ readings, problem: expect.stringContaining('more than one way') as string });
		for (const reading of readings) expect(amount(reading, currency)).toBeTypeOf('number');
	});
});

test.each(['-5', '12,505.505', '1 20', '12 apples', '50 %', '€ 3 EUR', '1,2,3', '1'.repeat(13), '1'.repeat(70)])(
	'“%s” is no amount',
	(text) => expect(amount(text, 'EUR')).toHaveProperty('problem'),
);

test.each(['NFS', 'POA', 'on loan', '€'])('“%s” is a word', (text) => expect(amount(text, 'EUR')).toBe('a word'));

describe('in a row', () => {
	const { settings } = readSettings({ currency: 'EUR' });
	const read = (typed: Typed) => judgeRow({ id: 'a', order: 1, typed: { title: 'Pier', ...typed } }, settings);
	const problems = (typed: Typed) =>
		read(typed)
			.findings.filter(({ code }) => code === 'not-read')
			.map(({ cells, message }) => [cells[0], message]);

	test('amounts are read in the show’s currency', () =>
		expect(read({ net: '120', price: '€ 1 200', value: '95,5' }).read.money).toEqual({
			net: 12_000,
			price: 120_000,
			value: 9550,
		}));

	test('another currency is not read, and both are named', () => {
		for (const column of ['net', 'value'] as const)
			expect(problems({ [column]: '£120' })).toEqual([
				[column, expect.stringContaining('“£120” is in GBP, and the show is in EUR')],
			]);
	});

	test('what has figures and is no amount is not read; a word is kept', () => {
		expect(problems({ net: '120 or 90' })).toHaveLength(1);
		expect(problems({ net: 'on loan', value: 'POA', price: 'NFS' })).toEqual([]);
		expect(read({ net: 'on loan' }).read.money.net).toBeUndefined();
	});

	test('a price may be any text, and keeps no print from the bench', () => {
		expect(problems({ price: '120 framed, 90 unframed' })).toEqual([]);
		expect(read({ price: '£120' }).read.money.price).toBeUndefined();
	});

	test('a stage of our own is kept', () => expect(problems({ stage: 'at the printer’s, 2 of 3' })).toEqual([]));
});
