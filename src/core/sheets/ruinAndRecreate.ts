import { type Bin, bestPlaceIn, blanksIn, copyBin, type Fit, type Place, putIn, takeFrom } from './bins.ts';
import type { Problem } from './problem.ts';

/** How rooms are judged; which of them serves best depends on the blanks, so each has its turn. */
const fits: readonly Fit[] = [
	(along, beside) => Math.min(along, beside),
	(along, beside) => along * beside + along + beside,
	(_, beside) => beside,
	(along) => along,
];

/** Rounds between two looks at the clock: few beside what a search may take. */
const roundsPerLook = 16;

/** How often blanks go back by area; the other times by their long side, so that long thin ones come first too. */
const byAreaShare = 0.7;

/** How far the keys of an order are shaken at most: so little that large blanks mostly stay first. */
const mostNoise = 0.5;

/** How much worse than before a filling may be and still be kept, in mean blanks: it is how the search leaves a dead end. */
const meanAllowance = 0.15;

/** Bins that are ruined at once, at most: a move is small beside the whole. */
const mostRuined = 3;

/** How often a ruined bin is emptied, so that its sheet is laid out from nothing too. */
const emptiedShare = 0.3;

/** How often a bin is passed over, so that the best place is not always the one that is used. */
const passedOverShare = 0.02;

/** Keeps a logarithm finite. */
const aboveZero = 1e-12;

/** Bins and the blanks that have no place in them. */
export interface Filling {
	bins: Bin[];
	/** Types, one entry a blank. */
	unplaced: number[];
}

/** What a search is steered by. */
export interface RuinOptions {
	readonly random: () => number;
	/** Asked every now and then whether to go on. */
	readonly isTimeUp: () => boolean;
	readonly rounds: number;
}

/**
 * Takes blanks out of some bins and puts all that is unplaced back in another order, again and again, keeping what is
 * not much worse, until everything has a place.
 * @returns whether everything has one
 */
export function ruinAndRecreate(
	filling: Filling,
	problem: Problem,
	{ random, isTimeUp, rounds }: RuinOptions,
): boolean {
	const areas = problem.types.map(({ long, short }) => long * short);
	const longs = problem.types.map(({ long }) => long);
	const areaOf = (types: readonly number[]) => types.reduce((sum, type) => sum + areas[type]!, 0);
	const meanArea =
		areaOf(problem.types.flatMap(({ blanks }, type) => blanks.map(() => type))) /
		problem.types.reduce((sum, { blanks }) => sum + blanks.length, 0);
	let cost = areaOf(filling.unplaced);
	for (let round = 0; round < rounds && filling.unplaced.length > 0; round++) {
		if (round % roundsPerLook === 0 && isTimeUp()) break;
		const before = { bins: [...filling.bins], unplaced: [...filling.unplaced] };
		ruin(filling, random);
		const sizes = random() < byAreaShare ? areas : longs;
		const noise = random() * mostNoise;
		const order = filling.unplaced
			.map((type) => ({ type, key: sizes[type]! * (1 + noise * (random() - 0.5)) }))
			.sort((a, b) => b.key - a.key);
		const fit = fits[Math.floor(random() * fits.length)]!;
		filling.unplaced = [];
		const copied = new Set<Bin>();
		for (const { type } of order)
			if (!placeBest(filling, problem, type, fit, random, copied)) filling.unplaced.push(type);
		const after = areaOf(filling.unplaced);
		const allowance = meanArea * meanAllowance * -Math.log(random() + aboveZero);
		if (after <= cost + allowance) cost = after;
		else {
			filling.bins = before.bins;
			filling.unplaced = before.unplaced;
		}
	}
	return filling.unplaced.length === 0;
}

/** Takes blanks out of one or more bins: some of them, or all. Bins that are touched are copied first. */
function ruin(filling: Filling, random: () => number): void {
	const { bins } = filling;
	const count = Math.min(bins.length, 1 + Math.floor(random() * mostRuined));
	for (let ruined = 0; ruined < count; ruined++) {
		const place = Math.floor(random() * bins.length);
		const bin = (bins[place] = copyBin(bins[place]!));
		const blanks = [...blanksIn(bin)];
		const share = random() < emptiedShare ? 1 : random();
		let take = Math.min(blanks.length, 1 + Math.floor(share * blanks.length));
		if (take === blanks.length) {
			filling.unplaced.push(...blanks.map(({ type }) => type));
			bin.root = undefined;
			bin.slices = [];
			bin.free = bin.width * bin.height;
			continue;
		}
		while (take-- > 0) {
			const [blank] = blanks.splice(Math.floor(random() * blanks.length), 1);
			takeFrom(bin, blank!);
			filling.unplaced.push(blank!.type);
		}
	}
}

function placeBest(
	filling: Filling,
	problem: Problem,
	type: number,
	fit: Fit,
	random: () => number,
	copied: Set<Bin>,
): boolean {
	let best: Place | undefined;
	let at = 0;
	filling.bins.forEach((bin, place) => {
		if (random() < passedOverShare) return;
		const found = bestPlaceIn(bin, problem, type, fit, best?.score ?? Infinity);
		if (found) [best, at] = [found, place];
	});
	if (best === undefined) return false;
	if (!copied.has(best.bin)) {
		const fresh = copyBin(best.bin);
		const beside = best.beside && fresh.slices[best.bin.slices.indexOf(best.beside)];
		filling.bins[at] = fresh;
		copied.add(fresh);
		best = { ...best, bin: fresh, beside };
	}
	putIn(best, problem, type);
	return true;
}
