import type { CutState } from '../bench/cutState.ts';

/** What rows are asked for; blank: everything. A row is shown if it answers to all of it. */
export interface Filter {
	/**
	 * Words that stand somewhere in what was typed, in what the print costs or its price, or in how it is framed, whatever
	 * their capitals and accents.
	 */
	readonly words: string;
	/**
	 * A level (`stop`, `look`, `note`) for rows of which it is the worst, `none` for rows of which nothing is found, or the
	 * code of a finding.
	 */
	readonly check: string;
	/** The size of the mount, as `mountSizeOf` says it. */
	readonly mount: string;
	readonly board: string;
	/** The name of the frame that it has, named or not. */
	readonly frame: string;
	readonly maker: string;
	readonly cut: CutState | '';
}

/** The filter that lets every row through. */
export const noFilter: Filter = { words: '', check: '', mount: '', board: '', frame: '', maker: '', cut: '' };

/** Whether a filter lets every row through. */
export const isNoFilter = (filter: Filter): boolean =>
	Object.values(filter).every((asked: string) => asked.trim() === '');
