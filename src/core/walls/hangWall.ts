import { type Length, length, sameWithin } from '../length/length.ts';
import { onRuler } from '../length/ruler.ts';
import type { Settings } from '../settings/settings.ts';
import type { Wall } from '../settings/wall.ts';
import { type Column, columnsOfWall, type ToHang } from './columnsOfWall.ts';
import type { HungPrint, HungStretch, HungWall } from './hungPrint.ts';
import { freeIn, shareColumns } from './shareColumns.ts';

/** Finds the place of each print on its wall. */
export function hangWall(wall: Wall, prints: readonly ToHang[], { stackGap, ruler }: Settings): HungWall {
	const columns = columnsOfWall(prints, { centre: wall.centre, stackGap });
	const runs = freeRuns(wall, columns);
	const free = columns.filter(({ left }) => left === undefined);
	const { counts, over } = shareColumns(
		runs.map(([from, to]) => ({ length: to - from, gap: wall.gap })),
		free.map(({ width }) => width),
	);
	const placed = new Map<Column, { readonly left: number; readonly to: number }>();
	const shared = runs.map(([from, to], run) => {
		const before = counts.slice(0, run).reduce((sum, count) => sum + count, 0);
		const own = free.slice(before, before + counts[run]!);
		const isCrowded = run === runs.length - 1 && over > 0;
		const spacing = spacingIn(to - from, own, wall.gap, isCrowded);
		let left = from + spacing.ends;
		for (const column of own) {
			placed.set(column, { left, to });
			left += column.width + spacing.between;
		}
		return { from, to, own, spacing, isCrowded };
	});
	const fromLeft = columns
		.map((column) => ({ column, left: column.left ?? placed.get(column)!.left }))
		.sort((one, other) => one.left - other.left);
	const numberOf = new Map(fromLeft.map(({ column }, at) => [column, at]));
	return {
		wall,
		prints: fromLeft.flatMap(({ column, left }, at) => partsOf(column, left, at, placed.get(column)?.to, wall, ruler)),
		stretches: shared.map(({ from, to, own, spacing, isCrowded }): HungStretch => ({
			...{ from, to, isCrowded, columns: own.map((column) => numberOf.get(column)!) },
			gap: own.length === 0 ? undefined : spacing.between,
			ends: own.length === 0 ? undefined : spacing.ends,
		})),
	};
}

/** The gaps of a stretch: between its columns and at its ends. Where they do not fit, they stand edge to edge from the left. */
function spacingIn(size: number, own: readonly Column[], gap: Length | undefined, isOver: boolean) {
	if (isOver || own.length === 0) return { between: 0, ends: 0 };
	const widths = own.reduce((sum, { width }) => sum + width, 0);
	const { value, by } = freeIn({ length: size, gap }, widths, own.length);
	return { between: gap ?? value / by, ends: value / by };
}

function partsOf(
	{ parts, insets, centres }: Column,
	columnLeft: number,
	column: number,
	end: number | undefined,
	wall: Wall,
	ruler: Length,
): readonly HungPrint[] {
	return parts.map(({ place, size, left, centre }, at) => {
		const exactLeft = left ?? columnLeft + insets[at]!;
		const pastRight = exactLeft + size.width - (end ?? wall.length);
		const past = Math.max(pastRight, -exactLeft);
		return {
			...{ place, size, exactLeft, column },
			left: left ?? onRuler(exactLeft, ruler),
			centre: centres[at]!,
			isLeftTyped: left !== undefined,
			isCentreTyped: centre !== undefined,
			past: past > sameWithin ? length(Math.round(past)) : undefined,
			isPastLeft: past > sameWithin && past > pastRight,
		};
	});
}

/** Runs of a wall, each with its ends. */
type Runs = readonly (readonly [from: number, to: number])[];

/** What of a wall is free for columns that have no place typed; all of it where nothing is. */
export function freeRuns(wall: Wall, columns: readonly Column[]): Runs {
	const typed = columns.flatMap(({ left, width }): [number, number][] =>
		left === undefined ? [] : [[left, left + width]],
	);
	const runs = between(wall.length, [...typed, ...inTheWay(wall, columns)]);
	return runs.length === 0 ? [[0, wall.length]] : runs;
}

/** The obstacles that stand beside what hangs with no place typed: touching its edges does not count. */
function inTheWay({ obstacles }: Wall, columns: readonly Column[]): Runs {
	const hung = columns
		.filter(({ left }) => left === undefined)
		.flatMap(({ parts, centres }) =>
			parts.flatMap(({ size, centre }, at) =>
				centre === undefined ? [[centres[at]! - size.height / 2, centres[at]! + size.height / 2] as const] : [],
			),
		);
	const lowest = Math.min(...hung.map(([bottom]) => bottom));
	const highest = Math.max(...hung.map(([, top]) => top));
	return obstacles
		.filter(({ bottom, height }) => (height === undefined ? Infinity : bottom + height) > lowest && bottom < highest)
		.map(({ left, width }) => [left, left + width] as const);
}

function between(end: number, taken: Runs): Runs {
	const runs: [number, number][] = [];
	let from = 0;
	for (const [left, right] of taken.toSorted(([one], [other]) => one - other)) {
		if (Math.min(left, end) > from) runs.push([from, Math.min(left, end)]);
		from = Math.max(from, right);
	}
	if (from < end) runs.push([from, end]);
	return runs;
}
