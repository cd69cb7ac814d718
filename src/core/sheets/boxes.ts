import { ceilPlace, floorPlace } from './axis.ts';
import type { CutTable } from './bestCut.ts';
import type { CountCode } from './countCode.ts';
import type { BlankType, SheetType } from './problem.ts';
import { blankSlice, joinSlices, type Slice } from './slices.ts';

/**
 * A box of blanks that are cut apart from edge to edge: a single one, or two boxes side by side. Where cuts need only lie
 * in certain places (axis.ts), it is as large as the smallest piece between such places that holds it.
 */
export interface Box {
	readonly width: number;
	readonly height: number;
	readonly code: readonly number[];
	/** What its blanks are worth, by each measure. */
	readonly worth: readonly number[];
	readonly type: number;
	readonly isAcross: boolean;
	readonly along: 'width' | 'height' | 'none';
	readonly first: Box | undefined;
	readonly other: Box | undefined;
}

/**
 * A way to tell what cannot be part of a plan. All sheets of a mix together can hold `spare` more than the blanks are
 * worth; a box that holds less than another box of its size could, by more than that, is in no plan.
 */
export interface Measure {
	readonly values: readonly number[];
	/** The most that one piece of the stock can hold. */
	readonly held: number;
	readonly spare: number;
	/** The most that a box of this size can hold. */
	holds(width: number, height: number): number;
}

/** The share of a sheet that rounding may add to sums of products of its sides. */
const rounding = 1e-9;

/** The measure of area. What rounding may add to products of sides is given away. */
export function areaMeasure(types: readonly BlankType[], { width, height }: SheetType, spare: number): Measure {
	return {
		values: types.map(({ long, short }) => long * short),
		held: width * height,
		spare: spare + rounding * width * height,
		holds: (across, down) => across * down,
	};
}

/** The measure of a filled table; the table must stay as it is for as long as the measure is used. */
export function tableMeasure(table: CutTable, values: readonly number[], held: number, spare: number): Measure {
	const { columns, rows } = table;
	const across = columns.sizes.length;
	return {
		values,
		held,
		spare,
		holds: (width, height) => {
			const column = floorPlace(columns.sizes, width);
			const row = floorPlace(rows.sizes, height);
			return column < 0 || row < 0 ? 0 : table.values[row * across + column]!;
		},
	};
}

/** Enlarges a box to the smallest piece that holds it. */
export interface Grid {
	across(width: number): number;
	down(height: number): number;
}

/** The pieces that cuts lead to; any size at all where there is no table. */
export function gridOf(table: CutTable | undefined): Grid {
	const snap = (sizes: Float64Array) => (size: number) => sizes[ceilPlace(sizes, size)] ?? Infinity;
	if (table) return { across: snap(table.columns.sizes), down: snap(table.rows.sizes) };
	return { across: (width) => width, down: (height) => height };
}

/** How much work the listing of boxes may be. */
export interface BoxLimits {
	readonly boxes: number;
	readonly pairs: number;
	readonly isTimeUp: () => boolean;
}

/** Pairs between two looks at the clock: some milliseconds. */
const pairsPerAsking = 100_000;

/** Boxes of so many blanks each, sorted both ways. */
interface Level {
	readonly byWidth: readonly Box[];
	readonly byHeight: readonly Box[];
}

/**
 * Every box that can be part of a plan on this entry of the stock, by number of blanks: of boxes with the same blanks
 * only those that no other one fits into.
 * @returns undefined where they are too many
 */
export function listBoxes(
	types: readonly BlankType[],
	sheet: SheetType,
	measures: readonly Measure[],
	code: CountCode,
	grid: Grid,
	limits: BoxLimits,
): readonly Box[] | undefined {
	const [area] = measures;
	const shortest = Math.min(...types.map(({ short }) => short));
	const total = types.reduce((sum, { blanks }) => sum + blanks.length, 0);
	const levels: Level[] = [levelOf([]), levelOf(singles(types, sheet, measures, code, grid))];
	let boxCount = levels[1]!.byWidth.length;
	let pairs = 0;
	let nextAsking = pairsPerAsking;
	const canBePart = (width: number, height: number, worth: readonly number[]) => {
		for (let place = 0; place < measures.length; place++)
			if (measures[place]!.holds(width, height) - worth[place]! > measures[place]!.spare) return false;
		return true;
	};
	const all: Box[] = [...levels[1]!.byWidth];
	for (let count = 2; count <= total; count++) {
		const found = new Map<string, Box[]>();
		const join = (first: Box, other: Box, along: 'width' | 'height') => {
			const isAcross = along === 'width';
			if (!code.canAdd(first.code, other.code)) return;
			const width = isAcross ? grid.across(first.width + other.width) : Math.max(first.width, other.width);
			const height = isAcross ? Math.max(first.height, other.height) : grid.down(first.height + other.height);
			if (width > sheet.width || height > sheet.height) return;
			const worth = first.worth.map((own, place) => own + other.worth[place]!);
			if (!canBePart(width, height, worth)) return;
			const together = code.add(first.code, other.code)!;
			const key = together.join();
			const same = found.get(key) ?? [];
			if (same.some((box) => box.width <= width && box.height <= height)) return;
			const kept = same.filter((box) => box.width < width || box.height < height);
			boxCount += 1 + kept.length - same.length;
			kept.push({ width, height, code: together, worth, type: -1, isAcross: false, along, first, other });
			found.set(key, kept);
		};
		for (let part = 1; 2 * part <= count; part++) {
			const [small, large] = [levels[part]!, levels[count - part]!];
			if (large.byWidth.length === 0) continue;
			for (const box of small.byHeight) {
				// What stands out beside the lower of two boxes is lost: as much as may be lost, they may differ.
				const low = box.height - area!.spare / shortest;
				const high = box.height + area!.spare / box.width;
				for (let place = firstFrom(large.byHeight, low, 'height'); place < large.byHeight.length; place++) {
					if (large.byHeight[place]!.height > high) break;
					pairs++;
					join(box, large.byHeight[place]!, 'width');
				}
				const left = box.width - area!.spare / shortest;
				const right = box.width + area!.spare / box.height;
				for (let place = firstFrom(large.byWidth, left, 'width'); place < large.byWidth.length; place++) {
					if (large.byWidth[place]!.width > right) break;
					pairs++;
					join(box, large.byWidth[place]!, 'height');
				}
				if (pairs > limits.pairs || boxCount > limits.boxes) return undefined;
				if (pairs < nextAsking) continue;
				if (limits.isTimeUp()) return undefined;
				nextAsking = pairs + pairsPerAsking;
			}
		}
		const boxes = [...found.values()].flat();
		levels.push(levelOf(boxes));
		all.push(...boxes);
	}
	return all;
}

const levelOf = (boxes: readonly Box[]): Level => ({
	byWidth: [...boxes].sort((a, b) => a.width - b.width),
	byHeight: [...boxes].sort((a, b) => a.height - b.height),
});

/** The place of the first of the sorted boxes that is at least so large. */
function firstFrom(boxes: readonly Box[], least: number, side: 'width' | 'height'): number {
	let low = 0;
	for (let high = boxes.length; low < high;) {
		const middle = (low + high) >> 1;
		if (boxes[middle]![side] < least) low = middle + 1;
		else high = middle;
	}
	return low;
}

function singles(
	types: readonly BlankType[],
	sheet: SheetType,
	measures: readonly Measure[],
	code: CountCode,
	grid: Grid,
): Box[] {
	return types.flatMap(({ long, short }, type) =>
		[true, false]
			.filter((isAcross) => (isAcross ? sheet.givesAcross[type] : sheet.givesDown[type]))
			.map((isAcross): Box => ({
				width: grid.across(isAcross ? long : short),
				height: grid.down(isAcross ? short : long),
				code: code.units[type]!,
				worth: measures.map(({ values }) => values[type]!),
				type,
				isAcross,
				along: 'none',
				first: undefined,
				other: undefined,
			})),
	);
}

/** The slices of a box, each as large as its blanks. */
export function slicesOfBox({ type, isAcross, along, first, other }: Box, types: readonly BlankType[]): Slice {
	if (along !== 'none') return joinSlices(along, slicesOfBox(first!, types), slicesOfBox(other!, types));
	const { long, short } = types[type]!;
	return blankSlice(type, isAcross, isAcross ? long : short, isAcross ? short : long);
}
