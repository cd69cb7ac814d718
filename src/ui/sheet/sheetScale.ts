/** Pixels beyond the left and the top edge, for numbers of cuts that lie on them. */
const beyond = 11;
/** Height of letters on the page, in pixels: as large as in any text; at the bench, read from farther away. */
const [usual, atBench] = [13, 18];
/** Room for the measure beside the sheet, where it stands upright too, in pixels. */
const besideOf = (heightText: string) => heightText.length * 8.5 + 6;
/** How much of a drawing's width is not the sheet, in pixels. */
export const marginOf = (heightText: string): number => beyond + besideOf(heightText);

/** What a drawing of a sheet has room in. */
export interface SheetRoom {
	/** Of the drawing on the page, in pixels; 0 before it is there. */
	readonly shownWidth: number;
	readonly shownHeight: number;
	/** Of the sheet, in millimetres. */
	readonly width: number;
	readonly height: number;
	/** Whether it fills the height that it is given too. */
	readonly isFitted: boolean;
	/** Its height in words. */
	readonly heightText: string;
	/** How many measures stand under the sheet, and how many beside it. */
	readonly under: number;
	readonly beside: number;
}

/** How large a sheet is drawn: all in millimetres on the sheet. */
export interface SheetScale {
	/** Height of its letters. */
	readonly letter: number;
	/** Room for a measure under the sheet, and for one beside it. */
	readonly row: number;
	readonly column: number;
	/** Room for numbers that lie on the left and the top edge. */
	readonly beyond: number;
}

/** How large a sheet is drawn in the room that it has. */
export function sheetScale(room: SheetRoom): SheetScale {
	const { shownWidth, shownHeight, width, height, isFitted, heightText } = room;
	const isLarge = isFitted && Math.min(shownWidth - 100, ((shownHeight - 70) * width) / height) >= 360;
	const letters = isLarge ? atBench : usual;
	const row = letters * 1.6;
	const column = (besideOf(heightText) * letters) / usual;
	// For a moment, or under large letters, there may be no room at all: drawn anyway, as a speck.
	const pixelsPerMm = Math.max(
		1 / width,
		Math.min(
			((shownWidth || 400) - beyond - column * room.beside) / width,
			isFitted && shownHeight ? (shownHeight - beyond - row * room.under) / height : Infinity,
		),
	);
	return {
		letter: letters / pixelsPerMm,
		row: row / pixelsPerMm,
		column: column / pixelsPerMm,
		beyond: beyond / pixelsPerMm,
	};
}
