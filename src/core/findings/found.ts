import type { Length } from '../length/length.ts';
import type { Cells, SizeKey } from '../row/cells.ts';
import type { ReadCells } from '../row/readCells.ts';
import type { RowWords } from '../row/rowWords.ts';
import type { Solution } from '../row/solution.ts';
import type { CellTexts, Row } from '../show/row.ts';
import type { Settings } from '../show/settings.ts';
import type { Figures } from './figures.ts';
import type { Level } from './finding.ts';

/** A row worked out, as the finders see it. */
export interface RowContext extends Figures {
	readonly row: Row;
	readonly settings: Settings;
	readonly read: ReadCells;
	readonly solution: Solution;
	/** What the cells of words say. */
	readonly words: RowWords;
	/** The text that types a length into a cell of its own. */
	readonly text: (length: Length | number) => string;
	/** Another row of the same show, worked out; used to try changes. */
	readonly workedOut: (row: Row) => RowContext;
	/** The row with these cells in the place of what was typed, and what is found in it then, but for `unit-slip`. */
	readonly readAs: (cells: Cells) => { readonly solution: Solution; readonly found: () => readonly Found[] };
}

/** A change that may mend a finding: kept only if the finding goes away by it and no new `stop` comes. */
export interface Candidate {
	/** @param after the row with the change made */
	readonly label: (after: RowContext) => string;
	readonly change: CellTexts;
}

/** What a finder returns: a finding before its candidates are tried. */
export interface Found {
	readonly code: string;
	readonly level: Level;
	/** Keys of the results; for a cell that has none, its column's name. */
	readonly cells: readonly string[];
	/** The sentence: made only where it is told, for rows are also tried out of sight. */
	readonly message: () => string;
	readonly candidates?: () => readonly Candidate[];
}

/** Looks at a row for one code. */
export type Finder = (context: RowContext) => readonly Found[];

/** An axis of a row, by the names of its cells. */
export interface AxisKeys {
	readonly axis: 'width' | 'height';
	readonly mount: SizeKey;
	readonly window: SizeKey;
	readonly picture: SizeKey;
	readonly borders: readonly SizeKey[];
}

/** Both axes. */
export const axes: readonly AxisKeys[] = [
	{ axis: 'width', mount: 'mountWidth', window: 'windowWidth', picture: 'pictureWidth', borders: ['side'] },
	{
		axis: 'height',
		mount: 'mountHeight',
		window: 'windowHeight',
		picture: 'pictureHeight',
		borders: ['top', 'bottom'],
	},
];
