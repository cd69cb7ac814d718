/** An exact number: a fraction in lowest terms, its denominator above zero. */
export interface Fraction {
	readonly numerator: bigint;
	readonly denominator: bigint;
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
	while (b !== 0n) [a, b] = [b, a % b];
	return a < 0n ? -a : a;
}

/** The least whole number that both divide, both above zero. */
export const leastCommonMultiple = (a: bigint, b: bigint): bigint => (a / greatestCommonDivisor(a, b)) * b;

/**
 * A fraction in lowest terms.
 * @throws RangeError if the denominator is not above zero
 */
export function fraction(numerator: bigint, denominator: bigint): Fraction {
	if (denominator <= 0n) throw new RangeError(`denominator not above zero: ${denominator}`);
	const divisor = greatestCommonDivisor(numerator, denominator);
	return { numerator: numerator / divisor, denominator: denominator / divisor };
}

/** The exact sum of two fractions. */
export const addFractions = (a: Fraction, b: Fraction): Fraction =>
	fraction(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator);

/** The exact quotient of two fractions; `b` is above zero. */
export const divideFractions = (a: Fraction, b: Fraction): Fraction =>
	fraction(a.numerator * b.denominator, a.denominator * b.numerator);

/** A decimal, written with a point or a comma or neither, as a fraction: `2,675` is 107/40. */
export function decimalFraction(digits: string): Fraction {
	const [whole = '', decimals = ''] = digits.split(/[.,]/);
	return fraction(BigInt(whole + decimals), 10n ** BigInt(decimals.length));
}

/** A fraction above or at zero, times a whole number, rounded to the nearest whole number, half up. */
export function timesRounded({ numerator, denominator }: Fraction, factor: bigint): bigint {
	return (2n * numerator * factor + denominator) / (2n * denominator);
}
