import type { Selection } from '../../core/grid/selection.ts';
import type { RowId } from '../../core/show/row.ts';
import type { GridColumn } from './gridColumns.ts';

/** A cell of the grid by its print and its column, which may be one that can only be worked out. */
export interface GridPlace {
	readonly id: RowId;
	readonly key: GridColumn['key'];
}

/** What is selected, as it is kept with a step of undo: prints may have moved by then. */
export type GridFocus = Readonly<Record<keyof Selection, GridPlace>>;

/** One cell. */
export const focusOnCell = (cell: GridPlace): GridFocus => ({ active: cell, anchor: cell, head: cell });

/** Whether a value that was kept is a selection of the grid. */
export const isGridFocus = (value: unknown): value is GridFocus =>
	typeof value === 'object' && value !== null && 'active' in value && 'anchor' in value && 'head' in value;
