import type { Size } from '../length/size.ts';
import type { Cells } from './cells.ts';
import type { Cover } from './cover.ts';
import type { Values } from './equations.ts';
import type { MountSource } from './applyRules.ts';
import type { Printable } from './paper.ts';
import type { SolvedRow } from './solvedRow.ts';

/**
 * How an axis came out: it fits; its typed cells cannot all be true; a size or border of it comes out at zero or less;
 * or something is missing.
 */
export type AxisOutcome = 'fits' | 'conflict' | 'does not fit' | 'open';

/** How the paper bounds a picture. */
export interface PaperBound {
	/** The sides that the printable size settles. */
	readonly sides: readonly ('width' | 'height')[];
	readonly printable: Printable;
	/** The picture that the mount would take. */
	readonly unbound: Size;
	/** Whether the height is that of `unbound` because it would have grown as the width shrank. */
	readonly isHeightHeld: boolean;
}

/** A row worked out, with what its findings and its reasons need to know. */
export interface Solution {
	readonly solved: SolvedRow;
	readonly width: AxisOutcome;
	readonly height: AxisOutcome;
	readonly mountSource: MountSource;
	readonly cover: Cover;
	/** The border that the row started from, not rounded. */
	readonly border: number;
	/** Typed sizes with the named mount among them, not rounded; NaN where blank. */
	readonly typed: Values;
	/** What came out before the ruler, or would if there were room for anything; NaN where not known. */
	readonly exact: Values;
	/** The weight that was kept; undefined where none agreed. */
	readonly weight: { readonly times: number; readonly more: number } | undefined;
	readonly isShapeKept: boolean | undefined;
	/** The cells without those that say what the row shows anyway and settle nothing; undefined where there are none. */
	readonly counting?: Cells;
	/** Where the paper keeps the picture smaller than the mount would have it. */
	readonly boundByPaper?: PaperBound;
}
