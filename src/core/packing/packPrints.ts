import { type Length, mm, plus } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import { fillBoxes } from './fillBoxes.ts';
import { bySize, gramsOf, type Pair, pairUp } from './pairUp.ts';
import { type PrintsToPack, printsToPack, type ToPack } from './toPack.ts';

/** The most that a box may weigh, in grams: 20 kg, which one person can lift for a while. Common practice. */
export const mostGrams = 20_000;

/** Padding on each side of what is in a box. Common practice. */
export const padding: Length = mm(50);

/** A box with what is in it. */
export interface PackedBox {
	/** From 1. */
	readonly number: number;
	readonly pairs: readonly Pair[];
	/** From side to side inside: the largest frame and the padding. How deep it is depends on frames that nobody measured. */
	readonly inside: { readonly long: Length; readonly short: Length };
	/** What its prints weigh, as far as that is known, in grams; without the box and what it is padded with. */
	readonly grams: number;
	/** The prints whose weight is not known. */
	readonly unweighed: readonly ToPack[];
	/** Whether a usual thickness stands for one that is not known. */
	readonly isAbout: boolean;
	/** Whether it holds a print that is over the limit by itself. */
	readonly isHeavy: boolean;
}

/** How a show is packed. */
export interface PackingPlan extends Omit<PrintsToPack, 'framed'> {
	readonly boxes: readonly PackedBox[];
	/** The number of boxes that no packing of these pairs is under. */
	readonly least: number;
}

/**
 * Packs the framed prints of a show, every copy of them: in pairs face to face, in boxes of so many prints as the show says
 * and 20 kg. A print that is heavier has a box of its own.
 */
export function packPrints(results: Parameters<typeof printsToPack>[0], { packing }: Settings): PackingPlan {
	const { framed, ...others } = printsToPack(results);
	const pairs = packing.most < 2 ? framed.toSorted(bySize).map((print): Pair => [print]) : pairUp(framed, mostGrams);
	const { boxes, least } = fillBoxes(pairs, { most: packing.most, mostGrams });
	return { ...others, boxes: boxes.map((each, at) => boxOf(each, at + 1)), least };
}

function boxOf(pairs: readonly Pair[], number: number): PackedBox {
	const prints = pairs.flat();
	const longest = (of: 'long' | 'short') =>
		prints.reduce((most, print) => (print[of] > most ? print[of] : most), mm(0));
	return {
		number,
		pairs,
		inside: { long: plus(longest('long'), padding, padding), short: plus(longest('short'), padding, padding) },
		grams: gramsOf(prints),
		unweighed: prints.filter(({ grams }) => grams === undefined),
		isAbout: prints.some(({ isAbout }) => isAbout),
		isHeavy: prints.some(({ grams }) => grams !== undefined && grams > mostGrams),
	};
}
