import type { BottomWeight } from '../length/bottomWeight.ts';
import type { Length } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import type { NamedSize, Size } from '../length/size.ts';
import type { Currency } from '../values/money.ts';
import type { Paper as PageFormat } from '../values/papers.ts';

/** What the show's rules allow; each is asked only where given. Sizes hold either way round. */
export interface Limits {
	readonly largest?: Size;
	readonly smallest?: Size;
	readonly exact?: Size;
	/** How far a mount may be from `exact`, on each side. Blank: not at all (1 µm). */
	readonly within?: Length;
	/** Minimum picture area, in mm². */
	readonly pictureAreaMm2?: number;
	/** Greatest thickness of mounts, print and undermount. */
	readonly thickness?: Length;
}

/** A sheet of board, or a ready-cut blank, that can be bought or is there. */
export interface Board {
	readonly name: string;
	readonly kind: 'sheet' | 'blank';
	readonly width: Length;
	readonly height: Length;
	readonly thickness?: Length;
	/** Weight of a square metre of 1 mm, in kg. */
	readonly density?: number;
	/** In words, to know it by in the rack; nothing is worked out from it. */
	readonly colour?: string;
	/** Whole minor units of the show's currency, for one pack. */
	readonly price?: number;
	readonly pack?: number;
	readonly count?: number;
	/** Whether the long side of a blank must lie along the grain; blank: it may be turned. */
	readonly grain?: 'width' | 'height';
	readonly trim?: Length;
}

/** The words that `surface` may hold. */
export const surfaceWords = [
	'gloss',
	'resin-coated',
	'lustre',
	'baryta',
	'satin',
	'matt',
	'fine art',
	'pastel',
	'charcoal',
] as const;

/** The words that `material` of a glazing may hold. */
export const glazingMaterials = ['glass', 'acrylic'] as const;

/** What glazing is made of. */
export type GlazingMaterial = (typeof glazingMaterials)[number];

/** A sheet of glass or acrylic, or a piece bought ready cut. It has no grain. */
export interface Glazing extends Board {
	readonly material: GlazingMaterial;
}

/** The words that `kind` of a supply may hold. */
export const supplyKinds = ['spacer', 'tape', 'cord', 'rings', 'bumpers', 'hinges', 'labels'] as const;

/** What kind of supply it is. */
export type SupplyKind = (typeof supplyKinds)[number];

/** The kinds that are got by length: what one print needs, a pack and what is there are lengths. */
export const suppliesByLength: readonly SupplyKind[] = ['spacer', 'tape', 'cord'];

/** What is used up with each print. Amounts are pieces, or a `Length` for what is got by length. */
export interface Supply {
	readonly kind: SupplyKind;
	readonly name: string;
	/** What one print needs of it. Blank: the figure of common practice. */
	readonly each?: number;
	/** Whole minor units of the show's currency, for one pack. */
	readonly price?: number;
	/** Blank: one piece, or one metre. */
	readonly pack?: number;
	/** What is there. Blank: nothing. */
	readonly count?: number;
}

/** Offcuts of one size kept from earlier: there already, at no price. */
export interface Offcut {
	/** The name of the board that they are of. */
	readonly board: string;
	readonly width: Length;
	readonly height: Length;
	/** How many there are. Blank: one. */
	readonly count?: number;
	/** The side that the grain runs along; blank: none, blanks may be turned. */
	readonly grain?: 'width' | 'height';
}

/** The word that says that a row has no frame. */
export const unframed = 'none';

/** The word that says that a mount is as large as its frame takes. */
export const mountOfFrame = 'frame';

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

/** A paper to print on: sheets of one size, or a roll. */
export interface Paper {
	readonly name: string;
	/** Of a sheet, or across a roll. */
	readonly width: Length;
	/** Of a sheet; undefined for a roll, which is cut as long as the picture asks. */
	readonly height?: Length;
	/** Length of the roll; undefined for sheets. */
	readonly roll?: Length;
	/** What the printer leaves blank on each side: zero prints to the edge. */
	readonly margin: Length;
	/** In words, as in the rows' cells. */
	readonly surface?: (typeof surfaceWords)[number];
	/** Whole minor units of the show's currency, for a pack or a roll. */
	readonly price?: number;
	readonly pack?: number;
	readonly count?: number;
}

/** What is in the way on a wall: a door, a window, a radiator. Lengths as seen from the room. */
export interface Obstacle {
	readonly name: string;
	/** From the wall's left edge. */
	readonly left: Length;
	/** Above the floor. */
	readonly bottom: Length;
	readonly width: Length;
	/** Undefined: up to the ceiling. */
	readonly height: Length | undefined;
}

/** A wall to hang prints on. */
export interface Wall {
	readonly name: string;
	readonly length: Length;
	/** Undefined where it is not known: then nothing is too high. */
	readonly height: Length | undefined;
	/** The line that the middles of the prints hang on, above the floor. */
	readonly centre: Length;
	/** Between two prints. Undefined: what makes all gaps, and the ends, alike. */
	readonly gap: Length | undefined;
	readonly obstacles: readonly Obstacle[];
}

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

/** The words that `labels.name` may hold. */
export const labelNameWords = ['free', 'required', 'forbidden'] as const;
/** The words that `labels.corner` may hold, as seen from the back. */
export const labelCornerWords = ['top left', 'top right', 'bottom left', 'bottom right'] as const;

/** The words that `labelContents.back` may hold: what stands on a label on the back, in the order in which it stands there. */
export const backLabelWords = [
	...(['this way up', 'title', 'maker', 'medium', 'year', 'size', 'number', 'edition', 'price'] as const),
] as const;
/** The words that `labelContents.wall` may hold: which way up does not matter there. */
export const wallLabelWords = [
	...(['title', 'maker', 'medium', 'year', 'size', 'number', 'edition', 'price'] as const),
] as const;

/** Something that may stand on a label. */
export type LabelWord = (typeof backLabelWords)[number];

/** What the show's rules ask of the labels on the back. */
export interface Labels {
	/** Whether the maker's name must, may or must not stand on the back. */
	readonly name: (typeof labelNameWords)[number];
	/** The corner of the label; undefined where any will do. */
	readonly corner: (typeof labelCornerWords)[number] | undefined;
}

/** What was chosen to stand on labels; the rules of the show may add the maker's name on the back, or take it off. */
export interface LabelContents {
	readonly back: readonly LabelWord[];
	/** On the wall, beside the print. */
	readonly wall: readonly LabelWord[];
}

/** A sheet of labels by its measures, as seen on the page. */
export interface LabelSheet {
	readonly name: string;
	readonly paper: PageFormat;
	/** Of a label. */
	readonly width: Length;
	readonly height: Length;
	/** Labels beside each other. */
	readonly columns: number;
	/** Labels under each other. */
	readonly rows: number;
	/** From the page's left edge to the first label. */
	readonly left: Length;
	/** From the page's top edge to the first label. */
	readonly top: Length;
	readonly gapAcross: Length;
	readonly gapDown: Length;
}

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
