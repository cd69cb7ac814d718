import type { Blank } from '../show/blank.ts';
import { isBought, placeInStock, type Stock, waysOf } from '../stock/stock.ts';
import { greatestCommonDivisor } from '../values/greatestCommonDivisor.ts';
import type { PackingJob } from './packingJob.ts';

/** Blanks of one size, whichever way they hang: the solver knows no more of them than that. */
export interface BlankType {
	/** The long side and the short one, in the problem's units. */
	readonly long: number;
	readonly short: number;
	/** The blanks themselves, in the order of the show, spares last. */
	readonly blanks: readonly Blank[];
}

/** One entry of the stock as the solver sees it. */
export interface SheetType {
	readonly stock: Stock;
	/** What the factory edge leaves, in the problem's units. */
	readonly width: number;
	readonly height: number;
	/** How many may still be cut; no more than there are blanks. */
	readonly most: number;
	/** How many are cut already: their packs are open. */
	readonly alreadyCut: number;
	readonly isBought: boolean;
	/** For each type of blank, whether it may lie with its long side across the sheet's width. */
	readonly givesAcross: readonly boolean[];
	/** For each type of blank, whether it may lie with its long side down the sheet's height; never for a square. */
	readonly givesDown: readonly boolean[];
}

/** A board's job in whole numbers as small as they can be, equal blanks together, stock of no use left out. */
export interface Problem {
	readonly types: readonly BlankType[];
	readonly sheets: readonly SheetType[];
	/** Units of a `Length` in one unit of the problem. */
	readonly scale: number;
}

/** The job for the solver. Blanks that no entry of the stock gives must have been taken out of it before. */
export function problemOf({ stock, blanks, cutSheets }: PackingJob): Problem {
	const usable = stock.map(({ width, height, trim }) => [width - 2 * trim, height - 2 * trim] as const);
	const scale = [...usable.flat(), ...blanks.flatMap(({ width, height }) => [width, height])].reduce(
		(divisor, side) => greatestCommonDivisor(divisor, side),
		0,
	);
	const types = blankTypes(blanks, scale || 1);
	const sheets = stock.map((entry, place): SheetType => {
		const [width, height] = usable[place]!;
		const ways = types.map(({ blanks }) => {
			const { width, height } = blanks[0]!;
			const { upright, turned } = waysOf({ width, height }, entry);
			return width >= height ? { across: upright, down: turned } : { across: turned, down: upright };
		});
		const alreadyCut = cutSheets.filter((sheet) => placeInStock(sheet.stock, stock) === place).length;
		return {
			stock: entry,
			width: width / (scale || 1),
			height: height / (scale || 1),
			most: Math.min(blanks.length, Math.max(0, (entry.count ?? Infinity) - alreadyCut)),
			alreadyCut,
			isBought: isBought(entry),
			givesAcross: ways.map(({ across }) => across),
			givesDown: ways.map(({ down }) => down),
		};
	});
	const isOfUse = ({ most, givesAcross, givesDown }: SheetType) =>
		most > 0 && (givesAcross.includes(true) || givesDown.includes(true));
	return { types, sheets: sheets.filter(isOfUse), scale: scale || 1 };
}

/** The blanks by size, the largest first. */
function blankTypes(blanks: readonly Blank[], scale: number): readonly BlankType[] {
	const types = new Map<string, { long: number; short: number; blanks: Blank[] }>();
	for (const blank of blanks) {
		const long = Math.max(blank.width, blank.height) / scale;
		const short = Math.min(blank.width, blank.height) / scale;
		const key = `${long} ${short}`;
		const type = types.get(key);
		if (type) type.blanks.push(blank);
		else types.set(key, { long, short, blanks: [blank] });
	}
	return [...types.values()].sort((a, b) => b.long * b.short - a.long * a.short || b.long - a.long);
}
