import { type Length, plus, times } from '../length/length.ts';
import type { LabelSheet } from '../settings/labelSheet.ts';

/** Where a label lies on its page: its upper left corner, exactly. */
export interface LabelPlace {
	readonly left: Length;
	readonly top: Length;
}

/** How many labels a sheet has. */
export const labelsOnSheet = ({ columns, rows }: LabelSheet): number => columns * rows;

/**
 * Where a label lies.
 * @param place from 0, along the rows of the sheet, from its top
 */
export function labelPlace(
	{ columns, width, height, left, top, gapAcross, gapDown }: LabelSheet,
	place: number,
): LabelPlace {
	const [row, column] = [Math.floor(place / columns), place % columns];
	return {
		left: plus(left, times(plus(width, gapAcross), column)),
		top: plus(top, times(plus(height, gapDown), row)),
	};
}

/** The first label to print on, from 1: what was chosen, as far as the sheet has so many. */
export const startOn = (sheet: LabelSheet, start: number): number =>
	Number.isSafeInteger(start) && start >= 1 && start <= labelsOnSheet(sheet) ? start : 1;

/**
 * Labels on sheets.
 * @param start the first label of the first sheet that is free, from 1
 * @returns a sheet each: by the label's place, from 0; a label that is left free is undefined
 */
export function onLabelSheets<Item>(
	items: readonly Item[],
	sheet: LabelSheet,
	start: number,
): readonly (readonly (Item | undefined)[])[] {
	if (items.length === 0) return [];
	const all: readonly (Item | undefined)[] = [
		...Array.from({ length: startOn(sheet, start) - 1 }, () => undefined),
		...items,
	];
	const each = labelsOnSheet(sheet);
	return Array.from({ length: Math.ceil(all.length / each) }, (_, page) => all.slice(page * each, (page + 1) * each));
}
