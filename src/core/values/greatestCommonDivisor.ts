/** The greatest whole number that divides both; both whole, and not both zero. */
export function greatestCommonDivisor(a: number, b: number): number {
	while (b !== 0) [a, b] = [b, a % b];
	return a;
}
