import type { FrameMaterial } from '../settings/frame.ts';
import type { Blank } from '../show/blank.ts';
import type { Layout } from './layout.ts';

/**
 * Why a blank has no place. `no-stock`: the board is not in stock in any size. `too-large`: no piece of it gives the
 * blank in a way that its grain allows. `used-up`: one would, but there are not enough of them.
 */
export type UnplacedReason = 'no-stock' | 'too-large' | 'used-up';

/** A blank that the stock does not give. */
export interface UnplacedBlank {
	readonly blank: Blank;
	readonly reason: UnplacedReason;
}

/** How the blanks of one board are cut. Plain data. */
export interface BoardPlan {
	/** The board's name. */
	readonly board: string;
	/** What it is a plan of; undefined: board. */
	readonly material?: FrameMaterial;
	/** The sheets that are cut already, then the others; drop-outs last, so that each is there before it is cut. */
	readonly layouts: readonly Layout[];
	readonly unplaced: readonly UnplacedBlank[];
	/** What must be bought for all layouts, in whole packs, in whole minor units. What has no price counts as 0. */
	readonly cost: number;
	/** How many pieces of stock are used, of all kinds. */
	readonly count: number;
	/** No plan for the same blanks costs less. */
	readonly leastCost: number;
	/** No plan for the same blanks that costs no more than this one takes fewer pieces of stock. */
	readonly leastCount: number;
	/** Whether cost and count are both least, and nothing is left unplaced that could be placed. */
	readonly proven: boolean;
	/** Share of the board used, sheets that are cut already included, that is neither blank nor offcut; 0 to 1. */
	readonly wasteShare: number;
}

/** A plan with what another search for the same blanks has found out: how good a plan can be, and whether this one is. */
export const withBoundsOf = (plan: BoardPlan, found: BoardPlan): BoardPlan => ({
	...plan,
	leastCost: Math.max(plan.leastCost, found.leastCost),
	// Of plans that cost more than the one that was found nothing is said of how many pieces they take.
	...(plan.cost === found.cost && {
		leastCount: Math.max(plan.leastCount, found.leastCount),
		proven: found.proven && plan.count === found.count && plan.unplaced.length === found.unplaced.length,
	}),
});
