import type { ColumnName } from '../show/columns.ts';
import { type SizeKey, sizeKeys } from './cells.ts';

/** The column of a size or border. */
export const columnOf = (key: SizeKey): ColumnName =>
	key.replace(/[A-Z]/, (capital) => ` ${capital.toLowerCase()}`) as ColumnName;

const keysOfColumns: ReadonlyMap<string, SizeKey> = new Map(sizeKeys.map((key) => [columnOf(key), key]));

/** The size or border that a column holds; undefined for a column of anything else. */
export const sizeKeyOf = (column: string): SizeKey | undefined => keysOfColumns.get(column);
