import { type Length, minus, zero } from '../length/length.ts';
import { parseLength } from '../length/parseLength.ts';
import { parsePercent } from '../length/parsePercent.ts';
import { parseSize } from '../length/parseSize.ts';
import { parseThickness } from '../length/parseThickness.ts';
import { unsureProblem } from '../length/quantity.ts';
import type { Reading, Unit } from '../length/reading.ts';
import type { NamedSize, Size } from '../length/size.ts';
import { tokenize } from '../length/tokens.ts';
import { isRecord, type PlainRecord } from '../values/isRecord.ts';
import { shown } from '../values/shownText.ts';

/** A setting that could not be read. */
export interface SettingProblem {
	/** Where it stands: `border`, `boards[1].width` (the second board). */
	readonly key: string;
	/** One plain sentence, without the key. */
	readonly problem: string;
}

/** What settings are read by, and where their problems are reported. */
export interface SettingContext {
	/** The show's unit, for a bare number in a text. A number that is no text is mm. */
	readonly unit: Unit;
	/** The show's own sizes. */
	readonly sizes: readonly NamedSize[];
	/** The greatest length that is read. Blank: 10 m. */
	readonly greatest?: Length;
	readonly report: (key: string, problem: string) => void;
}

/** Whether a setting was left out, or left blank. */
export const isAbsent = (value: unknown): boolean =>
	value === undefined || value === null || (typeof value === 'string' && value.trim() === '');

/** The value of a reading; its problem is reported and gives undefined. */
export function valueOf<Value>(reading: Reading<Value>, key: string, context: SettingContext): Value | undefined {
	if ('value' in reading) return reading.value;
	context.report(key, reading.problem);
	return undefined;
}

const readTyped = <Value>(value: unknown, bareUnit: string, read: (text: string) => Reading<Value>, wanted: string) => {
	if (typeof value === 'number') return read(`${value} ${bareUnit}`);
	if (typeof value === 'string') return read(value);
	return { problem: `${shown(value)} is not ${wanted}` };
};

/** One length; a number is mm. */
export const lengthSetting = (value: unknown, context: SettingContext, allowZero = false): Reading<Length> => {
	const { unit, greatest } = context;
	const by = { unit, allowZero, ...(greatest !== undefined && { greatest }) };
	const reading = readTyped(value, 'mm', (text) => parseLength(text, by), 'a length');
	return 'value' in reading ? { value: reading.value.length } : reading;
};

/** A thickness, as a length or as boards are sold: `1400 micron`, `4-ply`; a number is mm. */
export const thicknessSetting = (value: unknown, { unit }: SettingContext): Reading<Length> =>
	readTyped(value, 'mm', (text) => parseThickness(text, { unit }), 'a thickness');

/** A length above or below zero; a number is mm. */
export const signedLengthSetting = (value: unknown, context: SettingContext): Reading<Length> => {
	const typed = typeof value === 'number' ? `${value} mm` : value;
	if (typeof typed !== 'string') return { problem: `${shown(value)} is not a length` };
	const below = /^\s*[-\u2212]/.exec(typed);
	const reading = lengthSetting(below === null ? typed : typed.slice(below[0].length), context, true);
	return 'value' in reading && below !== null ? { value: minus(zero, reading.value) } : reading;
};

/** A share in per cent: `15%`, `15`, or the number 15. */
export const percentSetting = (value: unknown): Reading<number> => readTyped(value, '%', parsePercent, 'a share');

/** A number with a unit behind it, at or above zero, that is not to be mistaken; its text has a decimal point. */
export interface NumberAndUnit {
	readonly number: string;
	/** What stands behind it, in small letters; empty where nothing does. */
	readonly unit: string;
}

/**
 * A number with a unit, of no kind that lengths have: `1500 cm²`, `0,4 kg`. Digits that may be meant in two ways are not
 * guessed, as with lengths.
 */
export function numberAndUnit(text: string, otherwise: string): Reading<NumberAndUnit> {
	const unsure = unsureProblem(tokenize(text), true);
	if (unsure !== undefined) return unsure;
	const typed = /^\s*(\d+(?:[.,]\d+)?)\s*(.*?)\s*$/.exec(text);
	if (typed === null) return { problem: otherwise };
	return { value: { number: typed[1]!.replace(',', '.'), unit: typed[2]!.toLowerCase() } };
}

/** A whole number, at least `least`. */
export function wholeSetting(value: unknown, least: number): Reading<number> {
	const number = typeof value === 'string' && /^\s*\d{1,15}\s*$/.test(value) ? Number(value) : value;
	if (typeof number === 'number' && Number.isSafeInteger(number) && number >= least) return { value: number };
	return { problem: `${shown(value)} is not a whole number${least > 0 ? `, ${least} or more` : ''}` };
}

/** A text that is not blank. */
export const textSetting = (value: unknown): Reading<string> =>
	typeof value === 'string' && value.trim() !== '' ? { value: value.trim() } : { problem: 'the name is missing' };

/** A text, which may be any. */
export const wordsSetting = (value: unknown): Reading<string> =>
	typeof value === 'string' ? { value: value.trim() } : { problem: `${shown(value)} is not a text` };

/** One of some words, whatever its capitals. */
export function wordSetting<Word extends string>(value: unknown, words: readonly Word[]): Reading<Word> {
	const found = words.find((word) => typeof value === 'string' && word === value.trim().toLowerCase());
	return found === undefined ? { problem: `${shown(value)} is none of: ${words.join(', ')}` } : { value: found };
}

/** `yes` or `no`, or true or false. */
export function yesNoSetting(value: unknown): Reading<boolean> {
	if (typeof value === 'boolean') return { value };
	const word = wordSetting(value, ['yes', 'no'] as const);
	return 'value' in word ? { value: word.value === 'yes' } : word;
}

/** A size: `60 x 45 cm`, a listed name, or a record of width and height. */
export function sizeSetting(value: unknown, key: string, context: SettingContext): Size | undefined {
	if (isRecord(value)) return sizeOfRecord(value, key, context);
	if (typeof value !== 'string') {
		context.report(key, `${shown(value)} is not a size`);
		return undefined;
	}
	const read = valueOf(parseSize(value, context), key, context);
	return read && { width: read.width, height: read.height };
}

/**
 * The width and height of a record. A bare fraction in one of them makes the other inches too.
 * @param sides the keys that they stand under
 * @returns undefined, with each problem reported, if either cannot be read
 */
export function sizeOfRecord(
	record: PlainRecord,
	key: string,
	context: SettingContext,
	sides: readonly [string, string] = ['width', 'height'],
): Size | undefined {
	const isInches = sides.some((side) => {
		const value = record[side];
		const reading = typeof value === 'string' ? parseLength(value, { unit: context.unit }) : undefined;
		return reading !== undefined && 'value' in reading && reading.value.isBareFraction;
	});
	const own: SettingContext = isInches ? { ...context, unit: 'in' } : context;
	const [width, height] = sides.map((side) => {
		if (!isAbsent(record[side])) return valueOf(lengthSetting(record[side], own), `${key}.${side}`, context);
		context.report(`${key}.${side}`, `the ${inWords(side)} is missing`);
		return undefined;
	});
	return width === undefined || height === undefined ? undefined : { width, height };
}

/** `rebateWidth` as it is spoken: rebate width. */
const inWords = (key: string) => key.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);

/** The records of a list, each with its key; what is no list, or no record, is reported. */
export function recordsOf(value: unknown, key: string, context: SettingContext): [PlainRecord, string][] {
	if (isAbsent(value)) return [];
	if (!Array.isArray(value)) {
		context.report(key, `${shown(value)} is not a list`);
		return [];
	}
	return value.flatMap((record: unknown, place) => {
		if (isRecord(record)) return [[record, `${key}[${place}]`] satisfies [PlainRecord, string]];
		context.report(`${key}[${place}]`, `${shown(record)} is not a record`);
		return [];
	});
}

/** The read values of those keys of a record that are given; what cannot be read is reported and left out. */
export function optionalSettings<Values extends object>(
	record: PlainRecord,
	key: string,
	context: SettingContext,
	readers: { readonly [Key in keyof Values & string]: readonly [string, (value: unknown) => Reading<Values[Key]>] },
): Partial<Values> {
	const read: Partial<Values> = {};
	for (const name of Object.keys(readers) as (keyof Values & string)[]) {
		const [typedKey, reader] = readers[name];
		if (isAbsent(record[typedKey])) continue;
		const value = valueOf(reader(record[typedKey]), `${key}.${typedKey}`, context);
		if (value !== undefined) read[name] = value;
	}
	return read;
}
