import { formatSize, type Scale } from '../length/formatLength.ts';
import type { RowId } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import type { BoardPlan, UnplacedBlank } from './boardPlan.ts';

/** How good a plan is, in words that promise no more than is proven. */
export function proofWords({ cost, count, leastCost, leastCount, proven, unplaced }: BoardPlan): string {
	if (unplaced.some(({ reason }) => reason === 'used-up')) return 'The stock is used up, so nothing is proven.';
	if (count === 0) return unplaced.length > 0 ? 'Nothing can be cut.' : 'There is nothing to cut.';
	if (proven) return cost > 0 ? 'No cheaper plan exists.' : 'No plan uses fewer sheets.';
	if (cost === leastCost) {
		const over = count - leastCount;
		return over === 1
			? 'At most one sheet over the fewest possible.'
			: `At most ${over} sheets over the fewest possible.`;
	}
	return `Any plan costs at least ${Math.round((100 * leastCost) / cost)} % of this one.`;
}

/** Whether a plan's least figures mean anything: where the stock is used up, they count only what has a place. */
export const hasBounds = ({ unplaced }: BoardPlan): boolean => !unplaced.some(({ reason }) => reason === 'used-up');

/** Blanks of one size that have no place for one reason. */
export interface UnplacedWords {
	readonly sentence: string;
	/** Whose they are, and how many of each; no name: spares. In the order of the show. */
	readonly whose: readonly { readonly rowId: RowId | undefined; readonly count: number }[];
}

/** What is said of the blanks that have no place, one sentence for each size and reason. */
export function unplacedWords({ board, unplaced }: BoardPlan, scale: Scale): readonly UnplacedWords[] {
	const groups = groupBy(unplaced, ({ blank: { width, height }, reason }) => `${reason} ${width} ${height}`);
	return [...groups.values()].map((group): UnplacedWords => {
		const whose = [...groupBy(group, ({ blank }) => blank.rowId)].map(([rowId, own]) => ({ rowId, count: own.length }));
		const sentence = unplacedSentence(board, group, scale);
		return { sentence, whose };
	});
}

/**
 * Blanks of one size that have no place for one reason, and what would give them one.
 * @param whose said behind their size: " for Ebb and Low water"
 */
export function unplacedSentence(board: string, alike: readonly UnplacedBlank[], scale: Scale, whose = ''): string {
	const { blank, reason } = alike[0]!;
	const size = formatSize(blank.width, blank.height, scale);
	const blanks = `${alike.length === 1 ? 'One blank' : `${alike.length} blanks`} of ${size}${whose}`;
	const named = board === '' ? 'board' : `“${board}”`;
	if (reason === 'no-stock') return `${blanks}: there is no ${named} in stock. Add it to the boards.`;
	if (reason === 'too-large')
		return `${blanks}: no sheet or ready-cut blank of ${named} gives this size. Add a larger one, or another board.`;
	return `${blanks}: the ${named} in stock is used up. To buy more, add it to the list once more, with “In stock” left blank.`;
}
