import type { Unit } from '../length/reading.ts';
import type { Settings } from '../settings/settings.ts';
import type { ColumnName } from './columns.ts';
import type { CellTexts, Row } from './row.ts';
import { rowWith } from './rowWith.ts';
import { splitSize } from './splitSize.ts';

/**
 * A row with new texts in some of its cells. A cell whose text is new loses a unit of its own: a bare number typed now
 * is in the show's unit. The text that stands there already changes nothing.
 * @returns the same object if nothing changes
 */
export function withCells(row: Row, cells: CellTexts, settings: Pick<Settings, 'unit' | 'sizes'>): Row {
	const typed = new Map(Object.entries(row.typed) as [ColumnName, string][]);
	const units = new Map(Object.entries(row.units ?? {}) as [ColumnName, Unit][]);
	let isChanged = false;
	for (const [column, text] of textsByCell(cells, settings)) {
		if (text === (typed.get(column) ?? '')) continue;
		isChanged = true;
		units.delete(column);
		if (text === '') typed.delete(column);
		else typed.set(column, text);
	}
	if (!isChanged) return row;
	return rowWith(row, { typed, units });
}

/** The text that goes into each cell. What is typed for a cell itself stands before half of a size from its neighbour. */
function textsByCell(cells: CellTexts, { unit, sizes }: Pick<Settings, 'unit' | 'sizes'>): Map<ColumnName, string> {
	const texts = new Map<ColumnName, string>();
	for (const [column, text] of Object.entries(cells) as [ColumnName, string][]) {
		if (text.trim() === '') {
			if (!texts.has(column)) texts.set(column, '');
			continue;
		}
		for (const [part, half] of Object.entries(splitSize(column, text, unit, sizes)) as [ColumnName, string][])
			if (part === column || !cells[part]?.trim()) texts.set(part, half);
	}
	return texts;
}
