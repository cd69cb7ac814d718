import type { Settings } from '../settings/settings.ts';
import type { Edit, RowDiff } from '../show/edit.ts';
import type { CellTexts, Row, RowId } from '../show/row.ts';
import type { Show } from '../show/show.ts';
import { withCells } from '../show/withCells.ts';

/** New texts for cells of one row of a show. */
export interface CellChange {
	readonly id: RowId;
	readonly cells: CellTexts;
}

/**
 * Types into cells. A text of nothing but spaces clears its cell. Two lengths in a cell of a pair type both.
 * @throws RangeError if a row is not in the show
 */
export function typeCells(show: Show, changes: readonly CellChange[], settings: Settings, label: string): Edit {
	const touched = new Set(changes.map(({ id }) => id));
	const rows = new Map<RowId, Row>();
	for (const row of show.rows) {
		if (rows.size === touched.size) break;
		if (touched.has(row.id)) rows.set(row.id, row);
	}
	const typed = new Map<RowId, RowDiff>();
	for (const { id, cells } of changes) {
		const before = rows.get(id);
		if (!before) throw new RangeError(`no row ${id} in the show`);
		const after = withCells(typed.get(id)?.after ?? before, cells, settings);
		typed.set(id, { before, after });
	}
	return { label, rows: [...typed.values()].filter(({ before, after }) => before !== after) };
}
