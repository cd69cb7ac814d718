import type { Length } from '../length/length.ts';
import type { RowId } from '../show/row.ts';

/** One side of a made frame, mitred at both ends. */
export interface Leg {
	/** Place of the row in the show, from 1. */
	readonly row: number;
	readonly rowId: RowId;
	/** Which of the row's copies, from 1. */
	readonly copy: number;
	/** From long point to long point: the framed width or height. */
	readonly length: Length;
}

/** What is to be sawn from the sticks of one moulding. Plain data: it goes to a worker as it is. */
export interface StickJob {
	/** The moulding's name in the show's list. */
	readonly frame: string;
	/** The length of a stick. */
	readonly stick: Length;
	/** What each leg takes of a stick besides its length. */
	readonly saw: Length;
	readonly legs: readonly Leg[];
}

/** A stick and what is sawn from it, the longest leg first. */
export interface CutStick {
	readonly legs: readonly Leg[];
	/** What is left of it. */
	readonly rest: Length;
}

/** How the legs of one moulding are sawn. Plain data. */
export interface StickPlan {
	readonly frame: string;
	readonly stick: Length;
	readonly saw: Length;
	/** The fullest sticks first; those that are sawn alike stand together. */
	readonly sticks: readonly CutStick[];
	/** Legs that no stick gives: longer than it is, with what the saw takes. */
	readonly tooLong: readonly Leg[];
	/** No plan takes fewer sticks than this. */
	readonly leastCount: number;
	/** Whether no plan takes fewer. */
	readonly proven: boolean;
}
