import { formatLength, formatWithUnit } from '../length/formatLength.ts';
import type { Unit } from '../length/reading.ts';
import type { BoardPlan, UnplacedBlank } from './boardPlan.ts';

/** How good a plan is, in words that promise no more than is proven. */
export function proofWords({ cost, count, leastCost, leastCount, proven, unplaced }: BoardPlan): string {
	if (unplaced.some(({ reason }) => reason === 'used-up')) return 'The stock is used up, so nothing is proven.';
	if (count === 0) return unplaced.length > 0 ? 'Nothing can be cut.' : 'There is nothing to cut.';
	if (proven)
		return cost > 0
			? 'Proven least: no plan is cheaper, or as cheap with fewer sheets.'
			: 'Proven least: no plan takes fewer sheets.';
	if (cost === leastCost) {
		const over = count - leastCount;
		return over === 1
			? 'At most one sheet over the least possible.'
			: `At most ${over} sheets over the least possible.`;
	}
	return `Any plan costs at least ${Math.round((100 * leastCost) / cost)} % of this one.`;
}

/** What is said of the blanks that have no place, one sentence for each size and reason. */
export function unplacedWords({ board, unplaced }: BoardPlan, unit: Unit): readonly string[] {
	const groups = new Map<string, UnplacedBlank[]>();
	for (const one of unplaced) {
		const { width, height } = one.blank;
		const key = `${one.reason} ${width} ${height}`;
		groups.set(key, [...(groups.get(key) ?? []), one]);
	}
	return [...groups.values()].map((group) => {
		const { blank, reason } = group[0]!;
		const size = `${formatLength(blank.width, unit)} × ${formatWithUnit(blank.height, unit)}`;
		const blanks = group.length === 1 ? `One blank of ${size}` : `${group.length} blanks of ${size}`;
		const named = board === '' ? 'board' : `“${board}”`;
		if (reason === 'no-stock') return `${blanks}: there is no ${named} in stock. Add it to the boards.`;
		if (reason === 'too-large')
			return `${blanks}: no sheet or ready-cut blank of ${named} gives this size. Add a larger one, or another board.`;
		return `${blanks}: the ${named} in stock is used up. Add sheets, or take fewer copies.`;
	});
}
