import { addFractions, type Fraction, timesRounded } from './fraction.ts';
import { greatestLength, type Length, length, mmPerMetre, toMm } from './length.ts';
import { missingSpaceProblem } from './missingSpace.ts';
import { numberAt, unsureProblem } from './quantity.ts';
import type { Problem, Reading, Unit } from './reading.ts';
import { type Token, tokenize, type TypedUnit } from './tokens.ts';

/** What a typed length is read by. */
export interface LengthContext {
	/** The unit of a bare number. For the other length of a size that has a bare fraction, inches. */
	readonly unit: Unit;
	/** Whether the unit was stated for this very cell (by a CSV header): then a bare fraction is not inches by itself. */
	readonly isUnitStated?: boolean;
	/** Whether zero is read: for an overlap, a reveal, a space. A size or border is above zero. */
	readonly allowZero?: boolean;
	/** The greatest length that is read. Blank: 10 m. */
	readonly greatest?: Length;
}

/** A length as read. */
export interface ReadLength {
	readonly length: Length;
	/** Whether it was a fraction without any unit, stated or typed: it is inches and makes the other length of its size so. */
	readonly isBareFraction: boolean;
}

/** Nanometres in each unit. 1 in is 25.4 mm exactly (international inch, 1959). */
const nanometres: Readonly<Record<TypedUnit, bigint>> = {
	mm: 1_000_000n,
	cm: 10_000_000n,
	m: 1_000_000_000n,
	in: 25_400_000n,
	ft: 304_800_000n,
};

/** A number and unit as typed, before it becomes a length. */
export interface TypedLength {
	/** In `unit`; in feet and inches, inches. */
	readonly value: Fraction;
	readonly isNegative: boolean;
	readonly isFraction: boolean;
	/** Undefined where none was typed. */
	readonly unit: TypedUnit | undefined;
}

/**
 * Reads one length as people type it: `70`, `7,5 cm`, `2.625"`, `2 5/8 in`, `2⅝`, `1'4"`. It is rounded to 1 nm.
 * A bare number is in the unit of the context; a bare fraction is inches.
 */
export function parseLength(text: string, context: LengthContext): Reading<ReadLength> {
	const pieces = tokenize(text);
	const unsure = unsureProblem(pieces, context.unit === 'mm');
	if (unsure !== undefined) return { ...unsure, readings: readable(unsure.readings, context) };
	const typed = typedLength(pieces.tokens);
	if ('problem' in typed) return typed.problem === '' ? notALength(text) : typed;
	const missing = isInInches(typed.unit, typed.isFraction, context) ? missingSpaceProblem(pieces) : undefined;
	if (missing !== undefined) return missing;
	const isWithoutUnit = typed.isFraction && typed.unit === undefined;
	const isBareFraction = isWithoutUnit && !context.isUnitStated;
	const read = toLength(
		typed,
		isBareFraction ? 'in' : context.unit,
		text,
		context.allowZero ?? false,
		context.greatest,
	);
	if ('problem' in read) return read;
	if (isWithoutUnit && !isBareFraction && context.unit !== 'in')
		return unsureFraction(pieces.text, context.unit, 'the column is in', (reading) => parseLength(reading, context));
	return { value: { length: read.value, isBareFraction } };
}

/** Whether a number with that unit behind it, or none, is inches. */
export const isInInches = (unit: TypedUnit | undefined, isFraction: boolean, context: LengthContext): boolean =>
	unit === 'in' ||
	unit === 'ft' ||
	(unit === undefined && (context.unit === 'in' || (isFraction && !context.isUnitStated)));

const readable = (readings: readonly string[] = [], context: LengthContext) =>
	readings.filter((reading) => 'value' in parseLength(reading, context));

/** The problem of a text that is no length. */
export const notALength = (text: string): Problem => ({
	problem: `${quoted(text)} is not a length. Type a number, with or without a unit, such as 70, 7.5 cm or 2 5/8 in`,
});

const mostQuoted = 40;

/** A typed text for use in a sentence, cut short where it is long. */
export function quoted(text: string): string {
	const typed = Array.from(text.trim().slice(0, 2 * mostQuoted + 1)); // a sign has up to two units
	return `“${typed.length > mostQuoted ? `${typed.slice(0, mostQuoted - 1).join('')}…` : typed.join('')}”`;
}

/** The problem of a fraction without a unit where inches are not a matter of course, with both meanings offered. */
export const unsureFraction = (
	text: string,
	unit: Unit | '%',
	because: string,
	read: (text: string) => Reading<unknown>,
): Problem => ({
	problem: `${quoted(text)} may be inches or ${unit} (a fraction without a unit; ${because} ${unit}). Say which`,
	readings: [`${text} in`, `${text} ${unit}`].flatMap((reading) => {
		const meant = read(reading);
		return 'value' in meant ? [reading] : (meant.readings ?? []);
	}),
});

/** Reads the pieces of one length: a number with a unit or without, or feet and inches. */
export function typedLength(tokens: readonly Token[]): TypedLength | Problem {
	const first = numberAt(tokens, 0);
	if ('problem' in first) return first;
	const unit = unitAt(tokens, first.next);
	if (unit === 'ft' && first.next + 1 < tokens.length) {
		const inchesAt = first.next + (tokens[first.next + 1]?.kind === 'minus' ? 2 : 1); // a hyphen in 1'-4"
		const second = numberAt(tokens, inchesAt);
		if ('problem' in second) return second;
		const isEnd = second.next + (unitAt(tokens, second.next) === 'in' ? 1 : 0) === tokens.length;
		if (!isEnd || tokens[inchesAt]?.kind !== 'number') return { problem: '' };
		const feet = { numerator: first.value.numerator * 12n, denominator: first.value.denominator };
		return {
			...first,
			value: addFractions(feet, second.value),
			isFraction: first.isFraction || second.isFraction,
			unit: 'in',
		};
	}
	if (first.next + (unit === undefined ? 0 : 1) !== tokens.length) return { problem: '' };
	return { ...first, unit };
}

function unitAt(tokens: readonly Token[], at: number): TypedUnit | undefined {
	const token = tokens[at];
	return token?.kind === 'unit' ? token.unit : undefined;
}

/** A typed length as a length, rounded to 1 nm, or why it is none. */
export function toLength(
	typed: TypedLength,
	bareUnit: TypedUnit,
	text: string,
	allowZero: boolean,
	greatest: Length = greatestLength,
): Reading<Length> {
	const rounded = timesRounded(typed.value, nanometres[typed.unit ?? bareUnit]);
	if (typed.isNegative && rounded > 0n) return { problem: `${quoted(text)} is below zero, which a length cannot be` };
	if (rounded === 0n && !allowZero) return { problem: `${quoted(text)} is not above zero: a size or border must be` };
	if (rounded * 10n > BigInt(greatest))
		return {
			problem: `${quoted(text)} is more than ${toMm(greatest) / mmPerMetre} m, the longest length allowed`,
		};
	return { value: length(Number(rounded * 10n)) };
}
