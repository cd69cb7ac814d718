import type { Length } from '../length/length.ts';

/** The words that `hanging.kind` may hold. */
export const hangingKinds = ['cord', 'two hooks', 'rail'] as const;

/** How far below the top of a frame its rings are: a length, or a share of its height. */
export type RingsAt =
	| { readonly kind: 'length'; readonly length: Length }
	| { readonly kind: 'share'; readonly percent: number };

/** What frames hang by. */
export interface Hanging {
	readonly kind: (typeof hangingKinds)[number];
	readonly rings: RingsAt;
	/** How far the rings are in from each side of the frame. */
	readonly inset: Length;
	/** How much longer a cord is than the way between its rings. */
	readonly slackPercent: number;
	/** What one fixing holds, as its maker says. Undefined: not asked. */
	readonly ratingKg: number | undefined;
	/** How far the nail is above the hook's bearing; for a rail, its height above the floor. */
	readonly nail: Length;
}
