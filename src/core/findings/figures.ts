import type { BlankPart } from '../show/blank.ts';
import type { ColumnName } from '../show/columns.ts';
import type {
	Area,
	Axis,
	BorderKey,
	Borders,
	Columns,
	Count,
	Measure,
	OtherPrint,
	Said,
	Share,
	Sides,
	Usual,
	Weight,
} from './measure.ts';

/** An edge of a sheet of paper, as it is printed. */
export type PaperEdge = 'left' | 'right' | 'top' | 'bottom';

/** What the stack in a frame is of. */
export type StackWord = 'glazing' | 'spacer' | 'mount' | 'mounts' | 'print' | 'undermount' | 'backing';

/** What goes into a frame. */
export type InFrame = 'mount' | 'paper' | 'picture';

/** A border that is cut: the mount's, or the inner mount's. */
export interface CutBorder {
	readonly of: 'mount' | 'inner mount';
	readonly border: BorderKey;
	readonly length: Measure;
	/** What the guide would be set to, where a correction makes it another length. */
	readonly setting?: Measure;
}

/** How a length may have been meant. */
export type SlipWord = 'cm' | 'mm' | 'inches' | 'ten times' | 'a tenth' | '25.4 times' | 'the 25.4th part';

/** Typed lengths of one column, two for a size. */
export interface TypedLengths {
	readonly column: ColumnName;
	readonly lengths: readonly Measure[];
}

/** What each finding found: lengths, shares, counts and names, of which its sentence is made. */
export interface FiguresByCode {
	readonly 'not-read': { readonly column: ColumnName; readonly problem: string };
	readonly 'adds-up':
		| { readonly kind: 'mount cell'; readonly axis: Axis; readonly mount: Measure; readonly named: Measure }
		| {
				readonly kind: 'cover';
				readonly axis: Axis;
				readonly picture: Measure;
				readonly asked: Measure;
				readonly overlap?: Measure | undefined;
				readonly reveal?: Measure | undefined;
				readonly signingSpace?: Measure | undefined;
				readonly window: Measure;
				readonly more: Measure;
		  }
		| {
				readonly kind: 'sum';
				readonly parts: readonly Measure[];
				readonly total: Measure;
				readonly more: Measure;
				readonly mount: Measure;
		  }
		| { readonly kind: 'all typed'; readonly axis: Axis };
	readonly 'does-not-fit':
		| { readonly kind: 'too large'; readonly axis: Axis; readonly most: Measure }
		| { readonly kind: 'all covered'; readonly axis: Axis; readonly picture: Measure; readonly covered: Measure }
		| {
				readonly kind: 'window too large';
				readonly axis: Axis;
				/** Of a float, its paper. */
				readonly of: 'window' | 'paper';
				readonly window: Measure;
				readonly larger: Measure;
				readonly mount: Measure;
		  }
		| {
				readonly kind: 'no window';
				readonly axis: Axis;
				readonly of: 'window' | 'paper';
				readonly borders: readonly [Measure, Measure];
				readonly left: Measure;
				readonly mount: Measure;
		  }
		| {
				readonly kind: 'no border';
				readonly axis: Axis;
				readonly of: 'window' | 'paper';
				readonly border: Measure;
				readonly window: Measure;
				readonly both: Measure;
				readonly mount: Measure;
				readonly left: Measure;
		  }
		| { readonly kind: 'other axis'; readonly axis: Axis; readonly other: Axis }
		| { readonly kind: 'all reveal'; readonly axis: Axis; readonly picture: Measure; readonly window: Measure }
		| { readonly kind: 'window below nothing'; readonly axis: Axis; readonly window: Measure }
		| { readonly kind: 'ruler'; readonly axis: Axis; readonly ruler: Measure; readonly mount: Measure };
	readonly 'falls-through': {
		readonly axis: Axis;
		readonly window: Measure;
		readonly larger: Measure;
		readonly paper: Measure;
	};
	readonly 'paper-short':
		| {
				readonly kind: 'smaller';
				readonly axis: Axis;
				readonly paper: Sides;
				readonly short: Measure;
				readonly picture: Measure;
		  }
		| { readonly kind: 'past the edge'; readonly edge: PaperEdge; readonly past: Measure }
		| { readonly kind: 'hardly held'; readonly at: BorderKey; readonly reaches: Measure; readonly held: Usual };
	readonly 'over-limit': MountLimit;
	readonly 'under-limit': MountLimit | { readonly kind: 'picture area'; readonly area: Area; readonly least: Area };
	readonly 'too-thick': {
		readonly what: readonly StackWord[];
		readonly parts: readonly Measure[];
		readonly total: Measure;
		readonly most: Measure;
	};
	readonly 'frame-clash':
		| { readonly kind: 'not listed'; readonly frame: string }
		| (InRebate & { readonly kind: 'too large'; readonly over: Measure; readonly rebate: Measure })
		| (InRebate & { readonly kind: 'gap'; readonly play: Measure; readonly lip: Measure })
		| (InRebate & {
				readonly kind: 'unusual play';
				readonly play: Measure;
				readonly least: Usual;
				readonly most: Usual;
		  });
	readonly 'too-deep': {
		readonly what: readonly StackWord[];
		readonly parts: readonly Measure[];
		readonly total: Measure;
		readonly depth: Measure;
		/** What is left of the depth; below zero where it is deeper. */
		readonly left: Measure;
		/** The room that points need, where that is what is missing. */
		readonly points?: Measure | undefined;
	};
	readonly 'no-board':
		| { readonly kind: 'not in stock'; readonly board: string; readonly part: BlankPart }
		| { readonly kind: 'too small'; readonly board: string; readonly part: BlankPart; readonly blank: Sides }
		| { readonly kind: 'inner blank'; readonly smaller: Measure; readonly behind: Borders };
	readonly 'touches-glass':
		| {
				readonly kind: 'nothing between';
				readonly glazing: string;
				readonly surface?: string | undefined;
				readonly mounting?: 'float';
		  }
		| { readonly kind: 'loose'; readonly surface: string }
		| {
				readonly kind: 'thin spacer';
				readonly glazing: string;
				readonly spacer: Measure;
				readonly least: Measure | Usual;
				/** The side over which a spacer has to be so thick. */
				readonly over?: Usual | undefined;
		  };
	readonly 'edition-clash':
		| { readonly kind: 'no such number'; readonly edition: string; readonly number: string; readonly size: string }
		| { readonly kind: 'copies'; readonly edition: string; readonly copies: Count }
		| {
				readonly kind: 'again';
				readonly edition: string;
				readonly title: string;
				readonly times: Count;
				readonly rows: readonly Count[];
		  };
	readonly 'needs-size':
		/** The mount that counts instead; undefined where there is none either. */
		| { readonly kind: 'no frame'; readonly mount?: Sides | undefined }
		| {
				readonly kind: 'open';
				readonly open: readonly Axis[];
				readonly or: 'shape' | 'window' | 'window or mount' | 'any';
		  }
		| {
				readonly kind: 'left by the mount';
				readonly size?: Sides | undefined;
				readonly side?: Measure | undefined;
				readonly blank: Columns;
		  };
	readonly 'needs-paper':
		| { readonly kind: 'float' }
		| { readonly kind: 'both'; readonly window: Sides; readonly picture: Sides }
		| { readonly kind: 'one'; readonly axis: Axis; readonly window: Measure; readonly picture: Measure };
	readonly 'own-size': {
		readonly mount: { readonly [Side in Axis]: Measure | undefined };
		readonly shows: Sides;
		readonly clear?: Columns | undefined;
		readonly typed?: Columns | undefined;
	};
	readonly 'shape-clash': {
		readonly picture: Sides;
		readonly shape: string;
		readonly lost: Share;
		readonly axis: Axis;
		readonly by: 'picture' | 'window';
	};
	readonly turned: { readonly picture: Sides; readonly mount: Sides };
	readonly uneven: {
		readonly side: Measure;
		readonly top: Measure;
		readonly difference: Measure;
		readonly share: Share;
		readonly allowed: Share;
	};
	readonly 'thin-border': { readonly borders: Borders; readonly least: Measure };
	readonly 'lip-shrinks': {
		readonly frame: string;
		readonly seen: readonly { readonly border: BorderKey; readonly shows: Measure; readonly length: Measure }[];
		readonly least: Measure;
	};
	readonly 'top-heavy': { readonly bottom: Measure; readonly narrower: Measure; readonly top: Measure };
	readonly 'bottom-heavy': { readonly bottom: Measure; readonly wider: Measure; readonly top: Measure };
	readonly 'weight-lost': {
		readonly bottom: Measure;
		readonly top: Measure;
		/** Bottom less top. */
		readonly over: Measure;
		readonly asked: Measure;
	};
	readonly 'bare-paper': {
		readonly axis: Axis;
		readonly window: Measure;
		readonly picture: Measure;
		readonly bare: Measure;
	};
	readonly 'thin-overlap': {
		readonly at: 'side' | 'top' | 'top and bottom';
		readonly covered: Measure;
		readonly tolerance: Measure;
	};
	readonly 'paper-crowds': { readonly at: BorderKey; readonly from: Measure; readonly margin: Measure };
	readonly 'paper-margin':
		| { readonly kind: 'too large'; readonly axis: Axis; readonly picture: Measure; readonly printable: Measure }
		| { readonly kind: 'margin'; readonly edge: PaperEdge; readonly margin: Measure; readonly least: Measure };
	readonly 'paper-bounds': { readonly holds: Sides; readonly takes: Sides };
	readonly 'no-frame':
		| { readonly kind: 'too few'; readonly frame: string; readonly wanted: Count; readonly there: Count }
		| { readonly kind: 'too few sticks'; readonly frame: string; readonly wanted: Count; readonly there: Count }
		| { readonly kind: 'short stick'; readonly frame: string; readonly leg: Measure; readonly stick: Measure };
	readonly heavy: {
		/** What it weighs, and what is for two people to lift, where it is over that. */
		readonly weight?: Weight | undefined;
		readonly most?: Weight | undefined;
		/** What the fixing has to hold, with what is asked for safety, and what it is rated for; where that is too little. */
		readonly load?: Weight | undefined;
		readonly factor?: Count | undefined;
		readonly rating?: Weight | undefined;
		/** How far the hook of a flat cord is below its rings, or not above them: its pull is over every rating. */
		readonly below?: Measure | undefined;
	};
	readonly 'off-wall': {
		readonly wall: Said;
		readonly past: Measure;
		/** What it is past: the end of the wall, its left one, or the end of the part of it that is free. */
		readonly kind: 'wall' | 'left' | 'part';
	};
	/** All that it hangs over: a look that is accepted is accepted of each. */
	readonly 'hangs-over': { readonly wall: Said; readonly overlaps: readonly OverlapFigures[] };
	readonly 'past-guide':
		| { readonly kind: 'below nothing'; readonly cuts: readonly CutBorder[]; readonly setting: Measure }
		| {
				readonly kind: 'out of range';
				readonly cuts: readonly CutBorder[];
				readonly least?: Measure | undefined;
				readonly greatest?: Measure | undefined;
		  };
	readonly 'signature-covered': { readonly covered: Measure };
	readonly 'signed-on-mount': object;
	readonly 'low-resolution': {
		readonly picture: Sides;
		/** At that size, of what of the file is printed. */
		readonly pixelsAnInch: Count;
		readonly least: Count;
	};
	readonly crops: {
		/** The file's, as typed. */
		readonly pixels: string;
		readonly shape: string;
		readonly lost: Share;
		readonly axis: Axis;
	};
	readonly 'off-ruler': { readonly borders: Borders; readonly ruler: Measure };
	readonly 'unit-slip': {
		readonly typed: readonly TypedLengths[];
		readonly readings: readonly { readonly as: SlipWord; readonly lengths: readonly (readonly Measure[])[] }[];
		readonly outcome: 'fits' | 'nearly fits';
	};
}

/** What can be found in a row. */
export type Code = keyof FiguresByCode;

/** What a print hangs over on its wall, and by how much. */
export type OverlapFigures =
	| { readonly kind: 'print'; readonly other: OtherPrint; readonly by: Measure }
	| { readonly kind: 'obstacle'; readonly other: Said; readonly by: Measure }
	| { readonly kind: 'floor'; readonly under: Measure }
	| { readonly kind: 'top'; readonly over: Measure; readonly height: Measure };

interface MountLimit {
	readonly kind: 'largest' | 'smallest' | 'exact';
	readonly mount: Sides;
	readonly limit: Sides;
	readonly within?: Measure | undefined;
}

interface InRebate {
	readonly what: InFrame;
	readonly axis: Axis;
	readonly inside: Measure;
	readonly frame: string;
}
