declare const lengthBrand: unique symbol;

/**
 * A length in whole units of 0.1 nm, so that half of any typed length (whole nanometres) is whole too.
 * 1 mm = 10 000 000 units, 1 in = 254 000 000, 1/64 in = 3 968 750. Sums and differences are exact.
 */
export type Length = number & { readonly [lengthBrand]: true };

/** Units in a millimetre. */
export const unitsPerMm = 10_000_000;

/** Units in an inch: exactly 25.4 mm (international inch, 1959). */
export const unitsPerInch = 254_000_000;

/** Units in a nanometre: what a typed length is rounded to. */
const unitsPerNanometre = 10;

/** The greatest length that is read: 10 m. */
export const greatestLength = (10_000 * unitsPerMm) as Length;

/** Millimetres in a metre. */
export const mmPerMetre = 1000;

/** The greatest length of what is sold by the roll: 1 km. */
export const greatestRoll = (1000 * mmPerMetre * unitsPerMm) as Length;

/** Lengths this far apart, or less, count as equal: 1 µm. */
export const sameWithin = 10_000;

/** The greatest length along a wall that is read: 100 m. */
export const greatestWall = (100 * mmPerMetre * unitsPerMm) as Length;

/** No length at all. */
export const zero = 0 as Length;

/**
 * A whole number of units as a length.
 * @throws RangeError if `units` is not a safe integer
 */
export function length(units: number): Length {
	if (!Number.isSafeInteger(units)) throw new RangeError(`not a whole number of units: ${units}`);
	return (units === 0 ? 0 : units) as Length;
}

/** `value` millimetres, rounded to 1 nm. */
export const mm = (value: number): Length =>
	length(Math.round((value * unitsPerMm) / unitsPerNanometre) * unitsPerNanometre);

/** `value` inches, rounded to 1 nm (1/64 in is exact). */
export const inches = (value: number): Length =>
	length(Math.round((value * unitsPerInch) / unitsPerNanometre) * unitsPerNanometre);

/** The length in millimetres, as the nearest number. */
export const toMm = (value: Length): number => value / unitsPerMm;

/** The length in inches, as the nearest number. */
export const toInches = (value: Length): number => value / unitsPerInch;

/** The exact sum of any number of lengths. */
export const plus = (...values: Length[]): Length => length(values.reduce((sum: number, value) => sum + value, 0));

/** `from` less all the others, exactly. */
export const minus = (from: Length, ...others: Length[]): Length =>
	length(others.reduce((rest: number, value) => rest - value, from));

/** A whole multiple of a length, exactly. */
export const times = (value: Length, count: number): Length => length(value * count);

/** Whether two lengths are within 1 µm of each other, which counts as equal. */
export const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= sameWithin;

/** The length nearest to a number of units that was worked out; what is past all lengths is the last one. */
export const nearestLength = (units: number): Length =>
	length(Math.max(-Number.MAX_SAFE_INTEGER, Math.min(Number.MAX_SAFE_INTEGER, Math.round(units))));
