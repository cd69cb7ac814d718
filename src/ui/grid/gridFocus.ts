import type { RowId } from '../../core/show/row.ts';
import { isRecord } from '../../core/values/isRecord.ts';
import type { GridColumn } from './gridColumns.ts';

/** A cell of the grid by its print and its column, which may be one that can only be worked out. */
export interface GridPlace {
	readonly id: RowId;
	readonly key: GridColumn['key'];
}

/** What is selected, as it is kept with a step of undo: prints may have moved by then. */
export interface GridFocus extends Readonly<Record<'active' | 'anchor' | 'head', GridPlace>> {
	/** Every print that is selected or has a selected cell; absent in a place that an earlier version kept. */
	readonly rows?: readonly RowId[];
}

/** One cell. */
export const focusOnCell = (cell: GridPlace): GridFocus => ({
	active: cell,
	anchor: cell,
	head: cell,
	rows: [cell.id],
});

/** Whether a value that was kept is a selection of the grid. */
export const isGridFocus = (value: unknown): value is GridFocus =>
	isRecord(value) && 'active' in value && 'anchor' in value && 'head' in value;
