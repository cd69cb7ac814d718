import type { FrameMaterial } from '../settings/frame.ts';
import type { Blank } from '../show/blank.ts';
import type { Stock } from '../stock/stock.ts';
import type { Layout } from './layout.ts';

/** What is to be cut from one board. Plain data: it goes to a worker as it is. */
export interface PackingJob {
	/** The board's name; empty where the rows name none and the show has none. */
	readonly board: string;
	/** What the job is of; undefined: board. */
	readonly material?: FrameMaterial;
	/** The board's sizes; none where no such board is in stock. */
	readonly stock: readonly Stock[];
	/** The blanks that are still to be cut, one entry each, spares included. */
	readonly blanks: readonly Blank[];
	/** Sheets that are cut already. Their stock is used up, their cost counts, their blanks are not among `blanks`. */
	readonly cutSheets: readonly Layout[];
}
