import { divideFractions, type Fraction } from './fraction.ts';
import { quoted } from './parseLength.ts';
import { numberAt, unsureProblem } from './quantity.ts';
import type { Reading } from './reading.ts';
import { tokenize } from './tokens.ts';

/** Width over height, in lowest terms: 3:2 is 3/2. Both whole, above zero and safe integers. */
export interface ReadShape {
	readonly numerator: number;
	readonly denominator: number;
}

/** Reads a shape, width first: `3:2`, `3/2`, `1.5`, `3x2`, `2.39:1`. */
export function parseShape(text: string): Reading<ReadShape> {
	const pieces = tokenize(text);
	const { tokens } = pieces;
	const unsure = unsureProblem(pieces, false);
	if (unsure !== undefined)
		return { ...unsure, readings: (unsure.readings ?? []).filter((reading) => 'value' in parseShape(reading)) };
	const between = tokens.findIndex(({ kind }) => kind === 'colon' || kind === 'times');
	if (between < 0) return wholeShape(numberOf(tokens, text), text);
	const width = numberOf(tokens.slice(0, between), text);
	const height = numberOf(tokens.slice(between + 1), text);
	if ('problem' in width) return width;
	if ('problem' in height) return height;
	if (height.value.numerator === 0n) return notAboveZero(text);
	return wholeShape({ value: divideFractions(width.value, height.value) }, text);
}

function numberOf(tokens: Parameters<typeof numberAt>[0], text: string): Reading<Fraction> {
	const number = numberAt(tokens, 0);
	if ('problem' in number && number.problem !== '') return notAboveZero(text);
	if ('problem' in number || number.next !== tokens.length)
		return { problem: `${quoted(text)} is not a shape. Type width to height, such as 3:2 or 1.5` };
	return number.isNegative ? notAboveZero(text) : { value: number.value };
}

const notAboveZero = (text: string) => ({ problem: `${quoted(text)} is not a shape. Both sides must be above zero` });

function wholeShape(reading: Reading<Fraction>, text: string): Reading<ReadShape> {
	if ('problem' in reading) return reading;
	const [numerator, denominator] = [Number(reading.value.numerator), Number(reading.value.denominator)];
	if (numerator === 0) return notAboveZero(text);
	if (!Number.isSafeInteger(numerator) || !Number.isSafeInteger(denominator))
		return { problem: `${quoted(text)} has too many digits for a shape` };
	return { value: { numerator, denominator } };
}
