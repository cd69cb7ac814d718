import { type Axis, axisOf, ceilPlace } from './axis.ts';
import { type CutTree, left } from './cutTree.ts';
import type { BlankType, SheetType } from './problem.ts';

/** One way in which a type of blank may lie on a sheet. */
interface Way {
	readonly type: number;
	readonly isAcross: boolean;
	readonly width: number;
	readonly height: number;
	/** Places of the smallest piece that holds it. */
	readonly column: number;
	readonly row: number;
}

/** A sheet made ready for the search for its best cut. */
export interface CutTable {
	readonly width: number;
	readonly height: number;
	readonly columns: Axis;
	readonly rows: Axis;
	readonly ways: readonly Way[];
	/** Steps that one search takes. */
	readonly steps: number;
	/** The value of the best cut of each piece, row by row; filled by `fillTable`. */
	readonly values: Float64Array;
}

/** Makes a sheet ready; undefined where the sides of the blanks add up to too many places. */
export function cutTable(sheet: SheetType, types: readonly BlankType[]): CutTable | undefined {
	const sidesAlong = (axis: 'width' | 'height') =>
		types.map(({ long, short, blanks }, type) => ({
			sides: [
				...(sheet.givesAcross[type]! ? [axis === 'width' ? long : short] : []),
				...(sheet.givesDown[type]! ? [axis === 'width' ? short : long] : []),
			],
			times: blanks.length,
		}));
	const columns = axisOf(sheet.width, sidesAlong('width'));
	const rows = axisOf(sheet.height, sidesAlong('height'));
	if (columns === undefined || rows === undefined) return undefined;
	const ways = types.flatMap(({ long, short }, type) =>
		[true, false]
			.filter((isAcross) => (isAcross ? sheet.givesAcross[type] : sheet.givesDown[type]))
			.map((isAcross) => {
				const [width, height] = isAcross ? [long, short] : [short, long];
				return {
					type,
					isAcross,
					width,
					height,
					column: ceilPlace(columns.sizes, width),
					row: ceilPlace(rows.sizes, height),
				};
			}),
	);
	const { length: across } = columns.sizes;
	const { length: down } = rows.sizes;
	const steps = columns.first.length * down + rows.first.length * across + across * down;
	return {
		width: sheet.width,
		height: sheet.height,
		columns,
		rows,
		ways,
		steps,
		values: new Float64Array(across * down),
	};
}

/**
 * Fills the table with the value of the best cut of every piece, for blanks of these values: each type as often as one
 * likes, cut from edge to edge in any number of stages. Exact for whole values.
 * @returns the value of the whole sheet
 */
export function fillTable({ columns, rows, ways, values }: CutTable, blankValues: readonly number[]): number {
	const across = columns.sizes.length;
	const down = rows.sizes.length;
	values.fill(0);
	for (const { type, column, row } of ways) {
		const place = row * across + column;
		if (values[place]! < blankValues[type]!) values[place] = blankValues[type]!;
	}
	for (let row = 0; row < down; row++) {
		const from = row * across;
		for (let column = 0; column < across; column++) {
			let best = values[from + column]!;
			if (column > 0 && values[from + column - 1]! > best) best = values[from + column - 1]!;
			if (row > 0 && values[from - across + column]! > best) best = values[from - across + column]!;
			for (let pair = columns.starts[column]!, end = columns.starts[column + 1]!; pair < end; pair++) {
				const value = values[from + columns.first[pair]!]! + values[from + columns.other[pair]!]!;
				if (value > best) best = value;
			}
			for (let pair = rows.starts[row]!, end = rows.starts[row + 1]!; pair < end; pair++) {
				const value = values[rows.first[pair]! * across + column]! + values[rows.other[pair]! * across + column]!;
				if (value > best) best = value;
			}
			values[from + column] = best;
		}
	}
	return values[values.length - 1]!;
}

/** The best cut of the whole sheet, out of a filled table. */
export function bestTree(table: CutTable, blankValues: readonly number[]): CutTree {
	const { columns, rows, values } = table;
	const across = columns.sizes.length;
	/** The tree of a piece; `width` and `height` are its real ones, which may be more than its places say. */
	const treeOf = (column: number, row: number, width: number, height: number): CutTree => {
		const value = values[row * across + column]!;
		if (value === 0) return left;
		while (column > 0 && values[row * across + column - 1] === value) column--;
		while (row > 0 && values[(row - 1) * across + column] === value) row--;
		for (const way of table.ways)
			if (way.column <= column && way.row <= row && blankValues[way.type] === value)
				return blankInCorner(way.type, way.isAcross, way.width, way.height, width, height);
		for (let pair = columns.starts[column]!; pair < columns.starts[column + 1]!; pair++) {
			const [first, other] = [columns.first[pair]!, columns.other[pair]!];
			if (values[row * across + first]! + values[row * across + other]! !== value) continue;
			const at = columns.sizes[first]!;
			return {
				kind: 'cut',
				across: 'width',
				at,
				first: treeOf(first, row, at, height),
				other: treeOf(other, row, width - at, height),
			};
		}
		for (let pair = rows.starts[row]!; pair < rows.starts[row + 1]!; pair++) {
			const [first, other] = [rows.first[pair]!, rows.other[pair]!];
			if (values[first * across + column]! + values[other * across + column]! !== value) continue;
			const at = rows.sizes[first]!;
			return {
				kind: 'cut',
				across: 'height',
				at,
				first: treeOf(column, first, width, at),
				other: treeOf(column, other, width, height - at),
			};
		}
		throw new RangeError(`no cut of ${columns.sizes[column]} × ${rows.sizes[row]} is worth ${value}`);
	};
	return treeOf(columns.sizes.length - 1, rows.sizes.length - 1, table.width, table.height);
}

/**
 * Cuts a blank out of the top left corner of a piece; the larger of the two rests stays whole.
 *
 *     +-------+-----+
 *     | blank |     |
 *     +-------+     |
 *     |       |     |
 *     +-------+-----+
 */
export function blankInCorner(
	type: number,
	isAcross: boolean,
	width: number,
	height: number,
	pieceWidth: number,
	pieceHeight: number,
): CutTree {
	const blank: CutTree = { kind: 'blank', type, isAcross };
	const [restAcross, restDown] = [pieceWidth - width, pieceHeight - height];
	const cutDown = (tree: CutTree): CutTree =>
		restDown === 0 ? tree : { kind: 'cut', across: 'height', at: height, first: tree, other: left };
	const cutAcross = (tree: CutTree): CutTree =>
		restAcross === 0 ? tree : { kind: 'cut', across: 'width', at: width, first: tree, other: left };
	return restAcross * pieceHeight >= restDown * pieceWidth ? cutAcross(cutDown(blank)) : cutDown(cutAcross(blank));
}
