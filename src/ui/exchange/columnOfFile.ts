import type { ColumnName } from '../../core/show/columns.ts';

/** A column of a file, as it was understood. */
export interface ColumnOfFile {
	readonly text: string;
	/** `none`: kept as it is; undefined: a result, which is only compared. */
	readonly meaning: ColumnName | 'none' | undefined;
	/** What it may mean where that is not sure, the likeliest first. */
	readonly guesses: readonly ColumnName[];
	/** What stands in its first cells. */
	readonly samples: readonly string[];
	/** Whether sizes stand in it, width and height in one cell. */
	readonly areSizes: boolean;
	/** Whether they give the height first, as far as that can be seen. */
	readonly isHeightFirst: boolean;
}
