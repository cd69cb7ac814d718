import { inches, type Length, length, mm, unitsPerInch, unitsPerMm } from './length.ts';
import type { Unit } from './reading.ts';
import { isOnRuler } from './ruler.ts';

/** Units of a `Length` in one of each unit. */
const unitsIn: Readonly<Record<Unit, number>> = { mm: unitsPerMm, cm: 10 * unitsPerMm, in: unitsPerInch };

/** What lengths are shown by: the unit, and the ruler on which a length is shown as it is. A show's settings are one. */
export interface Scale {
	readonly unit: Unit;
	readonly ruler: Length;
}

type Metric = Exclude<Unit, 'in'>;

/** Decimals of a length that is not on the ruler: to 0.1 mm. */
const decimalsShown: Readonly<Record<Metric, number>> = { mm: 1, cm: 2 };

/** Decimals that show a 32nd of an inch as it is. */
const decimalsOnRuler: Readonly<Record<Metric, number>> = { mm: 5, cm: 6 };

/** Decimals that tell every unit of a `Length` apart. */
const decimalsOfAUnit: Readonly<Record<Unit, number>> = { mm: 7, cm: 8, in: 9 };

const unitsPer64th = unitsPerInch / 64;

/**
 * A length as it is shown to people, without its unit: `70`, `71.5`, `2 5/8`, `16 5/16`. On the ruler it is shown as it is,
 * elsewhere rounded to 0.1 mm, 0.01 cm or 1/64 in; inches are a fraction, never decimals, and always written alike: there
 * is no sign for a 32nd, so signs such as ⅝ would stand beside figures. Below zero it has a minus sign, not a hyphen.
 */
export const formatLength = (value: Length, scale: Scale): string =>
	signed(value, scale.unit === 'in' ? inchFraction(Math.abs(value)) : metric(Math.abs(value), scale.unit, scale.ruler));

/**
 * The same, some steps finer than it is shown: a decimal each, or half as large a part of an inch. For a sentence that
 * compares lengths which look alike otherwise.
 */
export const formatFiner = (value: Length, { unit }: Scale, steps: number): string =>
	signed(
		value,
		unit === 'in'
			? inchFraction(Math.abs(value), 64 * 2 ** steps)
			: decimals(Math.abs(value), unitsIn[unit], decimalsShown[unit] + steps),
	);

/** The steps after which lengths that do not count as equal look different: to 1 µm, and to the 16384th of an inch. */
export const finestSteps: Readonly<Record<Unit, number>> = { mm: 2, cm: 2, in: 8 };

const signed = (value: Length, size: string): string => (value < 0 && size !== '0' ? `−${size}` : size);

function metric(size: number, unit: Metric, ruler: Length): string {
	if (!isOnRuler(length(size), ruler)) return decimals(size, unitsIn[unit], decimalsShown[unit]);
	return decimals(Math.round(size / ruler) * ruler, unitsIn[unit], decimalsOnRuler[unit]);
}

/**
 * A length as a text that can be typed again and gives the very same, with its unit and no sign that a keyboard lacks:
 * `70 mm`, `2 5/8 in`.
 */
export function formatTypeable(value: Length, unit: Unit): string {
	const isFraction = unit === 'in' && value >= 0 && value % unitsPer64th === 0;
	return `${isFraction ? inchFraction(value) : formatExact(value, unit)} ${unit}`;
}

/** Graduations of a tape measure: what a length in the other unit is rounded to. */
const tape: Readonly<Record<Unit, Length>> = { mm: mm(0.5), cm: mm(0.5), in: inches(1 / 16) };

/** A length as a tape shows it, without its unit: to the nearest 0.5 mm or 1/16 in. */
export const formatOnTape = (value: Length, unit: Unit): string =>
	formatLength(length(Math.round(value / tape[unit]) * tape[unit]), { unit, ruler: tape[unit] });

/** A length as it stands in a sentence: `70 mm`, `2 5/8 in`. */
export const formatWithUnit = (value: Length, scale: Scale): string => `${formatLength(value, scale)} ${scale.unit}`;

/** A size as it stands in a sentence: `600 × 450 mm`. */
export const formatSize = (width: Length, height: Length, scale: Scale): string =>
	`${formatLength(width, scale)} × ${formatWithUnit(height, scale)}`;

/**
 * A length as a file has it, without its unit: decimals with a point that give the very same length again, no more of
 * them than that takes. Below zero it has a hyphen.
 */
export function formatExact(value: Length, unit: Unit): string {
	const sign = value < 0 ? '-' : '';
	const size = Math.abs(value);
	const perUnit = unitsIn[unit];
	for (let places = 0; places < decimalsOfAUnit[unit]; places++) {
		const text = decimals(size, perUnit, places);
		if (unitsOf(text, perUnit) === BigInt(size)) return sign + text;
	}
	return sign + decimals(size, perUnit, decimalsOfAUnit[unit]);
}

/**
 * The length that decimals of `formatExact` stand for, to the unit (a typed length is rounded to 1 nm instead).
 * @returns undefined if the text is no plain decimal
 */
export function parseExact(text: string, unit: Unit): Length | undefined {
	if (!/^-?\d{1,12}(?:\.\d{1,20})?$/.test(text)) return undefined;
	const isNegative = text.startsWith('-');
	const units = Number(unitsOf(isNegative ? text.slice(1) : text, unitsIn[unit]));
	if (!Number.isSafeInteger(units)) return undefined;
	return (isNegative && units !== 0 ? -units : units) as Length;
}

/** `units / perUnit`, rounded half up to so many decimals, without trailing zeros. */
function decimals(units: number, perUnit: number, places: number): string {
	const scale = 10n ** BigInt(places);
	const divisor = BigInt(perUnit);
	const scaled = (2n * BigInt(units) * scale + divisor) / (2n * divisor);
	const digits = scaled.toString().padStart(places + 1, '0');
	const whole = digits.slice(0, digits.length - places);
	const rest = digits.slice(digits.length - places).replace(/0+$/, '');
	return rest === '' ? whole : `${whole}.${rest}`;
}

function unitsOf(text: string, perUnit: number): bigint {
	const [whole = '', rest = ''] = text.split('.');
	const scale = 10n ** BigInt(rest.length);
	return (2n * BigInt(whole + rest) * BigInt(perUnit) + scale) / (2n * scale);
}

/** Inches as a fraction of an inch, to the nearest 64th, or to the nearest finer part. */
function inchFraction(units: number, parts = 64): string {
	const rounded = Math.round((units * parts) / unitsPerInch);
	const whole = Math.floor(rounded / parts);
	let over = rounded - whole * parts;
	let under = parts;
	while (over > 0 && over % 2 === 0) {
		over /= 2;
		under /= 2;
	}
	if (over === 0) return `${whole}`;
	return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}
