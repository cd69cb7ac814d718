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

/** Whether both sides have, or may have, changed the same thing, so that someone has to say what is meant. */
export function isConflict(difference: RowDifference | CellDifference): boolean {
	if ('column' in difference) return difference.changedBy === 'both' || difference.changedBy === 'unknown';
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
export function isOnlyHere(difference: RowDifference | CellDifference): boolean {
	if ('column' in difference) return difference.changedBy === 'here';
	if (difference.kind === 'changed') return difference.cells.every(isOnlyHere);
	return difference.kind === 'removed here' && !difference.isChangedThere;
}

/** The rows, or the cells of them, that the file or both have changed, or that only here were changed. */
export function parted(
	rows: readonly RowDifference[],
	whose: 'only here' | 'theirs or both',
): readonly RowDifference[] {
	const isWanted = (each: RowDifference | CellDifference) => isOnlyHere(each) === (whose === 'only here');
	return rows.flatMap((row): RowDifference[] => {
		if (row.kind !== 'changed') return isWanted(row) ? [row] : [];
		const cells = row.cells.filter(isWanted);
		return cells.length === row.cells.length ? [row] : cells.length > 0 ? [{ ...row, cells }] : [];
	});
}

/** Whether the order of the rows is a matter of choice: not where only here rows were moved, nor where nobody can tell. */
export const isOrderOpen = ({ order, base }: Pick<Merge, 'order' | 'base'>): boolean =>
	order.changedBy === 'there' || (order.changedBy === 'both' && base !== undefined);

/**
 * What is done where nothing was chosen: what only here was changed stays, what only the file has changed is applied, what
 * both have changed stays as it is here, and a print that one side has removed and the other has changed is kept. A print
 * that the file lacks is removed only where the file has all that a show has: a list of prices lacks prints that nobody
 * has removed.
 */
export function suggested(difference: RowDifference | CellDifference, { isComplete }: Pick<Merge, 'isComplete'>): Side {
	if ('column' in difference) return difference.changedBy === 'there' ? 'there' : 'here';
	if (difference.kind === 'removed there') return difference.isChangedHere || !isComplete ? 'here' : 'there';
	return isOnlyHere(difference) ? 'here' : 'there';
}

/** What is chosen of a row that is there or not, or as suggested. */
export const sideOfRow = (row: RowDifference, merge: Merge, choices: Choices): Side =>
	choices.get(rowKey(row)) ?? suggested(row, merge);

/** What is chosen of a cell, or as suggested. */
export const sideOfCell = (row: RowDifference, cell: CellDifference, merge: Merge, choices: Choices): Side =>
	choices.get(cellKey(row, cell)) ?? suggested(cell, merge);

/** Which order is chosen, or as suggested: that of the file where only there rows have been moved. */
export const sideOfOrder = ({ order }: Merge, choices: Choices): Side =>
	choices.get(orderKey) ?? (order.changedBy === 'there' ? 'there' : 'here');

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
 * stands what was there before. Nor have they removed the rows that a list of some rows lacks.
 */
export function chooseMerge(merge: Merge, side: Side): Choices {
	const theirs = () =>
		parted(merge.rows, 'theirs or both').filter(({ kind }) => merge.isComplete || kind !== 'removed there');
	const rows = side === 'here' ? merge.rows : theirs();
	return new Map([...chooseAll(rows, side), ...(isOrderOpen(merge) ? [[orderKey, side] as const] : [])]);
}
