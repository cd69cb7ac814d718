import { type Length, unitsPerInch, unitsPerMm } from './length.ts';
import type { Unit } from './reading.ts';

/** Units of a `Length` in one of each unit. */
const unitsIn: Readonly<Record<Unit, number>> = { mm: unitsPerMm, cm: 10 * unitsPerMm, in: unitsPerInch };

/** Decimals shown: to 1 µm in metric units, to about 0.03 mm in inches that are no fraction. */
const decimalsShown: Readonly<Record<Unit, number>> = { mm: 3, cm: 4, in: 3 };

/** Decimals that tell every unit of a `Length` apart. */
const decimalsOfAUnit: Readonly<Record<Unit, number>> = { mm: 7, cm: 8, in: 9 };

const unitsPer64th = unitsPerInch / 64;

const fractionSigns: Readonly<Record<string, string>> = {
	'1/2': '½',
	'1/4': '¼',
	'3/4': '¾',
	'1/8': '⅛',
	'3/8': '⅜',
	'5/8': '⅝',
	'7/8': '⅞',
};

/**
 * A length as it is shown, without its unit: `70`, `71.5`, `2⅝`, `16 5/16`. Inches are a fraction where they lie on a
 * 64th, decimals elsewhere. Below zero it has a minus sign, not a hyphen.
 */
export function formatLength(value: Length, unit: Unit): string {
	const isFraction = unit === 'in' && value % unitsPer64th === 0;
	const shown = isFraction
		? inchFraction(Math.abs(value))
		: decimals(Math.abs(value), unitsIn[unit], decimalsShown[unit]);
	return value < 0 && shown !== '0' ? `−${shown}` : shown;
}

/**
 * A length as a text that can be typed again and gives the very same, with its unit and no sign that a keyboard lacks:
 * `70 mm`, `2 5/8 in`.
 */
export function formatTypeable(value: Length, unit: Unit): string {
	const isFraction = unit === 'in' && value >= 0 && value % unitsPer64th === 0;
	return `${isFraction ? inchFraction(value, {}) : formatExact(value, unit)} ${unit}`;
}

/** A length as it is shown to be read from afar, without its unit: a fraction has digits as large as the rest, `2 5/8`. */
export const formatLarge = (value: Length, unit: Unit): string =>
	unit === 'in' && value >= 0 && value % unitsPer64th === 0 ? inchFraction(value, {}) : formatLength(value, unit);

/** A length as it stands in a sentence: `70 mm`, `2⅝ in`. */
export const formatWithUnit = (value: Length, unit: Unit): string => `${formatLength(value, unit)} ${unit}`;

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

function inchFraction(units: number, signs = fractionSigns): string {
	const whole = Math.floor(units / unitsPerInch);
	let over = (units - whole * unitsPerInch) / unitsPer64th;
	let under = 64;
	while (over > 0 && over % 2 === 0) {
		over /= 2;
		under /= 2;
	}
	if (over === 0) return `${whole}`;
	const sign = signs[`${over}/${under}`];
	if (sign !== undefined) return whole === 0 ? sign : `${whole}${sign}`;
	return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}
