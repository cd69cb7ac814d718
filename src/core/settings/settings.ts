import type { BottomWeight } from '../length/bottomWeight.ts';
import type { Length } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import type { NamedSize, Size } from '../length/size.ts';
import type { Currency } from '../values/money.ts';
import type { Bench } from './bench.ts';
import type { Board, Glazing, Offcut } from './board.ts';
import type { Frame } from './frame.ts';
import type { Hanging } from './hanging.ts';
import type { LabelSheet } from './labelSheet.ts';
import type { LabelContents, Labels } from './labels.ts';
import type { Limits } from './limits.ts';
import type { Paper } from './paper.ts';
import type { Supply } from './supply.ts';
import type { Wall } from './wall.ts';

/** A share of something, exactly: 35 % is 7/20. */
export interface Share {
	readonly numerator: number;
	readonly denominator: number;
}

/** The words that `catalogue.prices` may hold. */
export const cataloguePriceWords = ['shown', 'left out'] as const;

/** What the catalogue says. */
export interface CatalogueSettings {
	readonly prices: (typeof cataloguePriceWords)[number];
}

/** How prints are packed to travel. */
export interface PackingSettings {
	/** The most prints in a box. */
	readonly most: number;
}

/** The settings of a show, read. `readSettings` makes them from what was typed. */
export interface Settings {
	readonly unit: Unit;
	readonly ruler: Length;
	/** Undefined where it is what the show's frame takes, and no frame with a size is named. */
	readonly mountSize: Size | undefined;
	readonly sizes: readonly NamedSize[];
	readonly border: Length;
	readonly leastBorder: Length;
	readonly bottomWeight: BottomWeight;
	readonly overlap: Length;
	/** The reveal asked of every row; undefined where none is. */
	readonly reveal: Length | undefined;
	/** Share of the smaller of side and top, in percent. */
	readonly unevenTolerancePercent: number;
	readonly cuttingTolerance: Length;
	readonly hingeMargin: Length;
	readonly innerBlankSmaller: Length;
	readonly limits: Limits;
	readonly boards: readonly Board[];
	readonly offcuts: readonly Offcut[];
	/** Whether what falls out of windows is stock for smaller mounts, which are then cut later. */
	readonly hasDropOuts: boolean;
	readonly sparesPercent: number;
	readonly undermount: string | undefined;
	readonly glazing: readonly Glazing[];
	/** What lies behind the print in its frame. */
	readonly backing: readonly Board[];
	/** How much smaller than the mount a backing is, on each side. */
	readonly backingSmaller: Length;
	readonly supplies: readonly Supply[];
	/** What prices are in; undefined where the show says none, nor does a price. */
	readonly currency: Currency | undefined;
	readonly frames: readonly Frame[];
	/** The name of the frame that a row has which names none; undefined where each has the first that takes its mount. */
	readonly frame: string | undefined;
	/** How much larger a rebate is than what goes in, in all on each axis. */
	readonly frameClearance: Length;
	/** What a cut of the saw takes of a stick, for each leg of a frame. */
	readonly saw: Length;
	readonly papers: readonly Paper[];
	/** The fewest pixels an inch that a picture should be printed with. */
	readonly pixelsAnInch: number;
	/** How many proofs are printed of each print, besides its copies. */
	readonly proofs: number;
	/** What must be left of a rebate's depth for the points that hold everything in. */
	readonly pointsRoom: Length;
	/** The least spacer that keeps the glazing off a print. */
	readonly leastSpacer: Length;
	readonly bench: Bench;
	readonly labels: Labels;
	readonly labelContents: LabelContents;
	/** The show's own sheets of labels; the usual ones are there besides. */
	readonly labelSheets: readonly LabelSheet[];
	readonly walls: readonly Wall[];
	readonly hanging: Hanging;
	/** Between prints that hang under each other. */
	readonly stackGap: Length;
	/** What the gallery keeps of a price. With the VAT on it, it leaves the maker something. */
	readonly commission: Share;
	/** On the commission. */
	readonly vat: Share;
	/** Prices that are worked out go up to a multiple of this, in minor units; above zero. */
	readonly priceStep: number;
	/** Whether what a print costs is asked for on top of what its maker wants. */
	readonly isCostInPrice: boolean;
	readonly catalogue: CatalogueSettings;
	readonly packing: PackingSettings;
}

/**
 * The settings of a show as typed: the keys of the settings table in README.md, each a text as typed, a number
 * (mm; shares: percent), or a list or record of such. A key that is absent has its default.
 */
export type TypedSettings = Readonly<Record<string, unknown>>;
