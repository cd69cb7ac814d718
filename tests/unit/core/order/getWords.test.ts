import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { amountWords, thereWords } from '../../../../src/core/order/getWords.ts';

test('what is wanted by length is said to a tenth of a metre, never less than it is', () => {
	const metres = (value: number) => amountWords(mm(value), { kind: 'tape', isByLength: true });
	expect([24_470, 24_400, 24_401, 90].map(metres)).toEqual(['24.5 m', '24.4 m', '24.5 m', '0.1 m']);
	expect(amountWords(7, { kind: 'rings', isByLength: false })).toBe('7');
});

test('what is wanted of a roll of paper is said to a centimetre, never less than it is', () => {
	const metres = (value: number) => amountWords(mm(value), { kind: 'paper', isByLength: true });
	expect([7 * 401, 19_890, 400].map(metres)).toEqual(['2.81 m', '19.89 m', '0.40 m']);
});

test('what is there by length is never said to be more', () => {
	const metres = (value: number) => thereWords({ there: mm(value), isByLength: true });
	expect([12_345, 12_300, 15_000, 4990].map(metres)).toEqual(['12.34 m', '12.3 m', '15 m', '4.99 m']);
	expect(thereWords({ there: 3, isByLength: false })).toBe('3');
	expect(thereWords({ there: 0, isByLength: true }), 'on paper and screen').toBe('none');
});
