import type { Length } from '../length/length.ts';
import type { CutSheet, KnifeCut } from '../show/cutSheet.ts';

/** Cuts of one sheet that are made at one setting of the knife. */
export interface SheetCuts {
	readonly sheet: CutSheet;
	/** Their places in the cuts of the sheet, from 0, in the order of the knife. */
	readonly places: readonly number[];
}

/** All that is cut before the measure is set to something else. */
export interface KnifeStep {
	/** What is set: from the edge of the piece that the cut runs along. */
	readonly measure: Length;
	readonly sheets: readonly SheetCuts[];
}

/**
 * The cuts of some sheets by the measure that is set, so that it is set seldom. A piece is cut out before it is cut
 * itself, so a measure may have to be set again. The next is one that need not come back, if there is one; of several
 * the one with the most cuts, then the widest.
 *
 * @returns the steps; their number is at least that of the different measures
 */
export function knifeSteps(sheets: readonly CutSheet[]): readonly KnifeStep[] {
	const waiting = new Map(sheets.map((sheet) => [sheet, sheet.cuts.map((_, place) => place)]));
	const parents = new Map(sheets.map((sheet) => [sheet, sheet.cuts.map((cut, place) => parentOf(sheet, cut, place))]));
	const steps: KnifeStep[] = [];
	for (;;) {
		const left = [...waiting].filter(([, places]) => places.length > 0);
		if (left.length === 0) return steps;
		let best: { readonly step: KnifeStep; readonly count: number; readonly isLast: boolean } | undefined;
		for (const measure of measuresAtHand(left, parents)) {
			const own = left.map(([sheet, places]) => ({
				sheet,
				places: within(sheet, places, measure, parents.get(sheet)!),
			}));
			const count = own.reduce((sum, { places }) => sum + places.length, 0);
			const all = left.reduce(
				(sum, [{ cuts }, places]) => sum + places.filter((at) => cuts[at]!.at === measure).length,
				0,
			);
			const next = {
				step: { measure, sheets: own.filter(({ places }) => places.length > 0) },
				count,
				isLast: count === all,
			};
			if (best === undefined || isBetter(next, best)) best = next;
		}
		steps.push(best!.step);
		for (const { sheet, places } of best!.step.sheets)
			waiting.set(
				sheet,
				waiting.get(sheet)!.filter((place) => !places.includes(place)),
			);
	}
}

interface Candidate {
	readonly step: KnifeStep;
	readonly count: number;
	/** Whether the measure need not be set again. */
	readonly isLast: boolean;
}

const isBetter = (one: Candidate, other: Candidate): boolean =>
	one.isLast === other.isLast
		? one.count > other.count || (one.count === other.count && one.step.measure > other.step.measure)
		: one.isLast;

/** The cut that cut this piece out last: its place, or −1 where the piece is the sheet itself. */
function parentOf({ cuts }: CutSheet, { piece }: KnifeCut, place: number): number {
	for (let before = place - 1; before >= 0; before--) {
		const { piece: from } = cuts[before]!;
		const isWithin =
			piece.x >= from.x &&
			piece.y >= from.y &&
			piece.x + piece.width <= from.x + from.width &&
			piece.y + piece.height <= from.y + from.height;
		if (isWithin) return before;
	}
	return -1;
}

/** The measures of the cuts whose pieces lie ready. */
function measuresAtHand(
	left: readonly (readonly [CutSheet, readonly number[]])[],
	parents: ReadonlyMap<CutSheet, readonly number[]>,
): ReadonlySet<Length> {
	const measures = left.flatMap(([sheet, places]) => {
		const open = new Set(places);
		return places.filter((place) => !open.has(parents.get(sheet)![place]!)).map((place) => sheet.cuts[place]!.at);
	});
	return new Set(measures);
}

/** The cuts that can be made at a measure one after the other, those of pieces that it cuts out itself among them. */
function within(sheet: CutSheet, places: readonly number[], measure: Length, parents: readonly number[]): number[] {
	const open = new Set(places);
	const own: number[] = [];
	for (const place of places) {
		if (sheet.cuts[place]!.at !== measure || open.has(parents[place]!)) continue;
		own.push(place);
		open.delete(place);
	}
	return own;
}

/** How often the measure must be set at least: each different one once. */
export const leastSettings = (sheets: readonly CutSheet[]): number =>
	new Set(sheets.flatMap(({ cuts }) => cuts.map(({ at }) => at))).size;
