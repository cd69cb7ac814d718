import { judgeRow } from '../findings/judgeRow.ts';
import { type Length, sameWithin } from '../length/length.ts';
import type { NamedSize } from '../length/size.ts';
import type { SolvedRow } from '../row/solvedRow.ts';
import { workOut } from '../row/workOut.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { shapeTextOf } from '../row/shapeText.ts';
import type { CellTexts, Row, RowId } from '../show/row.ts';
import { withCells } from '../show/withCells.ts';
import { greatestCommonDivisor } from '../values/greatestCommonDivisor.ts';
import { chooseSizes, type Option } from './chooseSizes.ts';

/** The most prints and sizes that the choice is proven best for, in reasonable time. */
export const mostPrints = 60;
/** The most sizes of the list that are tried. */
export const mostSizes = 12;

/** What harmonising does to one row. */
export interface HarmonisedRow {
	readonly id: RowId;
	/** The name of its size; undefined where no size of the list takes the row: it stays as it is. */
	readonly size: string | undefined;
	readonly before: SolvedRow;
	readonly after: SolvedRow;
	/** What applying it types and clears. */
	readonly change: CellTexts;
	/** The long side that was wanted. */
	readonly wanted: Length | undefined;
	/** How far the picture's long side is from it. */
	readonly difference: Length | undefined;
}

/** Rows in as few sizes as asked, each as near its wanted picture as can be: proven best. */
export interface Harmony {
	readonly rows: readonly HarmonisedRow[];
	readonly difference: number;
	readonly sizes: readonly string[];
	/** Mount sizes of all rows, either way round: also the show's own, where a row keeps it. */
	readonly mountSizesBefore: number;
	readonly mountSizesAfter: number;
	readonly bordersBefore: number;
	readonly bordersAfter: number;
}

/**
 * Chooses at most `most` sizes of the show's list, and one for each row, so that the sum of the differences of the
 * picture's long side from the wanted one is least. Wanted is the typed picture, else the picture in the show's mount.
 * No border comes out under the least border.
 *
 * @param rows at most `mostPrints` of them; the show's list at most `mostSizes` sizes
 * @throws RangeError if there are more
 */
export function harmonise(rows: readonly Row[], settings: Settings, most: number): Harmony {
	const { sizes } = settings;
	if (rows.length > mostPrints) throw new RangeError(`${rows.length} prints are more than ${mostPrints}`);
	if (sizes.length > mostSizes) throw new RangeError(`${sizes.length} sizes are more than ${mostSizes}`);
	const tried = rows.map((row) => tryRow(row, sizes, settings));
	const choice = chooseSizes(
		tried.map(({ options }) => options.map((option) => option?.option)),
		sizes.length,
		most,
	);
	const harmonised = tried.map(({ row, before, wanted, options }, place): HarmonisedRow => {
		const option = options[choice.sizes[place]!];
		if (!option)
			return { id: row.id, size: undefined, before, after: before, change: {}, wanted, difference: undefined };
		const { size, after, change } = option;
		return {
			id: row.id,
			size: size.name,
			before,
			after,
			change,
			wanted,
			difference: option.option.difference as Length,
		};
	});
	return {
		rows: harmonised,
		difference: choice.difference,
		sizes: [...new Set(harmonised.flatMap(({ size }) => size ?? []))],
		mountSizesBefore: distinctSizes(harmonised.map(({ before }) => before)),
		mountSizesAfter: distinctSizes(harmonised.map(({ after }) => after)),
		bordersBefore: distinctBorders(harmonised.map(({ before }) => before)),
		bordersAfter: distinctBorders(harmonised.map(({ after }) => after)),
	};
}

/** The cells that are cleared, so that the picture is what the size leaves with the row's border. */
const freed: CellTexts = {
	'mount width': '',
	'mount height': '',
	'window width': '',
	'window height': '',
	'picture width': '',
	'picture height': '',
	side: '',
	top: '',
	bottom: '',
};

function tryRow(row: Row, sizes: readonly NamedSize[], settings: Settings) {
	const result = judgeRow(row, settings);
	const before = result.solved;
	// A row that must not be cut as it is, or has no mount, is not to be brought in order unasked.
	const isLeft = result.isStopped || !result.hasMount;
	const { shape, wanted } = isLeft ? { shape: undefined, wanted: undefined } : wantedOf(row, result, settings);
	const options = sizes.map((size) => {
		if (wanted === undefined || shape === undefined) return undefined;
		const change: CellTexts = { ...freed, mount: size.name, shape };
		const tried = judgeRow(withCells(row, change, settings), settings);
		const after = tried.solved;
		const long = longSide(after);
		const { side, top, bottom, mountWidth, mountHeight } = after;
		if (long === undefined || side === undefined || top === undefined || bottom === undefined) return undefined;
		if (Math.min(side, top, bottom) < settings.leastBorder - sameWithin) return undefined;
		if (tried.isStopped) return undefined;
		const option: Option = {
			difference: Math.abs(long - wanted),
			borders: [side, top, bottom],
			area: (mountWidth! / 1e4) * (mountHeight! / 1e4),
		};
		return { size, after, change, option };
	});
	return { row, before, wanted, options };
}

/** The long side that a row wants, and its shape as text: typed, else that of its typed picture. */
function wantedOf(
	row: Row,
	{ read: { cells }, solved: before }: WorkedRow,
	settings: Settings,
): { shape: string | undefined; wanted: Length | undefined } {
	const hasPicture = cells.pictureWidth !== undefined || cells.pictureHeight !== undefined;
	const own = hasPicture ? before : workOut(withCells(row, { ...freed, mount: '' }, settings), settings).solved;
	return { shape: shapeTextOf(row, cells) ?? shapeText(own), wanted: longSide(own) };
}

/** A picture's sides, to a thousandth of a millimetre, as a shape in lowest terms. */
function shapeText({ pictureWidth, pictureHeight }: SolvedRow): string | undefined {
	if (!pictureWidth || !pictureHeight) return undefined;
	const [width, height] = [Math.round(pictureWidth / 1e4), Math.round(pictureHeight / 1e4)];
	const common = greatestCommonDivisor(width, height);
	return `${width / common}:${height / common}`;
}

function longSide({ pictureWidth, pictureHeight }: SolvedRow): Length | undefined {
	if (pictureWidth === undefined || pictureHeight === undefined) return undefined;
	return pictureWidth > pictureHeight ? pictureWidth : pictureHeight;
}

const distinctBorders = (rows: readonly SolvedRow[]) =>
	new Set(rows.flatMap(({ side, top, bottom }) => [side, top, bottom].filter((border) => border !== undefined))).size;

const distinctSizes = (rows: readonly SolvedRow[]) =>
	new Set(
		rows.flatMap(({ mountWidth, mountHeight }) =>
			mountWidth === undefined || mountHeight === undefined
				? []
				: [[mountWidth, mountHeight].toSorted((a, b) => a - b).join()],
		),
	).size;
