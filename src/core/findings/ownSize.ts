import { isSame, type Length } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { ColumnName } from '../show/columns.ts';
import { columnOf } from '../row/columnOfSize.ts';
import { clear, sizeColumns, typedOf } from './candidates.ts';
import type { FiguresByCode } from './figures.ts';
import { axes, type Candidate, type Finder, type RowContext } from './found.ts';

/** `own-size`: the mount is not the show's, because of what is typed. Says which cell to clear. */
export const ownSize: Finder = (context) => {
	const { solution, read, settings } = context;
	const { mountWidth, mountHeight } = solution.solved;
	const { mountSize: shows } = settings;
	if (!shows || read.cells.mount.kind !== 'show' || solution.mountSource === 'show') return [];
	if (mountWidth === undefined && mountHeight === undefined) return [];
	if (mountWidth !== undefined && mountHeight !== undefined && isSize(shows, mountWidth, mountHeight)) return [];
	return [
		{
			code: 'own-size',
			level: 'look',
			cells: axes.map(({ mount }) => mount).filter((key) => solution.solved[key] !== undefined),
			figures: () => figuresOf(context, shows),
			candidates: () => backToTheShows(context),
		},
	];
};

function figuresOf(context: RowContext, shows: Size): FiguresByCode['own-size'] {
	const { solution } = context;
	const { mountWidth, mountHeight } = solution.solved;
	// A picture that is too large is no slip: what else is typed, then both sides of it, are named first.
	const first = backToTheShows(context).find(({ change }) => {
		const after = context.workedOut({ ...context.row, typed: without(context, Object.keys(change) as ColumnName[]) });
		return after.solution.mountSource === 'show';
	});
	return {
		mount: { width: mountWidth, height: mountHeight },
		shows,
		...(first
			? { clear: { columns: Object.keys(first.change) as ColumnName[] } }
			: { typed: { columns: typedOf(context, sizeColumns) } }),
	};
}

const isSize = (size: Size, width: Length, height: Length) =>
	(isSame(width, size.width) && isSame(height, size.height)) ||
	(isSame(width, size.height) && isSame(height, size.width));

/** Each typed size cleared by itself, then the pairs that are typed together. */
function backToTheShows(context: RowContext): Candidate[] {
	const typed = typedOf(context, sizeColumns);
	const pairs = [axes[0]!.mount, axes[0]!.window, axes[0]!.picture].map((key): [ColumnName, ColumnName] => {
		const width = columnOf(key);
		return [width, width.replace('width', 'height') as ColumnName];
	});
	const both = pairs.filter((pair) => pair.every((column) => typed.includes(column)));
	const pictures = typed.filter((column) => column.startsWith('picture'));
	const others = typed.filter((column) => !column.startsWith('picture'));
	return [
		...others.map((column) => clear(column)),
		...both.map((pair) => clear(...pair)),
		...pictures.map((column) => clear(column)),
	];
}

const without = ({ row }: RowContext, columns: readonly ColumnName[]) =>
	Object.fromEntries(Object.entries(row.typed).filter(([column]) => !columns.includes(column as ColumnName)));
