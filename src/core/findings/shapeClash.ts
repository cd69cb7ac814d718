import { type Length, sameWithin } from '../length/length.ts';
import { shapeTextOf } from '../row/shapeText.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Offer } from './offers.ts';
import { clear, clearEach } from './candidates.ts';
import type { Finder, RowContext } from './found.ts';

/** How far typed sizes may be from the shape: 1 %. */
const allowedPercent = 1;

/** `shape-clash`: typed sizes are not of the row's shape. Says what share of which side is lost. */
export const shapeClash: Finder = (context) => {
	const { read, row, solution, hasMount } = context;
	const { shape } = read.cells;
	const typed = typedPicture(context);
	if (!shape || !typed) return [];
	const ratio = shape.numerator / shape.denominator;
	const is = typed.width / typed.height;
	const lost = is > ratio ? 1 - ratio / is : 1 - is / ratio;
	const byShape = typed.height * ratio;
	const allowed = (Math.min(typed.width, byShape) * allowedPercent) / 100;
	if (Math.abs(typed.width - byShape) <= allowed + sameWithin) return [];
	return [
		{
			code: 'shape-clash',
			level: 'look',
			cells: typed.isPicture ? ['pictureWidth', 'pictureHeight'] : ['windowWidth', 'windowHeight'],
			figures: () => ({
				picture: { width: typed.width, height: typed.height },
				shape: shapeTextOf(row, read.cells)!,
				lost: { percent: 100 * lost },
				axis: is > ratio ? 'height' : 'width',
				by: typed.isPicture ? 'picture' : 'window',
			}),
			candidates: () => [
				...(typed.isPicture
					? [
							{
								offer: makeSide('picture height', typed.width / ratio),
								change: { 'picture height': context.text(typed.width / ratio) },
							},
							{
								offer: makeSide('picture width', typed.height * ratio),
								change: { 'picture width': context.text(typed.height * ratio) },
							},
						]
					: [clear('window height'), clear('window width')]),
				...clearEach(context, ['picture height', 'picture width', 'shape']),
			],
		},
	];
	function typedPicture({ solution: { cover } }: RowContext) {
		const { cells } = read;
		if (!hasMount && (!cells.pictureWidth || !cells.pictureHeight)) return undefined;
		const asked = (picture: Length | undefined, window: Length | undefined, added: Length) =>
			picture ?? (window !== undefined && isWindowed ? window - added : undefined);
		const isWindowed = solution.typed.mountWidth !== 0 && hasMount;
		const width = asked(cells.pictureWidth, cells.windowWidth, cover.width.added);
		const height = asked(cells.pictureHeight, cells.windowHeight, cover.height.added);
		if (!width || !height || width <= 0 || height <= 0) return undefined;
		return { width, height, isPicture: cells.pictureWidth !== undefined && cells.pictureHeight !== undefined };
	}
};

const makeSide = (column: ColumnName, to: number): Offer => ({ kind: 'set', column, to });
