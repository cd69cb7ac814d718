/** How many of a frame can be used at most, where each print has it for all its copies or not at all. */
export function mostUsed(count: number, copies: readonly number[]): number {
	if (copies.reduce((sum, own) => sum + own, 0) <= count) return count;
	const isReached = Array.from({ length: count + 1 }, (_, sum) => sum === 0);
	for (const own of copies) for (let sum = count; sum >= own; sum--) isReached[sum] ||= isReached[sum - own]!;
	return isReached.lastIndexOf(true);
}
