import { expect, test } from 'vitest';
import { parsePercent } from '../../../../src/core/length/parsePercent.ts';
import { parseWeight } from '../../../../src/core/length/parseWeight.ts';
import type { Unit } from '../../../../src/core/length/reading.ts';
import type { BottomWeight } from '../../../../src/core/length/bottomWeight.ts';

const share = (numerator: number, denominator: number): BottomWeight => ({ kind: 'share', numerator, denominator });
const more = (mm: number) => ({ kind: 'length', more: mm * 1e7 });

test.each<[string, unknown]>([
	['12 %', share(3, 25)],
	['12%', share(3, 25)],
	['12', share(3, 25)],
	['12,5', share(1, 8)],
	['33 1/3 %', share(1, 3)],
	['0', share(0, 1)],
	['-0', share(0, 1)],
	['none', share(0, 1)],
	['None', share(0, 1)],
	['6 mm', more(6)],
	['0.6cm', more(6)],
	['0 mm', more(0)],
	['1/4 in', more(6.35)],
	['1"', more(25.4)],
	['optical centre', { kind: 'optical centre' }],
	['Optical Center', { kind: 'optical centre' }],
])('%s', (text, value) => expect(parseWeight(text)).toEqual({ value }));

test.each<[string, Unit, unknown]>([
	['6', 'mm', more(6)],
	['0.6', 'cm', more(6)],
	['1/4', 'in', more(6.35)],
	['12 %', 'mm', share(3, 25)],
])('%s under a header in %s', (text, unit, value) => expect(parseWeight(text, unit)).toEqual({ value }));

test.each<[string, RegExp]>([
	['heavy', /is not a bottom weight. Type a share/],
	['', /is not a bottom weight/],
	['12 % mm', /is not a bottom weight/],
	['6 mmm', /is not a bottom weight/],
	['-1', /below zero/],
	['-1 %', /below zero/],
	['-6 mm', /below zero/],
	['1001', /more than 1000 %/],
	['11 m', /more than 10 m/],
	['1/0', /divides by zero/],
	[`0.${'1'.repeat(30)}`, /too many digits/],
])('%s is not read', (text, sentence) => {
	const reading = parseWeight(text);
	expect('problem' in reading && reading.problem).toMatch(sentence);
});

test('a bare fraction is not read, both readings are', () => {
	const reading = parseWeight('1/4');
	expect(reading).toMatchObject({ readings: ['1/4 in', '1/4 %'] });
	expect(parseWeight('1/4 in')).toEqual({ value: more(6.35) });
	expect(parseWeight('1/4 %')).toEqual({ value: share(1, 400) });
	expect(parseWeight('1/4', 'mm')).toMatchObject({ readings: ['1/4 in', '1/4 mm'] });
});

test('a comma before three digits is not guessed', () => {
	expect(parseWeight('1,500')).toMatchObject({ readings: ['1.500'] }); // 1500 % is no weight
	expect(parseWeight('0,125')).toEqual({ value: share(1, 800) });
});

test.each<[string, number]>([
	['15%', 15],
	['15 %', 15],
	['12.5', 12.5],
	['0', 0],
	['1/2 %', 0.5],
])('the share %s is %d per cent', (text, value) => expect(parsePercent(text)).toEqual({ value }));

test.each(['', 'some', '15 mm', '-1 %', '1/0', '1,500', '15 % %'])('the share %s is not read', (text) =>
	expect(parsePercent(text)).toHaveProperty('problem'),
);
