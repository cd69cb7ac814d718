import { type CutTables, cutTables } from './cutTables.ts';
import { spareArea, tryWholeMix } from './exactMix.ts';
import { emptyFilling, firstFilling, mixOf } from './firstFilling.ts';
import type { LinearSolver } from '../values/linearSolver.ts';
import { type BoundFinder, openBoundFinder } from './lowerBound.ts';
import { compareMixPrices, type Mix, type MixOrder, type MixPrice, nextMix, priceOf } from './mixes.ts';
import type { Problem } from './problem.ts';
import { randomNumbers } from './randomNumbers.ts';
import { type Filling, ruinAndRecreate } from './ruinAndRecreate.ts';
import { tidyFilling } from './tidyFilling.ts';
import type { WorthBound } from './worthBound.ts';

/** What a search for the best mix knows. */
export interface MixSearch {
	readonly filling: Filling;
	/** Of the filling. */
	readonly price: MixPrice;
	/** No filling of all blanks has a better one. */
	readonly leastCost: number;
	/** No filling of all blanks that costs no more has fewer pieces. */
	readonly leastPieces: number;
	readonly isProven: boolean;
}

/** What a search is given. */
export interface MixSearchTools {
	readonly openProgram: LinearSolver | undefined;
	readonly secondsLeft: () => number;
	readonly onBetter: (found: MixSearch) => void;
}

/** Steps that one filling of all tables may take: a second or so. Beyond, only areas bound the plan. */
const mostTableSteps = 3e8;

/** Rounds of ruin and recreate, for each blank, that a mix is given at first; if it comes up again it is given more. */
const firstRoundsPerBlank = 100;

/** Rounds before anything is bounded but by area: most plans are found in fewer. */
const quickRounds = 300;

/** Seconds that are kept for tidying at the end, at most. */
const mostTidySeconds = 0.3;

/** The share of the time, the other way round, that is kept for tidying where there is less of it. */
const tidyingPart = 10;

/** What trying every way may take for each round that trying by chance is given: a mix that comes up again gets more of both. */
const [boxesPerRound, pairsPerRound] = [20, 3000];

/** The share that rounding may add to a sum of areas. */
const rounding = 1e-12;

/** A mix with less room to spare than this share of the blanks is tried in every way first. */
const tightShare = 0.004;

/** The price of what does not hold all blanks. */
const noPrice: MixPrice = { cost: Infinity, bought: Infinity, pieces: Infinity };

/**
 * Looks for the best filling of all blanks. Mixes of stock are tried from the best one on: each is refuted by a bound,
 * or made by a filling, or left open and tried again as long as there is time.
 */
export function searchMixes(problem: Problem, tools: MixSearchTools): MixSearch {
	const { openProgram, secondsLeft: wholeSecondsLeft } = tools;
	// A little time is kept for making what is found handier to cut.
	const kept = Math.min(mostTidySeconds, wholeSecondsLeft() / tidyingPart);
	const secondsLeft = () => wholeSecondsLeft() - kept;
	const search = openSearch(problem, { ...tools, secondsLeft });
	search.tryNext(quickRounds);
	const tables = search.isProven() || secondsLeft() <= 0 ? undefined : cutTables(problem);
	const finder =
		tables && openProgram && tables.steps <= mostTableSteps
			? openBoundFinder(problem, tables, openProgram, secondsLeft)
			: undefined;
	if (finder) search.learn(finder.overall());
	const firstRounds = firstRoundsPerBlank * blankCount(problem);
	for (let rounds = firstRounds; secondsLeft() > 0 && !search.isProven(); rounds *= 2) {
		search.forgetOpen();
		while (secondsLeft() > 0 && search.tryNext(rounds, finder, tables));
		if (!search.hasOpen()) break;
		if (finder && tables) search.settleOpen(rounds, finder, tables);
	}
	search.tidy(wholeSecondsLeft);
	return search.found();
}

/** The state of a search: the best filling so far, and what is known of the mixes. */
function openSearch(problem: Problem, { secondsLeft, onBetter }: MixSearchTools) {
	const bounds: WorthBound[] = [areaBound(problem)];
	const refuted: Mix[] = [];
	const isTimeUp = () => secondsLeft() <= 0;
	let open: Mix[] = [];
	let found = judged(firstFilling(problem));
	onBetter(found);
	// What is scarce may have gone to blanks that could do without: with all of the stock there is more room.
	if (found.filling.unplaced.length > 0)
		fill(
			problem.sheets.map(({ most }) => most),
			quickRounds,
		);

	function judged(filling: Filling): MixSearch {
		// What does not hold all blanks is worse than anything that does.
		const price = filling.unplaced.length > 0 ? noPrice : priceOf(mixOf(filling, problem), problem);
		return { filling, price, ...leastOf(price) };
	}
	/** What is known of the prices of all other mixes. */
	function leastOf(price: MixPrice) {
		const best = nextMix(problem, { bounds, refuted }, price);
		if (best === 'none') return { leastCost: price.cost, leastPieces: price.pieces, isProven: true };
		const byPieces: MixOrder = (a, b) => (a.cost > price.cost ? 1 : a.pieces - b.pieces);
		const fewest = nextMix(problem, { bounds, refuted }, price, byPieces);
		return {
			leastCost: best === 'unknown' ? 0 : priceOf(best, problem).cost,
			leastPieces: fewest === 'unknown' ? 0 : fewest === 'none' ? price.pieces : priceOf(fewest, problem).pieces,
			isProven: false,
		};
	}
	function tell(next: MixSearch) {
		found = next;
		onBetter(next);
	}
	/** Tells again of the best filling where more is known of the others. */
	function settle() {
		const least = leastOf(found.price);
		const keys = ['isProven', 'leastCost', 'leastPieces'] as const;
		if (keys.some((key) => least[key] !== found[key])) tell({ ...found, ...least });
	}
	function fill(mix: Mix, rounds: number): boolean {
		const filling = emptyFilling(mix, problem);
		const isFull = ruinAndRecreate(filling, problem, { random: randomNumbers(rounds), isTimeUp, rounds });
		const isBetter = isFull
			? compareMixPrices(priceOf(mixOf(filling, problem), problem), found.price) < 0
			: filling.unplaced.length < found.filling.unplaced.length;
		if (isBetter) tell(judged(filling));
		return isFull;
	}
	/**
	 * Where there are too many mixes to say which is next (dozens of drop-outs, say): one bought sheet fewer of each kind,
	 * with all that is there already.
	 * @returns whether one of them was made
	 */
	function tryCheaper(rounds: number): boolean {
		const used = mixOf(found.filling, problem);
		return problem.sheets.some(({ isBought }, dropped) => {
			if (!isBought || used[dropped] === 0 || secondsLeft() <= 0) return false;
			const mix = problem.sheets.map((sheet, place) =>
				sheet.isBought ? used[place]! - (place === dropped ? 1 : 0) : sheet.most,
			);
			return fill(mix, rounds);
		});
	}
	/** Whether a mix has so little room to spare that trying every way may well be quicker than trying by chance. */
	const isTight = (mix: Mix) => spareArea(mix, problem) < tightShare * bounds[0]!.needed;
	/** Makes a mix or refutes it by trying every way to cut it; false where there are too many. */
	function settleWhole(mix: Mix, rounds: number, tables: CutTables, bound?: WorthBound): boolean {
		const limits = { boxes: boxesPerRound * rounds, pairs: pairsPerRound * rounds, isTimeUp };
		const tried = tryWholeMix(mix, problem, tables, bound, limits);
		if (tried === 'unknown') return false;
		if (tried === 'impossible') {
			refuted.push(mix);
			settle();
		} else tell(judged({ bins: [...tried], unplaced: [] }));
		return true;
	}
	return {
		found: () => found,
		isProven: () => found.isProven,
		hasOpen: () => open.length > 0,
		forgetOpen: () => (open = []),
		learn(bound: WorthBound | undefined) {
			if (bound === undefined) return;
			bounds.push(bound);
			settle();
		},
		/** Tries every way to cut the mixes that were left open, as far as that is little enough. */
		settleOpen(rounds: number, finder: BoundFinder, tables: CutTables) {
			for (const mix of open) {
				if (secondsLeft() <= 0 || compareMixPrices(priceOf(mix, problem), found.price) >= 0) return;
				const { verdict, bound } = finder.test(mix, true);
				if (verdict === 'refuted') this.learn(bound);
				else settleWhole(mix, rounds, tables, bound);
			}
		},
		/** Makes the best filling handier to cut, with the same stock. */
		tidy(secondsLeft: () => number) {
			if (secondsLeft() <= 0) return;
			tell(judged(tidyFilling(found.filling, problem, randomNumbers(1), () => secondsLeft() <= 0)));
		},
		/** Refutes the best mix that is left, makes it or leaves it open; false where none is left. */
		tryNext(rounds: number, finder?: BoundFinder, tables?: CutTables): boolean {
			const mix = nextMix(problem, { bounds, refuted: [...refuted, ...open] }, found.price);
			if (mix === 'unknown') return tryCheaper(rounds);
			if (mix === 'none') return false;
			const tested = finder?.test(mix, false);
			if (tested?.verdict === 'refuted') this.learn(tested.bound);
			else if (!(tables && isTight(mix) && settleWhole(mix, rounds, tables)) && !fill(mix, rounds)) open.push(mix);
			return true;
		},
	};
}

const blankCount = ({ types }: Problem) => types.reduce((sum, { blanks }) => sum + blanks.length, 0);

/** The bound that areas give. They are doubles; what rounding may add is given away. */
function areaBound({ types, sheets }: Problem): WorthBound {
	const values = types.map(({ long, short }) => long * short);
	const needed = types.reduce((sum, { blanks }, type) => sum + blanks.length * values[type]!, 0);
	return { values, held: sheets.map(({ width, height }) => width * height), needed: needed * (1 - rounding) };
}
