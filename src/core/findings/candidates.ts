import { sizeKeyOf } from '../row/columnOfSize.ts';
import type { Solution } from '../row/solution.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Candidate, RowContext } from './found.ts';
import type { BorderKey, Borders, Sides } from './measure.ts';

/** The typed cells, of those named, that are not blank. */
export const typedOf = ({ row }: RowContext, columns: readonly ColumnName[]): ColumnName[] =>
	columns.filter((column) => (row.typed[column] ?? '').trim() !== '');

/** Clears one typed cell, or several at once; says what the first becomes. */
export function clear(...columns: readonly ColumnName[]): Candidate {
	return {
		offer: ({ solution }) => {
			const key = columns.length === 1 ? sizeKeyOf(columns[0]!) : undefined;
			return { kind: 'clear', columns, becomes: key && solution.solved[key] };
		},
		change: Object.fromEntries(columns.map((column) => [column, ''])),
	};
}

/** Clears each typed cell of those named, one at a time. */
export const clearEach = (context: RowContext, columns: readonly ColumnName[]): Candidate[] =>
	typedOf(context, columns).map((column) => clear(column));

/** Has the mount cut to suit the borders. */
export const cutToSuit: Candidate = {
	offer: ({ solution: { solved } }) => ({
		kind: 'cut to fit',
		mount: sidesOf(solved.mountWidth, solved.mountHeight),
	}),
	change: { mount: 'fit' },
};

/** The columns of sizes and borders, the likeliest slip first. */
export const sizeColumns: readonly ColumnName[] = [
	'side',
	'top',
	'bottom',
	'window width',
	'window height',
	'mount width',
	'mount height',
	'mount',
	'picture width',
	'picture height',
];

/** The columns that say how the window lies over the picture. */
export const coverColumns: readonly ColumnName[] = ['overlap', 'reveal', 'signing space'];

/** A size, where both its sides are known. */
export const sidesOf = (width: number | undefined, height: number | undefined): Sides | undefined =>
	width === undefined || height === undefined ? undefined : { width, height };

/** Some borders of a row by their names. */
export const bordersIn = ({ solved }: Solution, keys: readonly BorderKey[]): Borders =>
	Object.fromEntries(keys.map((key) => [key, solved[key]]));
