import type { Length } from '../length/length.ts';
import type { Cells, SizeKey } from '../row/cells.ts';
import type { Solution } from '../row/solution.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { CellTexts, Row } from '../show/row.ts';
import type { Code, FiguresByCode } from './figures.ts';
import type { Axis, BorderKey } from './measure.ts';
import type { Level } from './finding.ts';
import type { Offer } from './offers.ts';

/** A row worked out, as the finders see it. */
export interface RowContext extends WorkedRow {
	readonly row: Row;
	readonly settings: Settings;
	/** The text that types a length into a cell of its own. */
	readonly text: (length: Length | number) => string;
	/** Another row of the same show, worked out; used to try changes. */
	readonly workedOut: (row: Row) => RowContext;
	/** The row with these cells in the place of what was typed, and what is found in it then, but for `unit-slip`. */
	readonly readAs: (cells: Cells) => { readonly solution: Solution; readonly found: () => readonly Found[] };
}

/** A change that may mend a finding: kept only if the finding goes away by it and no new `stop` comes. */
export interface Candidate {
	/** What it does; asked with the row as the change leaves it, where that is said too. */
	readonly offer: Offer | ((after: RowContext) => Offer);
	readonly change: CellTexts;
}

/** What a finder returns: a finding before its sentence is made and its candidates are tried. */
export type Found = { [C in Code]: FoundOf<C> }[Code];

interface FoundOf<C extends Code> {
	readonly code: C;
	readonly level: Level;
	/** Keys of the results; for a cell that has none, its column's name. */
	readonly cells: readonly string[];
	/** Its figures: put together only where it is shown, for rows are also tried out of sight. */
	readonly figures: () => FiguresByCode[C];
	readonly candidates?: () => readonly Candidate[];
}

/** Looks at a row for one code. */
export type Finder = (context: RowContext) => readonly Found[];

/** An axis of a row, by the names of its cells. */
export interface AxisKeys {
	readonly axis: Axis;
	readonly mount: SizeKey;
	readonly window: SizeKey;
	readonly picture: SizeKey;
	readonly borders: readonly BorderKey[];
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
