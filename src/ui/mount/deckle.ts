import type { Rectangle } from './layOutFramed.ts';

/** How a deckle edge is drawn, in the units of the drawing. */
interface Deckle {
	/** From one bend to the next. */
	readonly step: number;
	/** How far it comes in at most. */
	readonly depth: number;
}

/**
 * The outline of a sheet with a deckle edge, as a path: it wanders between the sheet's sides and a little within them, and
 * never comes out. The same sheet always has the same edge; no side is like another.
 */
export function deckle({ left, right, top, bottom }: Rectangle, { step, depth }: Deckle): string {
	const [across, down] = [bends(right - left, step), bends(bottom - top, step)];
	const inward = (at: number) => depth * wander(at);
	const points = [
		...across.map((x, at) => [left + x, top + inward(at)]),
		...down.map((y, at) => [right - inward(at + 31), top + y]),
		...across.map((x, at) => [right - x, bottom - inward(at + 67)]),
		...down.map((y, at) => [left + inward(at + 101), bottom - y]),
	];
	return `M${points.map((point) => point.map(rounded).join(' ')).join('L')}Z`;
}

/** Where a side bends: in steps, clear of its ends. */
function bends(side: number, step: number): readonly number[] {
	const count = Math.max(2, Math.round(side / step));
	return Array.from({ length: count }, (_, at) => ((at + 0.5) * side) / count);
}

/** Between 0 and 1, without a rhythm that the eye finds. */
const wander = (at: number): number =>
	0.5 + 0.25 * Math.sin(0.9 * at) + 0.15 * Math.sin(2.3 * at + 1) + 0.1 * Math.sin(5.7 * at + 2);

const rounded = (value: number): string => String(Number(value.toFixed(2)));
