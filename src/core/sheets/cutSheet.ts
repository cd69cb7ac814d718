import type { KnifeCut, Layout, PlacedBlank, Rectangle } from './layout.ts';
import type { Stock } from './stock.ts';

/**
 * A sheet that the knife has begun: it stays as it was planned, and the rest is planned round it. Plain data, kept in
 * the show.
 */
export interface CutSheet {
	/** Names it within its show. */
	readonly id: string;
	readonly stock: Stock;
	/** The places of the rows in the show (`row`) are those of when it was begun; `rowId` tells whose they are. */
	readonly blanks: readonly PlacedBlank[];
	readonly cuts: readonly KnifeCut[];
	readonly offcuts: readonly Rectangle[];
	/** Places in `cuts`, from 0, of those that are made, ascending. */
	readonly made: readonly number[];
	/** Whether it is spoilt: it is used up, and gives nothing. */
	readonly isSpoilt: boolean;
}

/** What an edit does to one cut sheet: adds it (no `before`), takes it off (no `after`) or changes it. */
export interface CutSheetDiff {
	readonly before?: CutSheet;
	readonly after?: CutSheet;
}

/** The sheet that a diff is about. */
export const sheetIdOf = ({ before, after }: CutSheetDiff): string => (before ?? after)!.id;

/** Whether every cut of a sheet is made; a ready-cut blank has none. */
export const isWholeCut = ({ cuts, made }: CutSheet): boolean => made.length === cuts.length;

/** A sheet as it is planned round; a spoilt one gives neither blanks nor offcuts. */
export const layoutOf = ({ stock, blanks, cuts, offcuts, isSpoilt }: CutSheet, place: number): Layout => ({
	stock,
	pattern: place + 1,
	blanks: isSpoilt ? [] : blanks,
	cuts,
	offcuts: isSpoilt ? [] : offcuts,
	isCut: true,
});

/** Cut sheets after some diffs. */
export function withCutSheets(sheets: readonly CutSheet[], diffs: readonly CutSheetDiff[]): readonly CutSheet[] {
	const after = new Map(sheets.map((sheet) => [sheet.id, sheet]));
	for (const diff of diffs) {
		if (diff.after) after.set(diff.after.id, diff.after);
		else after.delete(sheetIdOf(diff));
	}
	return [...after.values()];
}

/** The diffs of two edits, the second made on what the first left, as those of one. */
export function composeCutSheets(
	first: readonly CutSheetDiff[],
	second: readonly CutSheetDiff[],
): readonly CutSheetDiff[] {
	const diffs = new Map(first.map((diff) => [sheetIdOf(diff), diff]));
	for (const diff of second)
		diffs.set(sheetIdOf(diff), diffOf((diffs.get(sheetIdOf(diff)) ?? diff).before, diff.after));
	return [...diffs.values()].filter(({ before, after }) => before ?? after);
}

/** Diffs as they would work on these sheets now, so that their inverse gives exactly these back. */
export function rebaseCutSheets(diffs: readonly CutSheetDiff[], sheets: readonly CutSheet[]): readonly CutSheetDiff[] {
	const known = new Map(sheets.map((sheet) => [sheet.id, sheet]));
	return diffs
		.map((diff) => diffOf(known.get(sheetIdOf(diff)), diff.after))
		.filter(({ before, after }) => before ?? after);
}

/** A diff without what is absent in it. */
export const diffOf = (before: CutSheet | undefined, after: CutSheet | undefined): CutSheetDiff => ({
	...(before && { before }),
	...(after && { after }),
});
