/**
 * A fraction, zero or more, put up to a multiple of a step: 1234.5 in steps of 100 is 1300, 1200 stays.
 * @param step above zero
 */
export function roundedUp(numerator: bigint, denominator: bigint, step: number): number {
	const of = denominator * BigInt(step);
	return Number(((numerator + of - 1n) / of) * BigInt(step));
}
