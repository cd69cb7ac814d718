import { type Bin, emptyBin } from './bins.ts';
import {
	areaMeasure,
	type Box,
	type BoxLimits,
	gridOf,
	listBoxes,
	type Measure,
	slicesOfBox,
	tableMeasure,
} from './boxes.ts';
import { type CountCode, countCode } from './countCode.ts';
import type { CutTables } from './cutTables.ts';
import type { Mix } from './mixes.ts';
import type { Problem } from './problem.ts';
import { measureRoom } from './slices.ts';
import type { WorthBound } from './worthBound.ts';

/** A whole piece of stock, cut into the blanks of a box. */
interface Choice {
	readonly sheet: number;
	readonly box: Box;
	/** What the piece could hold more than it does, by each measure. */
	readonly lost: readonly number[];
}

/** How many steps the search among choices may take. */
const mostSteps = 400_000;

/** Steps between two looks at the clock. */
const stepsPerLook = 1024;

/** The share that rounding may add to a sum of areas. */
const rounding = 1e-12;

/**
 * Tries every way to cut the pieces of a mix into all blanks.
 * @param bound a bound that the mix keeps to, with its tables
 * @returns full bins, `impossible`, or `unknown` where there were too many ways
 */
export function tryWholeMix(
	mix: Mix,
	problem: Problem,
	tables: CutTables | undefined,
	bound: WorthBound | undefined,
	limits: BoxLimits,
): readonly Bin[] | 'impossible' | 'unknown' {
	const { types, sheets } = problem;
	const code = countCode(types.map(({ blanks }) => blanks.length));
	const spare = spareArea(mix, problem);
	if (spare < 0) return 'impossible';
	if (bound && tables) tables.fill(bound.values);
	const spareWorth = bound ? mix.reduce((sum, count, sheet) => sum + count * bound.held[sheet]!, 0) - bound.needed : 0;
	const choices: Choice[] = [];
	const measuresOf = (sheet: number): readonly Measure[] => [
		areaMeasure(types, sheets[sheet]!, spare),
		...(bound && tables ? [tableMeasure(tables.tables[sheet]!, bound.values, bound.held[sheet]!, spareWorth)] : []),
	];
	for (const [sheet, count] of mix.entries()) {
		if (count === 0) continue;
		const measures = measuresOf(sheet);
		const boxes = listBoxes(types, sheets[sheet]!, measures, code, gridOf(tables?.tables[sheet]), limits);
		if (boxes === undefined) return 'unknown';
		choices.push(...choicesOf(boxes, sheet, measures));
	}
	const spares = measuresOf(0).map(({ spare }) => spare);
	const chosen = choose(choices, mix, spares, problem, code, limits);
	if (typeof chosen === 'string') return chosen;
	return chosen.map(({ sheet, box }) => binOf(sheet, box, problem));
}

/** What the pieces of a mix have more area than the blanks. */
export function spareArea(mix: Mix, { types, sheets }: Problem): number {
	const area = mix.reduce((sum, count, sheet) => sum + count * sheets[sheet]!.width * sheets[sheet]!.height, 0);
	return area * (1 + rounding) - types.reduce((sum, { long, short, blanks }) => sum + long * short * blanks.length, 0);
}

/** Boxes that are enough for a whole piece of stock, one for each set of blanks. */
function choicesOf(boxes: readonly Box[], sheet: number, measures: readonly Measure[]): readonly Choice[] {
	const bySet = new Map<string, Choice>();
	for (const box of boxes) {
		const lost = measures.map(({ held }, place) => held - box.worth[place]!);
		if (lost.every((own, place) => own <= measures[place]!.spare)) bySet.set(box.code.join(), { sheet, box, lost });
	}
	return [...bySet.values()];
}

/** Chooses pieces until every blank is cut exactly once; the first type that is still wanted comes next. */
function choose(
	choices: readonly Choice[],
	mix: Mix,
	spares: readonly number[],
	{ types }: Problem,
	code: CountCode,
	{ isTimeUp }: BoxLimits,
): readonly Choice[] | 'impossible' | 'unknown' {
	// A type that few choices give is decided first, while there is most to gain from it.
	const withType = types.map((_, type) => choices.filter(({ box }) => code.countOf(box.code, type) > 0));
	const order = [...types.keys()].sort((a, b) => withType[a]!.length - withType[b]!.length);
	const left = [...mix];
	const chosen: Choice[] = [];
	let steps = 0;
	const next = (done: readonly number[], spare: readonly number[], last: number, from: number): boolean | 'unknown' => {
		const type = order.find((one) => code.countOf(done, one) < types[one]!.blanks.length);
		if (type === undefined) return true;
		const options = withType[type]!;
		// Two pieces for blanks of one type may come in either order: only one of the two is tried.
		for (let place = type === last ? from : 0; place < options.length; place++) {
			const choice = options[place]!;
			if (left[choice.sheet] === 0 || choice.lost.some((own, measure) => own > spare[measure]!)) continue;
			if (++steps > mostSteps || (steps % stepsPerLook === 0 && isTimeUp())) return 'unknown';
			const together = code.add(done, choice.box.code);
			if (together === undefined) continue;
			left[choice.sheet]!--;
			chosen.push(choice);
			const result = next(
				together,
				spare.map((own, measure) => own - choice.lost[measure]!),
				type,
				place,
			);
			if (result !== false) return result;
			chosen.pop();
			left[choice.sheet]!++;
		}
		return false;
	};
	const nothing = code.units[0]!.map(() => 0);
	const result = next(nothing, spares, -1, 0);
	return result === true ? chosen : result === false ? 'impossible' : 'unknown';
}

function binOf(sheet: number, box: Box, problem: Problem): Bin {
	const bin = emptyBin(problem, sheet);
	bin.root = slicesOfBox(box, problem.types);
	bin.slices = measureRoom(bin.root, bin.width, bin.height);
	bin.free -= box.worth[0]!;
	return bin;
}
