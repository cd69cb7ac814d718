import type { CellPlace } from '../show/cellPlace.ts';
import type { ColumnName } from '../show/columns.ts';
import type { CellTexts } from '../show/row.ts';
import type { FillWay } from './planFill.ts';
import type { CellPlan } from './planPaste.ts';
import { countOf } from '../values/countOf.ts';

/** The cells of rows that are there into which a plan types a text, without those that it clears. */
export const cellsTyped = (plan: CellPlan): readonly CellPlace[] =>
	plan.changes.flatMap(({ id, cells }) => typedColumns(cells).map((column) => ({ id, column })));

/** A plan that leaves some cells of the rows that are there as they are. */
export function withoutCells(plan: CellPlan, left: readonly CellPlace[]): CellPlan {
	const names = new Set(left.map(({ id, column }) => `${id} ${column}`));
	const changes = plan.changes.map(({ id, cells }) => ({
		id,
		cells: Object.fromEntries(Object.entries(cells).filter(([column]) => !names.has(`${id} ${column}`))),
	}));
	return { ...plan, changes: changes.filter(({ cells }) => Object.keys(cells).length > 0) };
}

/**
 * What a paste or a fill has done, in one sentence, to be heard and read.
 * @param unread cells that it typed and that could not be read
 * @param leftOut prints of the show that are not seen, and that it went past
 */
export function saidOfPaste(label: string, plan: CellPlan, unread: number, leftOut = 0): string {
	const texts = [...plan.changes, ...plan.added].map(({ cells }) => cells);
	const typed = texts.reduce((sum, cells) => sum + typedColumns(cells).length, 0);
	const parts = [
		`${countOf(typed, 'cell')} typed`,
		plan.added.length > 0 && `${countOf(plan.added.length, 'print')} added`,
		plan.skipped > 0 && `${countOf(plan.skipped, 'cell')} skipped, as they are always worked out`,
		plan.outside > 0 && `${countOf(plan.outside, 'cell')} left out, past the last column`,
		leftOut > 0 && `only in the prints shown (${countOf(leftOut, 'print')} left out)`,
		unread > 0 && `${countOf(unread, 'cell')} not understood, kept as pasted`,
	];
	return `${label}: ${parts.filter((part) => part !== false).join(', ')}`;
}

/** Why a paste or a fill has done nothing, in one sentence. @param label what it is called: `Paste`, `Fill down` */
export function saidOfNoChange(label: string, { changes, added, skipped, outside }: CellPlan): string {
	const isNowhere = changes.length + added.length === 0;
	const why =
		isNowhere && skipped > 0
			? 'those cells can only be worked out'
			: isNowhere && outside > 0
				? 'there is no column there'
				: 'the cells hold that already';
	return `${label}: nothing was changed, ${why}.`;
}

/** Why a fill cannot begin: where it would fill from. @param where what is active: a cell, or the head of a column */
export const cannotFill = (way: FillWay, where: 'cell' | 'head'): string => {
	if (where === 'head') return 'Select cells first: the head of a column is not filled.';
	return way === 'down'
		? 'Nothing to fill down from. There is no print above. Select the cell to fill from and those below it.'
		: 'Nothing to fill right from. There is no column before this. Select the cell to fill from and those beside it.';
};

/** Why nothing is pasted into the head of a column. */
export const cannotPasteInHead = 'Select a cell first. Nothing is pasted into the head of a column.';

const typedColumns = (cells: CellTexts): readonly ColumnName[] =>
	(Object.entries(cells) as [ColumnName, string][]).flatMap(([column, text]) => (text.trim() === '' ? [] : column));
