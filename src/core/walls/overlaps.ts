import { length, type Length, sameWithin } from '../length/length.ts';
import type { HungPrint, HungWall } from './hungPrint.ts';

/** What a print hangs over, on its wall. */
export type Overlap =
	| { readonly kind: 'print'; readonly other: HungPrint; readonly by: Length }
	| { readonly kind: 'obstacle'; readonly name: string; readonly by: Length }
	| { readonly kind: 'floor'; readonly under: Length }
	| { readonly kind: 'top'; readonly over: Length; readonly height: Length };

interface Box {
	readonly left: number;
	readonly right: number;
	readonly bottom: number;
	readonly top: number;
}

const boxOf = ({ exactLeft, centre, size }: HungPrint): Box => ({
	left: exactLeft,
	right: exactLeft + size.width,
	bottom: centre - size.height / 2,
	top: centre + size.height / 2,
});

/** How far one reaches over the other, the shorter way; zero or less where they do not overlap. */
const overlapOf = (a: Box, b: Box): number =>
	Math.min(
		Math.min(a.right, b.right) - Math.max(a.left, b.left),
		Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom),
	);

const whole = (units: number): Length => length(Math.round(units));

/** What each print of a wall hangs over; those that hang over nothing are not in it. Places before they went to the ruler count. */
export function overlapsOn({ wall, prints }: HungWall): ReadonlyMap<HungPrint, readonly Overlap[]> {
	const found = new Map<HungPrint, Overlap[]>();
	const add = (print: HungPrint, overlap: Overlap) => {
		const known = found.get(print);
		if (known) known.push(overlap);
		else found.set(print, [overlap]);
	};
	const boxes = prints
		.map((print) => ({ print, box: boxOf(print) }))
		.sort((one, other) => one.box.left - other.box.left);
	for (const [at, { print, box }] of boxes.entries()) {
		for (let next = at + 1; next < boxes.length && boxes[next]!.box.left < box.right; next++) {
			const other = boxes[next]!;
			const by = overlapOf(box, other.box);
			if (by <= sameWithin) continue;
			add(print, { kind: 'print', other: other.print, by: whole(by) });
			add(other.print, { kind: 'print', other: print, by: whole(by) });
		}
		for (const { name, left, bottom, width, height } of wall.obstacles) {
			const top = height === undefined ? Infinity : bottom + height;
			const by = overlapOf(box, { left, right: left + width, bottom, top });
			if (by > sameWithin) add(print, { kind: 'obstacle', name, by: whole(by) });
		}
		if (box.bottom <= sameWithin) add(print, { kind: 'floor', under: whole(-box.bottom) });
		const over = wall.height === undefined ? 0 : box.top - wall.height;
		if (over > sameWithin) add(print, { kind: 'top', over: whole(over), height: wall.height! });
	}
	return found;
}
