import { describe, expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { amountIn, moneyColumns, moneyIn, readMoney } from '../../../../src/core/row/readMoney.ts';
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
	const amountsIn = (typed: Typed) => {
		const { money } = read(typed).read;
		return moneyColumns.map((column) => amountIn(money[column]));
	};
	const problems = (typed: Typed) =>
		read(typed)
			.findings.filter(({ code }) => code === 'not-read')
			.map(({ cells, message }) => [cells[0], message]);

	test('amounts are read in the show’s currency', () =>
		expect(amountsIn({ net: '120', price: '€ 1 200', value: '95,5' })).toEqual([12_000, 120_000, 9550]));

	test('another currency is not read, and both are named', () => {
		for (const column of ['net', 'value'] as const)
			expect(problems({ [column]: '£120' })).toEqual([
				[column, expect.stringContaining('“£120” is in GBP, and the show is in EUR')],
			]);
	});

	test('what has figures and is no amount is not read; a word is kept', () => {
		expect(problems({ net: '120 or 90' })).toHaveLength(1);
		expect(problems({ net: 'on loan', value: 'POA', price: 'NFS' })).toEqual([]);
		expect(amountsIn({ net: 'on loan' })).toEqual([undefined, undefined, undefined]);
	});

	test('a price may be any text, and keeps no print from the bench', () => {
		expect(problems({ price: '120 framed, 90 unframed' })).toEqual([]);
		expect(amountsIn({ price: '£120' })).toEqual([undefined, undefined, undefined]);
	});

	test.each([
		['EUR', 'EUR', 0],
		[undefined, undefined, 0],
		[undefined, 'JPY', 1],
	])('of a show in %s whose prices are in %s each text is read again %i times', (own, first, times) => {
		const row = { id: 'a', order: 1, typed: { net: '1200' } };
		const result = judgeRow(row, readSettings(own === undefined ? {} : { currency: own }).settings);
		let looks = 0;
		const watched = new Proxy(row.typed, { get: (typed, key: 'net') => (looks++, typed[key]) });
		const currency = currencyOf(first ?? '');
		expect(moneyIn({ typed: watched }, result, 'net', currency)).toEqual(readMoney('1200', currency));
		expect(looks).toBe(times);
	});

	test('a stage of our own is kept', () => expect(problems({ stage: 'at the printer’s, 2 of 3' })).toEqual([]));
});
