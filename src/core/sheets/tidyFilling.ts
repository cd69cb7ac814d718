import { type Bin, bestPlaceIn, blanksIn, copyBin, emptyBin, type Fit, type Place, putIn, takeFrom } from './bins.ts';
import type { CutTree } from './cutTree.ts';
import type { Problem } from './problem.ts';
import type { Filling } from './ruinAndRecreate.ts';
import { treeOfSlices } from './slices.ts';

/** How handy a sheet is to cut: the less the better, the first that differs decides. */
interface Handiness {
	/** Turns of the direction of the cuts beyond the third: people at a bench like few. */
	readonly stagesOverThree: number;
	/** Area of the largest piece left, below zero. */
	readonly lessOffcut: number;
	/** Different measures that the knife is set to. */
	readonly settings: number;
}

const fits: readonly Fit[] = [(along, beside) => Math.min(along, beside), (_, beside) => beside, (along) => along];

/** How often each sheet is laid out again. */
const layings = 60;

/** What free room on a piece that is there already counts beside that on a bought one: it only decides between such. */
const roomInStock = 0.001;

/** What the area of a blank is multiplied by for its place in an order: from the least on, by up to the spread more. */
const [leastShake, shakeSpread] = [0.6, 0.8];

/** Turns of the direction that people at a bench do not mind. */
const easyStages = 3;

/**
 * Makes a filling handier without taking another piece of stock: what the emptiest sheet holds goes to others where it
 * has room, so that one large offcut is left instead of many; then each sheet is laid out again, as well as is found.
 */
export function tidyFilling(
	filling: Filling,
	problem: Problem,
	random: () => number,
	isTimeUp: () => boolean,
): Filling {
	const bins = filling.bins.filter(({ root }) => root !== undefined).map(copyBin);
	const freeOf = (bin: Bin) => (problem.sheets[bin.sheet]!.isBought ? 1 : roomInStock) * bin.free;
	const emptiest = bins.reduce<Bin | undefined>(
		(most, bin) => (most && freeOf(most) >= freeOf(bin) ? most : bin),
		undefined,
	);
	if (emptiest) emptyInto(emptiest, bins, problem);
	return {
		...filling,
		bins: bins.filter(({ root }) => root !== undefined).map((bin) => handiest(bin, problem, random, isTimeUp)),
	};
}

function emptyInto(bin: Bin, bins: readonly Bin[], problem: Problem): void {
	for (const blank of blanksIn(bin)) {
		let best: Place | undefined;
		for (const other of bins)
			if (other !== bin) best = bestPlaceIn(other, problem, blank.type, fits[0]!, best?.score ?? Infinity) ?? best;
		if (best === undefined) continue;
		takeFrom(bin, blank);
		putIn(best, problem, blank.type);
	}
}

function handiest(bin: Bin, problem: Problem, random: () => number, isTimeUp: () => boolean): Bin {
	let best = bin;
	let bestHandiness = handinessOf(bin);
	const types = blanksIn(bin).map(({ type }) => type);
	for (let laying = 0; laying < layings && !isTimeUp(); laying++) {
		const fresh = layAnew(bin.sheet, types, problem, fits[laying % fits.length]!, random);
		if (fresh === undefined) continue;
		const handiness = handinessOf(fresh);
		if (compare(handiness, bestHandiness) < 0) [best, bestHandiness] = [fresh, handiness];
	}
	return best;
}

/** The blanks laid on a fresh sheet, the large ones mostly first; undefined where they do not all find a place. */
function layAnew(
	sheet: number,
	types: readonly number[],
	problem: Problem,
	fit: Fit,
	random: () => number,
): Bin | undefined {
	const bin = emptyBin(problem, sheet);
	const keyed = types.map((type) => {
		const { long, short } = problem.types[type]!;
		return { type, key: long * short * (leastShake + shakeSpread * random()) };
	});
	for (const { type } of keyed.sort((a, b) => b.key - a.key)) {
		const place = bestPlaceIn(bin, problem, type, fit, Infinity);
		if (place === undefined) return undefined;
		putIn(place, problem, type);
	}
	return bin;
}

function handinessOf({ root, width, height }: Bin): Handiness {
	const measures = new Set<number>();
	let largest = 0;
	let deepest = 0;
	const look = (tree: CutTree, across: number, down: number, stage: number, last: string): void => {
		if (tree.kind === 'left') largest = Math.max(largest, across * down);
		if (tree.kind !== 'cut') return;
		measures.add(tree.at);
		const own = tree.across === last ? stage : stage + 1;
		deepest = Math.max(deepest, own);
		const isAcross = tree.across === 'width';
		look(tree.first, isAcross ? tree.at : across, isAcross ? down : tree.at, own, tree.across);
		look(tree.other, isAcross ? across - tree.at : across, isAcross ? down : down - tree.at, own, tree.across);
	};
	look(treeOfSlices(root, width, height), width, height, 0, '');
	return { stagesOverThree: Math.max(0, deepest - easyStages), lessOffcut: -largest, settings: measures.size };
}

const compare = (a: Handiness, b: Handiness) =>
	a.stagesOverThree - b.stagesOverThree || a.lessOffcut - b.lessOffcut || a.settings - b.settings;
