import type { Unit } from '../length/reading.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Edit, RowDiff } from '../show/edit.ts';
import { orderNumbers } from '../show/orderNumbers.ts';
import type { Row, RowId } from '../show/row.ts';
import { rowWith } from '../show/rowWith.ts';
import { sizePairs } from '../show/splitSize.ts';
import { isSameValue } from '../values/isSameValue.ts';
import { cellOf, type Meaning, unitOfCell } from './cells.ts';
import { type Choices, sideOfCell, sideOfOrder, sideOfRow } from './choices.ts';
import type { CellDifference, Merge, RowDifference } from './mergeRows.ts';

/**
 * The edit that imports a file as chosen.
 * @param rows the rows of the show that the merge was made of
 */
export function mergeEdit(rows: readonly Row[], merge: Merge, choices: Choices, meaning: Meaning, label: string): Edit {
	const before = new Map(rows.map((row) => [row.id, row]));
	const there = new Map(merge.fileRows.map((row) => [row.id, row]));
	const after = new Map<RowId, Row>(before);
	for (const difference of merge.rows) {
		const { id } = difference;
		if (difference.kind === 'changed') {
			const chosen = difference.cells.filter((cell) => sideOfCell(difference, cell, merge, choices) === 'there');
			if (chosen.length > 0) after.set(id, withChosen(difference, there.get(id)!, chosen, meaning));
		} else if (sideOfRow(difference, merge, choices) === 'there') {
			if (difference.kind === 'removed there') after.delete(id);
			else after.set(id, difference.there);
		}
	}
	const order = sideOfOrder(choices) === 'there' ? merge.order.there : merge.order.here;
	return { label, rows: diffs(before, after, order) };
}

function diffs(before: ReadonlyMap<RowId, Row>, after: ReadonlyMap<RowId, Row>, order: readonly RowId[]): RowDiff[] {
	const sequence = order.filter((id) => after.has(id));
	const numbers = orderNumbers(sequence.map((id) => before.get(id)?.order));
	const changed = sequence.flatMap((id, index): RowDiff[] => {
		const [old, row] = [before.get(id), after.get(id)!];
		const placed = row.order === numbers[index] ? row : { ...row, order: numbers[index]! };
		if (!old) return [{ after: placed }];
		return isSameValue(old, placed) ? [] : [{ before: old, after: placed }];
	});
	const removed = [...before.values()].filter(({ id }) => !after.has(id)).map((row): RowDiff => ({ before: row }));
	return [...changed, ...removed];
}

/** A row of the show with cells of the file. */
function withChosen(
	{ here }: RowDifference & { readonly kind: 'changed' },
	there: Row,
	cells: readonly CellDifference[],
	meaning: Meaning,
): Row {
	const typed = new Map<string, string>(Object.entries(here.typed));
	const units = new Map<string, Unit>(Object.entries(here.units ?? {}));
	const extra = new Map(Object.entries(here.extra ?? {}));
	const applied = new Set<string>();
	for (const { column } of cells) {
		const { text, unit } = cellOf(there, column);
		if (column.isExtra) {
			extra.set(column.name, text);
			continue;
		}
		applied.add(column.name);
		units.delete(column.name);
		if (text.trim() === '') typed.delete(column.name);
		else typed.set(column.name, text);
		if (unit !== undefined && text.trim() !== '') units.set(column.name, unit);
	}
	for (const pair of sizePairs) {
		if (pair.every((column) => applied.has(column)) || !pair.some((column) => applied.has(column))) continue;
		for (const column of pair) pinHalf(column, applied.has(column) ? there : here, typed, units, meaning);
	}
	const row = rowWith(here, { typed, units, extra });
	// Which picture it is goes with the name of its file.
	return applied.has('picture file') && there.picture ? { ...row, picture: there.picture } : row;
}

/**
 * One half of a size whose other half comes from elsewhere keeps the unit that it was read in: a bare fraction makes
 * inches of its neighbour.
 */
function pinHalf(
	column: ColumnName,
	from: Row,
	typed: Map<string, string>,
	units: Map<string, Unit>,
	meaning: Meaning,
): void {
	const unit = unitOfCell(from, column, meaning);
	if (unit === undefined || unit === '%' || from.units?.[column] !== undefined) return;
	if (unit === 'in' && meaning.unit !== 'in') typed.set(column, `${from.typed[column]!.trim()} in`);
	else if (unit !== meaning.unit) units.set(column, unit);
}
