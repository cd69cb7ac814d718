import type { RowId } from '../../core/show/row.ts';

/** A cell of a table of before and after. */
export interface BeforeAfterCell {
	readonly text: string;
	/** A size that stands under it. */
	readonly below?: string;
	/** `figure`: lengths, which fade where nothing is applied; `words`: sentences, which may take several lines. */
	readonly kind?: 'figure' | 'words';
}

/** A print in a table of before and after. */
export interface BeforeAfterRow {
	readonly id: RowId;
	readonly name: string;
	/** Whether there is anything to apply. */
	readonly isChanging: boolean;
	readonly cells: readonly BeforeAfterCell[];
}
