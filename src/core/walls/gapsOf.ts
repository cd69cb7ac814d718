import type { HangingLine } from './hangingList.ts';
import { topOf } from './obstacleBox.ts';

/** What is free along a wall, in units from its left. */
export interface Gap {
	readonly from: number;
	readonly to: number;
}

/**
 * The gaps along a wall, from edge to edge: between its prints, what is in the way at their height, and its ends. Where
 * things overlap along the wall there is none.
 * @param lines the prints of one wall
 */
export function gapsOf(lines: readonly Pick<HangingLine, 'print' | 'hung'>[]): readonly Gap[] {
	const { wall } = lines[0]!.hung;
	const [low, high] = [
		Math.min(...lines.map(({ print }) => print.centre - print.size.height / 2)),
		Math.max(...lines.map(({ print }) => print.centre + print.size.height / 2)),
	];
	const inTheWay = wall.obstacles.filter((each) => each.bottom < high && (topOf(each) ?? Infinity) > low);
	const taken = [
		...lines.map(({ print }) => ({ left: print.left as number, right: print.left + print.size.width })),
		...inTheWay.map(({ left, width }) => ({ left: left as number, right: left + width })),
		{ left: wall.length as number, right: wall.length as number },
	].toSorted((one, other) => one.left - other.left);
	const gaps: Gap[] = [];
	let from = 0;
	for (const { left, right } of taken) {
		if (left > from) gaps.push({ from, to: Math.min(left, wall.length) });
		from = Math.max(from, right);
	}
	return gaps.filter(({ from: start, to }) => to > start);
}
