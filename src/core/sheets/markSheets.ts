import type { CutSheet } from '../show/cutSheet.ts';
import type { Edit } from '../show/edit.ts';
import { type ItemDiff, itemDiff } from '../show/keyedList.ts';
import type { Show } from '../show/show.ts';
import type { Layout } from './layout.ts';

/** A planned layout as a sheet that the knife begins; none of its cuts is made yet. */
export const beginSheet = ({ stock, blanks, cuts, offcuts }: Layout, id: string): CutSheet => ({
	id,
	stock,
	blanks,
	cuts,
	offcuts,
	made: [],
	isSpoilt: false,
});

const editOf = (label: string, cutSheets: readonly ItemDiff<CutSheet>[]): Edit => ({ label, rows: [], cutSheets });
const inShow = ({ cutSheets = [] }: Show, { id }: CutSheet) => cutSheets.find((sheet) => sheet.id === id);
const allOf = ({ cuts }: CutSheet) => cuts.map((_, place) => place);

/** Marks sheets as cut: they stay as they are. */
export const markCut = (show: Show, sheets: readonly CutSheet[], label: string): Edit =>
	editOf(
		label,
		sheets.map((sheet) => itemDiff(inShow(show, sheet), { ...sheet, made: allOf(sheet) })),
	);

/** Hands sheets back to the plan, as if the knife had never begun them. */
export const handBack = (show: Show, sheets: readonly CutSheet[], label: string): Edit =>
	editOf(
		label,
		sheets.map((sheet) => itemDiff(inShow(show, sheet), undefined)),
	);

/** Counts a sheet as spoilt: it is used up, and what it was to give is planned again. */
export const spoilSheet = (show: Show, sheet: CutSheet, label: string): Edit =>
	editOf(label, [itemDiff(inShow(show, sheet), { ...sheet, isSpoilt: true })]);

/** Cuts of one sheet. */
export interface CutsOfSheet {
	readonly sheet: CutSheet;
	/** Their places in its cuts, from 0. */
	readonly places: readonly number[];
}

/** Ticks knife cuts off as made, or removes the ticks; a sheet on which no cut is left made is handed back to the plan. */
export function tickKnife(show: Show, cuts: readonly CutsOfSheet[], isMade: boolean, label: string): Edit {
	const diffs = cuts.flatMap(({ sheet, places }): ItemDiff<CutSheet>[] => {
		const before = inShow(show, sheet);
		const own = before ?? sheet;
		const others = own.made.filter((place) => !places.includes(place));
		const made = isMade ? [...others, ...places].sort((a, b) => a - b) : others;
		if (!isMade && before === undefined) return [];
		return [itemDiff(before, made.length > 0 ? { ...own, made } : undefined)];
	});
	return editOf(label, diffs);
}
