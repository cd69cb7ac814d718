import type { CellDifference, Merge, RowDifference, Side } from './mergeRows.ts';

/** What was chosen, by the key of the cell, row or order; what is absent is as suggested. */
export type Choices = ReadonlyMap<string, Side>;

/** The key of the order of the rows. */
export const orderKey = 'order';

/** The key of a row that is there or not. */
export const rowKey = ({ id }: Pick<RowDifference, 'id'>): string => JSON.stringify([id]);

/** The key of a cell of a row. */
export const cellKey = (row: Pick<RowDifference, 'id'>, { column }: Pick<CellDifference, 'column'>): string =>
	JSON.stringify([row.id, column.name, column.isExtra]);

/**
 * Where a difference belongs: with what the file or both have changed, with what only here was changed, with what is
 * decided on together because nobody may have meant it, or with rows that may be no prints of their own.
 */
export type Part = 'theirs or both' | 'only here' | 'aside' | 'in doubt';

/** Where a cell, or a row that is there or not, belongs. */
function partOf(difference: Exclude<RowDifference, { readonly kind: 'changed' }> | CellDifference): Part {
	if ('column' in difference) {
		if (difference.aside !== undefined) return 'aside';
		return difference.changedBy === 'here' ? 'only here' : 'theirs or both';
	}
	if (difference.kind === 'added' && difference.doubt !== undefined) return 'in doubt';
	return difference.kind === 'removed here' && !difference.isChangedThere ? 'only here' : 'theirs or both';
}

/** Whether both sides have, or may have, changed the same thing, so that someone has to say what is meant. */
export function isConflict(difference: RowDifference | CellDifference): boolean {
	if ('column' in difference)
		return difference.aside === undefined && ['both', 'unknown'].includes(difference.changedBy);
	switch (difference.kind) {
		case 'changed':
			return difference.cells.some(isConflict);
		case 'removed there':
			return difference.isChangedHere;
		case 'removed here':
			return difference.isChangedThere;
		case 'added':
			return false;
	}
}

/** Whether only here something was changed: it stays unless it is undone. */
export const isOnlyHere = (difference: RowDifference | CellDifference): boolean =>
	'kind' in difference && difference.kind === 'changed'
		? difference.cells.every(isOnlyHere)
		: partOf(difference) === 'only here';

/** The rows, or the cells of them, that belong together. */
export function parted(rows: readonly RowDifference[], part: Part): readonly RowDifference[] {
	return rows.flatMap((row): RowDifference[] => {
		if (row.kind !== 'changed') return partOf(row) === part ? [row] : [];
		const cells = row.cells.filter((cell) => partOf(cell) === part);
		return cells.length === row.cells.length ? [row] : cells.length > 0 ? [{ ...row, cells }] : [];
	});
}

/** Whether the order of the rows is a matter of choice: not where only here rows were moved. */
export const isOrderOpen = ({ order }: Pick<Merge, 'order'>): boolean =>
	order.changedBy === 'there' || order.changedBy === 'both';

/**
 * What is done where nothing was chosen: what only here was changed stays, what only the file has changed is applied, what
 * both have changed stays as it is here, and so does what nobody may have meant; a print that one side has removed and the
 * other has changed is kept. A print that the file lacks is removed only where the file has all that a show has: a list of
 * prices lacks prints that nobody has removed. What may be no print of its own is not added.
 */
export function suggested(difference: RowDifference | CellDifference, { isComplete }: Pick<Merge, 'isComplete'>): Side {
	if ('column' in difference) {
		if (difference.aside === 'print id') return isGiven(difference) ? 'there' : 'here';
		const mayBeMeant = difference.aside === undefined || difference.aside === 'new column';
		return mayBeMeant && difference.changedBy === 'there' ? 'there' : 'here';
	}
	if (difference.kind === 'added') return difference.doubt === undefined ? 'there' : 'here';
	if (difference.kind === 'removed there') return difference.isChangedHere || !isComplete ? 'here' : 'there';
	return isOnlyHere(difference) ? 'here' : 'there';
}

/** Whether a print id was given to a print that had none typed; a bare number is the count of a spreadsheet's lines. */
const isGiven = ({ here, there }: CellDifference): boolean =>
	here.text.trim() === '' && !/^\d*$/.test(there.text.trim());

/** What is chosen of a row that is there or not, or as suggested. */
export const sideOfRow = (row: RowDifference, merge: Merge, choices: Choices): Side =>
	choices.get(rowKey(row)) ?? suggested(row, merge);

/** What is chosen of a cell, or as suggested. */
export const sideOfCell = (row: RowDifference, cell: CellDifference, merge: Merge, choices: Choices): Side =>
	choices.get(cellKey(row, cell)) ?? suggested(cell, merge);

/** Which order is chosen; that of here unless that of the file is asked for. */
export const sideOfOrder = (choices: Choices): Side => choices.get(orderKey) ?? 'here';

/** The same side for everything, or for one row. */
export function chooseAll(rows: readonly RowDifference[], side: Side): Choices {
	return new Map(
		rows.flatMap((row): [string, Side][] =>
			row.kind === 'changed' ? row.cells.map((cell) => [cellKey(row, cell), side]) : [[rowKey(row), side]],
		),
	);
}

/**
 * Theirs in all that they have changed, or yours in everything. What only here was changed they have not: in the file
 * stands what was there before. Nor have they changed what a spreadsheet has, put in the sum under the list, or removed the
 * rows that a list of some rows lacks. The order of the prints is asked for by itself.
 */
export function chooseMerge(merge: Merge, side: Side): Choices {
	const theirs = () =>
		parted(merge.rows, 'theirs or both').filter(({ kind }) => merge.isComplete || kind !== 'removed there');
	const rows = side === 'here' ? merge.rows : theirs();
	return new Map([...chooseAll(rows, side), ...(side === 'here' ? [[orderKey, side] as const] : [])]);
}
