import type { Unit } from '../length/reading.ts';
import type { Row } from '../show/row.ts';
import { rowWith } from '../show/rowWith.ts';
import type { CellValue } from './cells.ts';
import { type Choices, sideOfCell } from './choices.ts';
import type { Merge } from './mergeRows.ts';

/**
 * The rows of a file as both sides have them now: with what stood in a cell before a spreadsheet made something else of
 * it, where that was kept. So the next file is compared with what was meant.
 */
export function exchangedRows(merge: Merge, choices: Choices): readonly Row[] {
	const kept = new Map(
		merge.rows.flatMap((row) => {
			if (row.kind !== 'changed') return [];
			const cells = row.cells.filter(
				(cell) => cell.aside !== undefined && sideOfCell(row, cell, merge, choices) === 'here',
			);
			return cells.length === 0 ? [] : [[row.id, cells] as const];
		}),
	);
	return merge.fileRows.map((row) => {
		const cells = kept.get(row.id);
		if (cells === undefined) return row;
		const typed = new Map(Object.entries(row.typed));
		const units = new Map<string, Unit>(Object.entries(row.units ?? {}));
		const extra = new Map(Object.entries(row.extra ?? {}));
		for (const { column, base, here: stays } of cells) {
			const before: CellValue = base ?? stays;
			if (column.isExtra) {
				extra.set(column.name, before.text);
				continue;
			}
			units.delete(column.name);
			if (before.text.trim() === '') typed.delete(column.name);
			else typed.set(column.name, before.text);
			const { unit } = before;
			if (unit !== undefined && typed.has(column.name)) units.set(column.name, unit);
		}
		return rowWith(row, { typed, units, extra });
	});
}
