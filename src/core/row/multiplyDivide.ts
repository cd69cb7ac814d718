/**
 * `value · numerator / denominator`, exactly rounded to a whole number: through BigInt where the product passes 2^53.
 * @param value whole, as are the others; the denominator above zero
 */
export function multiplyDivide(value: number, numerator: number, denominator: number, round: 'up' | 'down'): number {
	const product = value * numerator;
	if (Number.isSafeInteger(product)) {
		const rest = ((product % denominator) + denominator) % denominator;
		const down = (product - rest) / denominator;
		return rest === 0 || round === 'down' ? down : down + 1;
	}
	const exact = BigInt(value) * BigInt(numerator);
	const divisor = BigInt(denominator);
	const rest = ((exact % divisor) + divisor) % divisor;
	const down = (exact - rest) / divisor;
	return Number(rest === 0n || round === 'down' ? down : down + 1n);
}
