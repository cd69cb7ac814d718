import type { FrameMaterial } from '../core/settings/frame.ts';
import { stockKey } from '../core/stock/stock.ts';
import { groupBy } from '../core/values/groupBy.ts';
import type { CutSheet } from '../core/show/cutSheet.ts';
import { type BoardToCut, cutListOf } from '../core/sheets/cutList.ts';
import type { PackingJob } from '../core/sheets/packingJob.ts';
import type { PlannedBoard } from '../core/sheets/plannedSheets.ts';

/** A sheet and its number among those of its board, from 1. */
export interface NumberedSheet {
	readonly sheet: CutSheet;
	readonly number: number;
}

/** A board as the screens show it. */
export interface BoardInView {
	/** Names it among all of them. */
	readonly key: string;
	readonly name: string;
	/** What it is of; undefined: board. */
	readonly material: FrameMaterial | undefined;
	/** Undefined while its first plan is worked out. */
	readonly planned: PlannedBoard | undefined;
	/** All its sheets: those cut from an earlier plan, then those of this one, begun or not. */
	readonly sheets: readonly NumberedSheet[];
	/** Sheets that the knife has not begun, those cut alike together. */
	readonly toCut: readonly (readonly NumberedSheet[])[];
	/** Sheets that it has. */
	readonly cut: readonly NumberedSheet[];
}

/** The boards with their plans and what has become of them: a sheet of a plan that has been begun is cut, not to cut. */
export function boardsInView(
	boards: readonly (PlannedBoard | { readonly job: PackingJob })[],
	cutSheets: readonly CutSheet[],
): readonly BoardInView[] {
	const begun = new Map(cutSheets.map((sheet) => [sheet.id, sheet]));
	const inOrder = [...boards.map(({ job }) => job), ...cutSheets.map(({ stock }) => stock)];
	return [...groupBy(inOrder, stockKey)].map(([key, [first]]) => {
		const { board: name, material } = first!;
		const planned = boards.find((board): board is PlannedBoard => 'plan' in board && stockKey(board.job) === key);
		const own = planned?.sheets ?? [];
		const ofPlan = new Set(own.map(({ id }) => id));
		const before = cutSheets.filter(({ id, stock }) => stockKey(stock) === key && !ofPlan.has(id));
		const sheets = [...before, ...own.map((sheet) => begun.get(sheet.id) ?? sheet)].map((sheet, place) => ({
			sheet,
			number: place + 1,
		}));
		const toCut = sheets.filter(({ sheet }) => !begun.has(sheet.id));
		return {
			key,
			name,
			material,
			planned,
			sheets,
			toCut: [...groupBy(toCut, ({ sheet }) => wayOfCutting(sheet)).values()],
			cut: sheets.filter(({ sheet }) => begun.has(sheet.id)),
		};
	});
}

/** Names how a sheet is cut, whomever its blanks are for. */
const wayOfCutting = ({ stock, blanks, cuts }: CutSheet): string =>
	JSON.stringify([
		stock,
		blanks.map(({ part, x, y, width, height }) => [part, x, y, width, height]),
		cuts.map(({ piece, across, at }) => [piece.x, piece.y, across, at]),
	]);

/** What is still to be cut of each board, by size. */
export const boardsToCut = (boards: readonly BoardInView[]): readonly BoardToCut[] =>
	boards.map(({ name, material, sheets }) => ({
		name,
		material,
		lines: cutListOf(sheets.map(({ sheet }) => sheet)),
	}));
