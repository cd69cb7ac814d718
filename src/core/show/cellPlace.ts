import type { ColumnName } from './columns.ts';
import type { RowId } from './row.ts';

/** A cell of a show that can be typed into, by its print and its column. */
export interface CellPlace {
	readonly id: RowId;
	readonly column: ColumnName;
}
