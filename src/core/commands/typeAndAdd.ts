import type { Settings } from '../settings/settings.ts';
import { apply, compose, type Edit } from '../show/edit.ts';
import type { RowId } from '../show/row.ts';
import type { Show } from '../show/show.ts';
import { addRows, type NewRow } from './addRows.ts';
import { type CellChange, typeCells } from './typeCells.ts';

/** Rows to be added, and where; see `addRows`. */
export interface RowsToAdd {
	readonly rows: readonly NewRow[];
	readonly at: number;
	readonly ids: readonly RowId[];
}

/** Types into rows that are there and adds others, as one edit: a paste that runs past the last row. */
export function typeAndAdd(
	show: Show,
	changes: readonly CellChange[],
	{ rows, at, ids }: RowsToAdd,
	settings: Settings,
	label: string,
): Edit {
	const typing = typeCells(show, changes, settings, label);
	return compose(typing, addRows(apply(show, typing), rows, at, ids, settings, label));
}
