import { type Length, length } from '../length/length.ts';
import type { Size } from '../length/size.ts';

/** A print that hangs on a wall, before its place is known. */
export interface ToHang {
	readonly place: number;
	readonly size: Size;
	/** Undefined where none is typed. */
	readonly order: number | undefined;
	readonly left: Length | undefined;
	readonly centre: Length | undefined;
}

/** Prints that hang under each other. */
export interface Column {
	/** From the top. */
	readonly parts: readonly ToHang[];
	/** From the column's left edge to each part's, in units. */
	readonly insets: readonly number[];
	readonly width: number;
	/** The column's left edge, where one of its parts has it typed. */
	readonly left: number | undefined;
	/** The middle of each part above the floor. */
	readonly centres: readonly Length[];
}

/**
 * The columns of a wall, in the order in which they hang: by hang order, those without one after them. Those of one
 * number are one column, narrower parts in the middle of the widest.
 *
 *      ┌────┐
 *      └────┘   stackGap
 *     ┌──────┐
 *     │      │  its middle on the centre line
 *     └──────┘
 *
 * A typed left edge places the whole column; a typed centre takes its part out of the stack.
 */
export function columnsOfWall(
	prints: readonly ToHang[],
	{ centre, stackGap }: { readonly centre: Length; readonly stackGap: Length },
): readonly Column[] {
	const byOrder = new Map<number, ToHang[]>();
	for (const print of prints.filter(({ order }) => order !== undefined)) {
		const known = byOrder.get(print.order!);
		if (known) known.push(print);
		else byOrder.set(print.order!, [print]);
	}
	const numbered = [...byOrder].sort(([one], [other]) => one - other).map(([, parts]) => parts);
	const others = prints.filter(({ order }) => order === undefined).map((print) => [print]);
	return [...numbered, ...others].map((parts) => columnOf(parts, centre, stackGap));
}

function columnOf(parts: readonly ToHang[], middle: Length, stackGap: Length): Column {
	const widest = Math.max(...parts.map(({ size }) => size.width));
	const centred = parts.map(({ size }) => (widest - size.width) / 2);
	const anchor = parts.findIndex(({ left }) => left !== undefined);
	const centres = centresOf(parts, middle, stackGap);
	if (anchor < 0) return { parts, insets: centred, width: widest, left: undefined, centres };
	// Each typed edge is kept, so a column with two of them may be wider than its widest part.
	const edge = parts[anchor]!.left! - centred[anchor]!;
	const lefts = parts.map(({ left }, at) => left ?? edge + centred[at]!);
	const left = Math.min(...lefts);
	const right = Math.max(...parts.map(({ size }, at) => lefts[at]! + size.width));
	return { parts, insets: lefts.map((each) => each - left), width: right - left, left, centres };
}

function centresOf(parts: readonly ToHang[], middle: Length, stackGap: Length): readonly Length[] {
	const stacked = parts.filter(({ centre }) => centre === undefined);
	const heights = stacked.reduce((sum, { size }) => sum + size.height, 0);
	let top = middle + (heights + stackGap * Math.max(0, stacked.length - 1)) / 2;
	return parts.map(({ size, centre }) => {
		if (centre !== undefined) return centre;
		const own = length(Math.round(top - size.height / 2));
		top -= size.height + stackGap;
		return own;
	});
}
