import { mm, zero } from '../../../../src/core/length/length.ts';
import type { PackingJob } from '../../../../src/core/sheets/packingJob.ts';
import type { Blank } from '../../../../src/core/show/blank.ts';
import type { Stock } from '../../../../src/core/stock/stock.ts';

/** Blanks of one size: width, height, copies; in millimetres. */
export type SizeMm = readonly [width: number, height: number, copies: number];

/** A sheet of board in millimetres, as many as one likes, without a price, unless it says otherwise. */
export const sheetOf = (widthMm: number, heightMm: number, more: Partial<Stock> = {}): Stock => ({
	board: 'Chalk',
	kind: 'sheet',
	width: mm(widthMm),
	height: mm(heightMm),
	trim: zero,
	grain: undefined,
	price: undefined,
	pack: 1,
	count: undefined,
	...more,
});

/** A job of blanks, one row for each size. */
export const jobOf = (stock: readonly Stock[], sizes: readonly SizeMm[]): PackingJob => ({
	board: 'Chalk',
	stock,
	cutSheets: [],
	blanks: sizes.flatMap(([width, height, copies], index) =>
		Array.from({ length: copies }, (_, copy): Blank => ({
			row: index + 1,
			rowId: `row ${index + 1}`,
			copy: copy + 1,
			part: 'mount',
			width: mm(width),
			height: mm(height),
		})),
	),
});

/**
 * A clock that counts work, not time, so that a test gives the same on every machine: so many askings, then it is over.
 * @returns for `secondsLeft`
 */
export function workClock(askings: number): () => number {
	let left = askings;
	return () => (left-- > 0 ? 60 : 0);
}
