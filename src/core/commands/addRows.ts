import type { Settings } from '../settings/settings.ts';
import type { Edit } from '../show/edit.ts';
import type { CellTexts, Row, RowId } from '../show/row.ts';
import type { Show } from '../show/show.ts';
import { withCells } from '../show/withCells.ts';
import { placeRows } from './placeRows.ts';

/** What a new row starts with. */
export interface NewRow extends Omit<Row, 'id' | 'order' | 'typed'> {
	readonly cells: CellTexts;
}

/**
 * Adds rows that stand together.
 * @param at place of the first of them in the rows of the show, from 0; past the end: at the end
 * @param ids names for them, as many as there are rows, none of them in the show
 */
export function addRows(
	show: Show,
	rows: readonly NewRow[],
	at: number,
	ids: readonly RowId[],
	settings: Settings,
	label: string,
): Edit {
	const added = rows.map(({ cells, ...others }, index) => {
		const row = withCells({ id: ids[index]!, order: 0, typed: {} }, cells, settings);
		return { ...row, ...others };
	});
	return { label, rows: placeRows(show.rows, show.rows, added, at) };
}
