import { formatSize, type Scale } from '../length/formatLength.ts';
import { isSame, type Length } from '../length/length.ts';
import type { FrameMaterial } from '../settings/frame.ts';
import type { BlankPart } from '../show/blank.ts';
import type { CutSheet, PlacedBlank } from '../show/cutSheet.ts';
import { countOf } from '../values/countOf.ts';

/** Pieces of one size that are still to be cut from a board. */
export interface CutListLine {
	/** The longer side: which way round a piece lies is the drawing's matter. */
	readonly width: Length;
	readonly height: Length;
	readonly part: BlankPart;
	/** Each piece, and the sheet that it comes from. */
	readonly pieces: readonly { readonly blank: PlacedBlank; readonly sheet: CutSheet }[];
}

/** A board, glazing or backing with what is still to be cut of it. */
export interface BoardToCut {
	readonly name: string;
	/** Undefined: board. */
	readonly material: FrameMaterial | undefined;
	readonly lines: readonly CutListLine[];
}

/**
 * What is still to be cut from the sheets of a board, by size, the largest first: for who cuts by a list, or has it cut.
 * Ready-cut blanks, spoilt sheets and those with every cut made have nothing to cut.
 */
export function cutListOf(sheets: readonly CutSheet[]): readonly CutListLine[] {
	const lines: { width: Length; height: Length; part: BlankPart; pieces: { blank: PlacedBlank; sheet: CutSheet }[] }[] =
		[];
	for (const sheet of sheets) {
		if (sheet.isSpoilt || sheet.made.length === sheet.cuts.length) continue;
		for (const blank of sheet.blanks) {
			const [width, height] = blank.width < blank.height ? [blank.height, blank.width] : [blank.width, blank.height];
			const line = lines.find(
				(each) => each.part === blank.part && isSame(each.width, width) && isSame(each.height, height),
			);
			if (line) line.pieces.push({ blank, sheet });
			else lines.push({ width, height, part: blank.part, pieces: [{ blank, sheet }] });
		}
	}
	return lines.sort((a, b) => b.width - a.width || b.height - a.height);
}

/** A line in words: "700 × 550 mm, glazing: 17 pieces". */
export const cutListWords = ({ width, height, part, pieces }: CutListLine, scale: Scale): string =>
	`${formatSize(width, height, scale)}, ${part}: ${countOf(pieces.length, 'piece')}`;
