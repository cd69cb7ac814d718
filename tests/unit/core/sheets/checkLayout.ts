import { expect } from 'vitest';
import type { BoardPlan } from '../../../../src/core/sheets/boardPlan.ts';
import type { PackingJob } from '../../../../src/core/sheets/packingJob.ts';

// A checker that knows nothing of the solver: it has a knife, a sheet and the list of cuts, and looks at what falls off.

/** A piece of board, by its edges. */
interface Piece {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

interface Box {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

const pieceOf = ({ x, y, width, height }: Box): Piece => ({ left: x, top: y, right: x + width, bottom: y + height });
const nameOf = ({ left, top, right, bottom }: Piece) => `${left},${top} to ${right},${bottom}`;

/** A layout as the checker needs it; the command line's have it too. */
export interface CheckedLayout {
	readonly blanks: readonly Box[];
	readonly cuts: readonly { readonly piece: Box; readonly across: 'width' | 'height'; readonly at: number }[];
	readonly offcuts: readonly Box[];
}

/** Cuts a sheet as the layout says, and tells everything that does not come out as it promises. */
export function problemsOfLayout(sheet: { width: number; height: number }, { blanks, cuts, offcuts }: CheckedLayout) {
	const problems: string[] = [];
	const inHand = new Map<string, Piece>();
	const lay = (piece: Piece) => inHand.set(nameOf(piece), piece);
	lay({ left: 0, top: 0, right: sheet.width, bottom: sheet.height });
	for (const { piece: box, across, at } of cuts) {
		const piece = inHand.get(nameOf(pieceOf(box)));
		if (piece === undefined) {
			problems.push(`there is no piece ${nameOf(pieceOf(box))} to cut`);
			continue;
		}
		const place = (across === 'width' ? piece.left : piece.top) + at;
		if (at <= 0 || place >= (across === 'width' ? piece.right : piece.bottom))
			problems.push(`the cut at ${at} misses the piece ${nameOf(piece)}`);
		inHand.delete(nameOf(piece));
		lay(across === 'width' ? { ...piece, right: place } : { ...piece, bottom: place });
		lay(across === 'width' ? { ...piece, left: place } : { ...piece, top: place });
	}
	for (const box of [...blanks, ...offcuts])
		if (!inHand.delete(nameOf(pieceOf(box)))) problems.push(`no piece falls off as ${nameOf(pieceOf(box))}`);
	return problems;
}

const labelOf = (blank: {
	row: number;
	copy: number;
	part: string;
	width: number;
	height: number;
	turned?: boolean;
}) => {
	const [width, height] = blank.turned ? [blank.height, blank.width] : [blank.width, blank.height];
	return `${blank.row} ${blank.copy} ${blank.part} ${width} × ${height}`;
};

/**
 * Checks that a plan gives exactly the blanks of its job, none twice, none missing but those it names, from no more
 * stock than there is, along the grain, each sheet cut edge to edge; and that no bound is over what it made.
 */
export function checkPlan(plan: BoardPlan, job: PackingJob): void {
	const made = plan.layouts.filter(({ isCut }) => !isCut);
	for (const layout of made) expect(problemsOfLayout(layout.stock, layout)).toEqual([]);
	const given = [...made.flatMap(({ blanks }) => blanks), ...plan.unplaced.map(({ blank }) => blank)].map(labelOf);
	expect(given.sort()).toEqual(job.blanks.map(labelOf).sort());
	for (const { stock, blanks } of made)
		for (const { x, y, width, height } of blanks) {
			expect(Math.min(x, y, stock.width - x - width, stock.height - y - height)).toBeGreaterThanOrEqual(stock.trim);
			if (stock.grain !== undefined && width !== height) expect(width > height ? 'width' : 'height').toBe(stock.grain);
		}
	for (const entry of job.stock)
		expect(plan.layouts.filter(({ stock }) => stock === entry).length).toBeLessThanOrEqual(entry.count ?? Infinity);
	const cost = job.stock.reduce((sum, entry) => {
		const pieces = plan.layouts.filter(({ stock }) => stock === entry).length;
		return sum + Math.ceil(pieces / entry.pack) * (entry.price ?? 0);
	}, 0);
	expect(plan.cost).toBe(cost);
	expect(plan.count).toBe(plan.layouts.length);
	expect(plan.leastCost).toBeLessThanOrEqual(plan.cost);
	if (plan.cost === plan.leastCost) expect(plan.leastCount).toBeLessThanOrEqual(plan.count);
	if (plan.proven) expect([plan.leastCost, plan.leastCount]).toEqual([plan.cost, plan.count]);
}
