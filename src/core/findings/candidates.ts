import type { SizeKey } from '../row/cells.ts';
import type { ColumnName } from '../show/columns.ts';
import { sizeText } from './sizeText.ts';
import type { Candidate, RowContext } from './found.ts';

/** The column of a size or border. */
export const columnOf = (key: SizeKey): ColumnName =>
	key.replace(/[A-Z]/, (capital) => ` ${capital.toLowerCase()}`) as ColumnName;

const keysOfColumns = new Map<ColumnName, SizeKey>(
	(
		[
			'mountWidth',
			'mountHeight',
			'windowWidth',
			'windowHeight',
			'pictureWidth',
			'pictureHeight',
			'side',
			'top',
			'bottom',
		] as const
	).map((key) => [columnOf(key), key]),
);

/** The typed cells, of those named, that are not blank. */
export const typedOf = ({ row }: RowContext, columns: readonly ColumnName[]): ColumnName[] =>
	columns.filter((column) => (row.typed[column] ?? '').trim() !== '');

/** Clears one typed cell, or several at once; says what the first becomes. */
export function clear(...columns: readonly ColumnName[]): Candidate {
	return {
		label: (after) => {
			const key = keysOfColumns.get(columns[0]!);
			const value = key && after.solution.solved[key];
			const becomes = columns.length === 1 && value !== undefined ? `: it becomes ${after.say(value)}` : '';
			return `Clear ${columns.join(' and ')}${becomes}`;
		},
		change: Object.fromEntries(columns.map((column) => [column, ''])),
	};
}

/** Clears each typed cell of those named, one at a time. */
export const clearEach = (context: RowContext, columns: readonly ColumnName[]): Candidate[] =>
	typedOf(context, columns).map((column) => clear(column));

/** Has the mount cut to suit the borders. */
export const cutToSuit: Candidate = {
	label: (after) => {
		const { mountWidth, mountHeight } = after.solution.solved;
		const size = mountWidth && mountHeight ? `: ${sizeText(after, mountWidth, mountHeight)}` : '';
		return `Cut the mount to fit${size}`;
	},
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
