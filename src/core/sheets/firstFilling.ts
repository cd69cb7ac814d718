import { bestPlaceIn, emptyBin, type Fit, type Place, putIn } from './bins.ts';
import type { Mix } from './mixes.ts';
import type { Problem, SheetType } from './problem.ts';
import type { Filling } from './ruinAndRecreate.ts';

const shortSide: Fit = (along, beside) => Math.min(along, beside);

/** A filling of the stock at once: the largest blank first, where it fits best, else in another piece of stock. */
export function firstFilling(problem: Problem): Filling {
	const filling: Filling = { bins: [], unplaced: [] };
	const used = problem.sheets.map(() => 0);
	problem.types.forEach(({ blanks }, type) => {
		for (let count = 0; count < blanks.length; count++) {
			let best: Place | undefined;
			for (const bin of filling.bins)
				best = bestPlaceIn(bin, problem, type, shortSide, best?.score ?? Infinity) ?? best;
			if (best === undefined) {
				const sheet = cheapestFor(type, problem.sheets, used);
				if (sheet === undefined) {
					filling.unplaced.push(...new Array<number>(blanks.length - count).fill(type));
					return;
				}
				used[sheet]!++;
				filling.bins.push(emptyBin(problem, sheet));
				best = bestPlaceIn(filling.bins.at(-1)!, problem, type, shortSide, Infinity)!;
			}
			putIn(best, problem, type);
		}
	});
	return filling;
}

/** The entry that gives the type and costs least for its area; what is there already comes first. */
function cheapestFor(type: number, sheets: readonly SheetType[], used: readonly number[]): number | undefined {
	const perArea = ({ stock: { price, pack }, width, height, isBought }: SheetType) =>
		isBought ? (price ?? 1) / pack / (width * height) : 0;
	return [...sheets.keys()]
		.filter((place) => used[place]! < sheets[place]!.most)
		.filter((place) => sheets[place]!.givesAcross[type]! || sheets[place]!.givesDown[type]!)
		.sort((a, b) => perArea(sheets[a]!) - perArea(sheets[b]!))[0];
}

/** Empty bins for a mix, and all blanks waiting. */
export const emptyFilling = (mix: Mix, problem: Problem): Filling => ({
	bins: mix.flatMap((count, sheet) => Array.from({ length: count }, () => emptyBin(problem, sheet))),
	unplaced: problem.types.flatMap(({ blanks }, type) => blanks.map(() => type)),
});

/** How many bins of each entry a filling has blanks in. */
export const mixOf = ({ bins }: Filling, { sheets }: Problem): Mix =>
	sheets.map((_, sheet) => bins.filter((bin) => bin.sheet === sheet && bin.root !== undefined).length);
