import type { Length } from '../length/length.ts';
import type { Size } from '../length/size.ts';

/** The word that says that a row has no frame. */
export const unframed = 'none';

/** The word that says that a mount is as large as its frame takes. */
export const mountOfFrame = 'frame';

/** The word that says that a mount is the show's, beside a named frame too; it is not seen as a size by mistake. */
export const mountOfShow = 'show';

/** A frame that mounts go into. */
export interface Frame {
	readonly name: string;
	/** The size of what it takes, and of its rebate. Undefined: a moulding, made to each mount. */
	readonly size?: { readonly takes: Size; readonly rebate: Size };
	/** How much larger its rebate is than what goes in, in all on each axis. */
	readonly clearance: Length;
	readonly depth?: Length;
	/** How far the frame hides the edge of what goes in. */
	readonly lip?: Length;
	/** Width of the face, lip included. */
	readonly moulding?: Length;
	/** Weight of a metre of moulding, in kg. */
	readonly weightKgPerMetre?: number;
	/** Whole minor units of the show's currency, for a frame, or for one stick of moulding. */
	readonly price?: number;
	/** How many are there: frames, of a moulding sticks. Blank: as many as needed. */
	readonly count?: number;
	/** Length of a stick of moulding as it is sold. */
	readonly stick?: Length;
	/** What comes with it, and is not ordered again. */
	readonly includes?: readonly FrameMaterial[];
}

/** What lies in a frame before and behind the print: cut from sheets as board is, or come with the frame. */
export type FrameMaterial = 'glazing' | 'backing';
