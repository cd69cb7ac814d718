import type { ColumnName } from '../show/columns.ts';
import { pictureColumn, resolutionColumn } from './resolutionColumn.ts';
import { type FramingColumn, framingColumns, placeColumns } from './framingColumns.ts';

/** The columns that stand first and stay: they are not hidden and not moved. */
export const frozenColumns = ['number', 'title'] as const;

/** The columns that the grid can show, in the order that they have by themselves. */
export const viewColumns = [
	...frozenColumns,
	...(['shape', 'picture width', 'picture height', 'window width', 'window height', 'side', 'top', 'bottom'] as const),
	...(['mount', 'mount width', 'mount height', 'steps', 'findings'] as const),
	...([
		'overlap',
		'reveal',
		'signing space',
		'bottom weight',
		'inner mount',
		'paper',
		'margin left',
		'margin top',
		'surface',
		'board',
		'inner board',
	] as const),
	...(['mounting', 'frame', 'glazing', 'spacer', 'backing'] as const),
	...framingColumns,
	...([pictureColumn, 'picture file', 'pixels', resolutionColumn] as const),
	...(['wall', 'hang order', 'hang left', 'hang centre', 'drop', ...placeColumns] as const),
	...(['maker', 'edition', 'medium', 'year', 'signed on', 'copies', 'cost', 'net', 'price', 'value'] as const),
	...(['stage', 'buyer', 'accepted', 'note'] as const),
] as const satisfies readonly (
	| ColumnName
	| FramingColumn
	| typeof resolutionColumn
	| typeof pictureColumn
	| 'steps'
	| 'findings'
	| 'cost'
)[];

/** A column that the grid can show: one that is typed, how a row hangs, the bench steps, what it costs, or what there is to know. */
export type ViewColumn = (typeof viewColumns)[number];

/** Whether a text names a column that the grid can show. */
export const isViewColumn = (text: unknown): text is ViewColumn => (viewColumns as readonly unknown[]).includes(text);

/** A choice of columns for a purpose, under a name. */
export interface ColumnView {
	readonly name: string;
	/** All columns, each once, those that are hidden too: each keeps its place among the others. */
	readonly order: readonly ViewColumn[];
	readonly hidden: ReadonlySet<ViewColumn>;
	/** Widths in pixels, where a column was given one. */
	readonly widths: ReadonlyMap<ViewColumn, number>;
}

/** The least and the greatest width of a column, in pixels. */
export const widthBounds = { least: 44, greatest: 640 } as const;

/** The columns that a view shows, from the left. */
export const columnsOf = ({ order, hidden }: ColumnView): readonly ViewColumn[] =>
	order.filter((column) => !hidden.has(column));

const isFrozen = (column: ViewColumn): boolean => (frozenColumns as readonly ViewColumn[]).includes(column);

/** All columns in a wanted order: the frozen ones first, those that were left out where they stand by themselves. */
export function wholeOrder(wanted: readonly ViewColumn[]): readonly ViewColumn[] {
	const order: ViewColumn[] = [...frozenColumns, ...new Set(wanted.filter((column) => !isFrozen(column)))];
	for (const [place, column] of viewColumns.entries()) {
		if (order.includes(column)) continue;
		const before = viewColumns.slice(0, place).findLast((each) => order.includes(each));
		order.splice(before === undefined ? frozenColumns.length : order.indexOf(before) + 1, 0, column);
	}
	return order;
}

/** A view without some of its columns. Frozen ones stay. */
export function hideColumns(view: ColumnView, columns: readonly ViewColumn[]): ColumnView {
	return { ...view, hidden: new Set([...view.hidden, ...columns.filter((column) => !isFrozen(column))]) };
}

/** A view with a hidden column in its place again. */
export function showColumn(view: ColumnView, column: ViewColumn): ColumnView {
	return { ...view, hidden: new Set([...view.hidden].filter((each) => each !== column)) };
}

/**
 * A view with neighbouring columns in another place, in the order that they have.
 * @param to place before which they go, among the columns that are shown, from 0
 */
export function moveColumns(view: ColumnView, columns: readonly ViewColumn[], to: number): ColumnView {
	const moved = columns.filter((column) => !isFrozen(column));
	const shown = columnsOf(view);
	const before = shown.slice(Math.max(to, frozenColumns.length)).find((column) => !moved.includes(column));
	const others = view.order.filter((column) => !moved.includes(column));
	const at = before === undefined ? others.length : others.indexOf(before);
	return { ...view, order: [...others.slice(0, at), ...moved, ...others.slice(at)] };
}

/** A view with a column of another width, in pixels, within bounds. */
export function sizeColumn(view: ColumnView, column: ViewColumn, width: number): ColumnView {
	const bounded = Math.round(Math.max(widthBounds.least, Math.min(widthBounds.greatest, width)));
	return { ...view, widths: new Map([...view.widths, [column, bounded]]) };
}

/** Whether two views show the same columns in the same way. */
export const isSameView = (a: ColumnView, b: ColumnView): boolean =>
	a.order.every((column, place) => column === b.order[place]) &&
	a.hidden.size === b.hidden.size &&
	[...a.hidden].every((column) => b.hidden.has(column)) &&
	a.widths.size === b.widths.size &&
	[...a.widths].every(([column, width]) => b.widths.get(column) === width);
