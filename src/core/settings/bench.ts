import type { Length } from '../length/length.ts';

/** The words that `bench.hand` may hold. */
export const benchHands = ['right', 'left'] as const;

/** The words that `bench.inner` may hold: how the window of an inner mount is cut. */
export const innerWays = ['taped', 'own blank'] as const;

/** The words that `bench.head` may hold: whether the head is pushed away from who cuts, or pulled. */
export const cutterHeads = ['push', 'pull'] as const;

/** The words that `bench.guideSide` may hold: where the guide is, for who stands at the cutter. */
export const guideSides = ['left', 'right'] as const;

/** The words that `bench.endStop` may hold: the edge from which the scale of the end stop reads. */
export const endStops = ['from the end', 'from the start'] as const;

/** The words that `bench.secondUnit` may hold: whether a measure is said in the other unit too. */
export const secondUnitWords = ['none', 'shown'] as const;

/** The ways through a show: every setting as seldom as can be, or every mount finished before the next. */
export const benchWays = ['fewest settings', 'mount by mount'] as const;

/** One of `benchWays`. */
export type BenchWay = (typeof benchWays)[number];

/** How windows are cut. */
export interface Bench {
	readonly kind: 'straight edge' | 'guide' | 'guide and stops';
	readonly greatest?: Length;
	readonly least?: Length;
	/** What the cutter cuts less what its guide reads. */
	readonly correction?: number;
	/** How far a cut runs past the corner. Blank: the thickness of the board. */
	readonly overcut?: Length;
	/** Thickness of the slip board that lies under the mount; zero: none does. Blank: an offcut of the mount's board. */
	readonly slipBoard?: Length;
	/** The cutting order. Blank: every setting as seldom as can be. */
	readonly way?: BenchWay;
	/** A fresh blade after so many mounts. Blank: nobody is reminded. */
	readonly bladeEvery?: number;
	/** The hand by whose thumb what is pressed at the bench lies. Blank: the right. */
	readonly hand?: (typeof benchHands)[number];
	/** Blank: taped behind the outer mount, and cut from its edges. */
	readonly inner?: (typeof innerWays)[number];
	/** Whether a measure stands in the other unit too, as a tape shows it. Blank: none. */
	readonly secondUnit?: (typeof secondUnitWords)[number];
	/** Which way the head goes. Blank: it is pushed. */
	readonly head?: (typeof cutterHeads)[number];
	/** Blank: the left. */
	readonly guideSide?: (typeof guideSides)[number];
	/** What the end stop reads: the distance from the edge at the end of the cut, or from that at its start. Blank: the end. */
	readonly endStop?: (typeof endStops)[number];
}
