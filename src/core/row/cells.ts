import type { BottomWeight } from '../length/bottomWeight.ts';
import type { Length } from '../length/length.ts';
import type { Pixels } from '../length/parsePixels.ts';
import type { Size } from '../length/size.ts';
import type { PaperEdge } from '../settings/paper.ts';

/** Width to height, as a fraction in lowest terms or not: 3:2 is 3/2. Both whole and above zero. */
export interface Shape {
	readonly numerator: number;
	readonly denominator: number;
}

/**
 * What the mount cell says: nothing (the show's size), cut to suit the borders, no mount, or a size of its own. `frame` is
 * the size that the row's frame takes; where no frame with a size is named, it counts as nothing. A name of a size has no
 * lengths of its own.
 */
export type MountCell =
	| { readonly kind: 'show'; readonly lacksFrame?: true }
	| { readonly kind: 'fit' }
	| { readonly kind: 'none' }
	| { readonly kind: 'size'; readonly size: Size; readonly isOfFrame?: true; readonly isNamed?: true };

/** Whether a row has a mount, as its cells say. */
// oxlint-disable-next-line house/ask-has-mount -- it is asked here, and nowhere else
export const hasMount = ({ mount }: Pick<Cells, 'mount'>): boolean => mount.kind !== 'none';

/** What the paper cell says: a sheet by its size, or a sheet or a roll of the show's list. */
export interface PaperCell {
	/** Of a sheet, or across a roll. */
	readonly width: Length;
	/** Undefined for a roll. */
	readonly height: Length | undefined;
	/** The length of a roll. */
	readonly roll: Length | undefined;
	/** What the printer leaves blank on each side: nothing, where the show does not say. */
	readonly margin: Length;
	/** Straight, where the show does not say. */
	readonly edge: PaperEdge;
	/** The name in the show's list; undefined where the size is typed. */
	readonly listed: string | undefined;
	/** Whether a name stands for the size of a sheet that is not listed: `A3`. */
	readonly isNamed?: true;
}

/** The sizes and borders that a row may type or work out. */
export const sizeKeys = [
	'mountWidth',
	'mountHeight',
	'windowWidth',
	'windowHeight',
	'pictureWidth',
	'pictureHeight',
	'side',
	'top',
	'bottom',
] as const;

/** A size or border of a row. */
export type SizeKey = (typeof sizeKeys)[number];

/** The sizes and borders that were typed and could be read. */
export type TypedSizes = { readonly [Key in SizeKey]: Length | undefined };

/** The cells of figures, read; undefined where blank. */
export interface Cells extends TypedSizes {
	readonly mount: MountCell;
	/** As typed, else by the pixels of its file. */
	readonly shape: Shape | undefined;
	/** Whether the shape is that of the file, for none is typed. */
	readonly isShapeOfFile: boolean;
	/** Of the picture's file. */
	readonly pixels: Pixels | undefined;
	readonly bottomWeight: BottomWeight | undefined;
	/** Per side. */
	readonly overlap: Length | undefined;
	/** Per side; zero counts as blank, and cancels the show's. */
	readonly reveal: Length | undefined;
	readonly signingSpace: Length | undefined;
	/** How far an inner mount shows inside the window, per side. */
	readonly innerMount: Length | undefined;
	readonly paper: PaperCell | undefined;
	/** From the paper's edge to the picture's; blank: the picture lies in the middle. */
	readonly marginLeft: Length | undefined;
	readonly marginTop: Length | undefined;
	/** From the wall's left edge to the framed print's, seen from the room. */
	readonly hangLeft: Length | undefined;
	/** Of its middle above the floor. */
	readonly hangCentre: Length | undefined;
	/** From the frame's top to the hook, cord pulled up. */
	readonly drop: Length | undefined;
	/** Whether there is no window: the paper itself is seen, on a board. */
	readonly isFloat: boolean;
	/** How far a spacer keeps the glazing off the print. */
	readonly spacer: Length | undefined;
}

/** A row in which nothing was typed. */
export const blankCells: Cells = {
	mountWidth: undefined,
	mountHeight: undefined,
	windowWidth: undefined,
	windowHeight: undefined,
	pictureWidth: undefined,
	pictureHeight: undefined,
	side: undefined,
	top: undefined,
	bottom: undefined,
	mount: { kind: 'show' },
	shape: undefined,
	isShapeOfFile: false,
	pixels: undefined,
	bottomWeight: undefined,
	overlap: undefined,
	reveal: undefined,
	signingSpace: undefined,
	innerMount: undefined,
	paper: undefined,
	marginLeft: undefined,
	marginTop: undefined,
	hangLeft: undefined,
	hangCentre: undefined,
	drop: undefined,
	isFloat: false,
	spacer: undefined,
};
