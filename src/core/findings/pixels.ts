import { inches, length, type Length, mm } from '../length/length.ts';
import { formatPixels } from '../length/parsePixels.ts';
import { pixelsAnInchOf } from '../row/resolution.ts';
import { shapeTextOf } from '../row/shapeText.ts';
import type { ColumnName } from '../show/columns.ts';
import type { CellTexts } from '../show/row.ts';
import { typedOf } from './candidates.ts';
import type { Candidate, Finder, RowContext } from './found.ts';

/** Of what is divided, no more than this is lost to rounding. */
const slack = 1e-9;

/** `low-resolution`: at the size that is worked out, the picture's file has fewer pixels an inch than the show asks for. */
export const lowResolution: Finder = (context) => {
	const { solved, settings } = context;
	const { pictureWidth: width, pictureHeight: height } = solved;
	const has = pixelsAnInchOf(context);
	if (has === undefined || !width || !height || has >= settings.pixelsAnInch * (1 - slack)) return [];
	return [
		{
			code: 'low-resolution',
			level: 'look',
			cells: ['pictureWidth', 'pictureHeight'],
			figures: () => ({
				picture: { width, height },
				// Down, so that it never reads as what was asked for.
				pixelsAnInch: { count: Math.floor(has) },
				least: { count: settings.pixelsAnInch },
			}),
			candidates: () => smaller(context, has / settings.pixelsAnInch, width, height),
		},
	];
};

/** The largest size that holds what is asked for, to what is shown of a length; alone, or with what stands in its way. */
function smaller(context: RowContext, by: number, width: Length, height: Length): Candidate[] {
	const { read, text, settings } = context;
	const step = settings.unit === 'in' ? inches(1 / 64) : mm(0.1);
	const down = (exact: number) => length(Math.floor(exact / step + slack) * step);
	const size = { width: down(width * by), height: down(height * by) };
	if (size.width <= 0 || size.height <= 0) return [];
	const { shape, pictureWidth, pictureHeight } = read.cells;
	// Both sides typed, of another shape than the row's: the print keeps its own.
	const isCropped =
		shape &&
		pictureWidth &&
		pictureHeight &&
		differs(pictureWidth / pictureHeight, shape.numerator / shape.denominator);
	// With a shape one side gives the other: the longer one is typed, for a step of it is the smaller share.
	const picture: CellTexts =
		!shape || isCropped
			? { 'picture width': text(size.width), 'picture height': text(size.height) }
			: width >= height
				? { 'picture width': text(size.width), 'picture height': '' }
				: { 'picture width': '', 'picture height': text(size.height) };
	const offer = ({ solved }: RowContext) => ({
		kind: 'set size' as const,
		of: 'picture' as const,
		size: { width: solved.pictureWidth ?? size.width, height: solved.pictureHeight ?? size.height },
	});
	const without = (...columns: readonly ColumnName[]): CellTexts =>
		Object.fromEntries(typedOf(context, columns).map((column) => [column, '']));
	const window = without('window width', 'window height');
	const borders = without('side', 'top', 'bottom');
	return [picture, { ...picture, ...window }, { ...picture, ...window, ...borders }].map((change) => ({
		offer,
		change,
	}));
}

/** More than sizes that are put to whole millimetres may be from a shape: 1 %, as for `shape-clash`. */
const differs = (one: number, other: number): boolean => Math.max(one / other, other / one) > 1.01;

/** What is cut off of less than this, in per cent, would be said to be nothing. */
const leastLost = 0.05;

/** `crops`: the typed shape is not that of the picture's file, which is cropped from the middle. */
export const crops: Finder = ({ row, read: { cells } }) => {
	const { shape, pixels, isShapeOfFile } = cells;
	if (!shape || !pixels || isShapeOfFile) return [];
	const [wanted, has] = [shape.numerator / shape.denominator, pixels.width / pixels.height];
	const lost = 100 * (has > wanted ? 1 - wanted / has : 1 - has / wanted);
	if (lost < leastLost) return [];
	return [
		{
			code: 'crops',
			level: 'note',
			cells: ['shape'],
			figures: () => ({
				pixels: formatPixels(pixels),
				shape: shapeTextOf(row, cells)!,
				lost: { percent: lost },
				axis: has > wanted ? 'width' : 'height',
			}),
			candidates: () => [{ offer: { kind: 'clear', columns: ['shape'] }, change: { shape: '' } }],
		},
	];
};
