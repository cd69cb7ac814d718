import { nameKey } from '../values/named.ts';
import type { Length } from '../length/length.ts';
import type { FrameMaterial } from '../settings/frame.ts';

/**
 * What blanks come from: a sheet of board; a ready-cut blank, which needs no knife; an offcut kept from an earlier
 * sheet; a drop-out, the piece that falls out of a window.
 */
export type StockKind = 'sheet' | 'blank' | 'offcut' | 'drop-out';

/** One entry of the stock of a board. Two entries of one name are one board in two sizes. */
export interface Stock {
	/** The board's name, as it stands in the settings. */
	readonly board: string;
	/** What it is of; undefined: board. */
	readonly material?: FrameMaterial;
	readonly kind: StockKind;
	/** Before the factory edge is taken off. */
	readonly width: Length;
	readonly height: Length;
	/** The factory edge, taken off each of the four sides before anything is measured. */
	readonly trim: Length;
	/** The side of the sheet that the grain runs along, and with it the long side of each blank; undefined: no grain. */
	readonly grain: 'width' | 'height' | undefined;
	/** Of one pack, in whole minor units of the show's currency. 0: it is there already. Undefined: not known. */
	readonly price: number | undefined;
	/** How many are in a pack, 1 or more. */
	readonly pack: number;
	/** How many are there; undefined: as many as needed. */
	readonly count: number | undefined;
}

/** Tells one board, or glazing or backing, from all others, by what it is of and its name whatever its capitals. */
export const stockKey = ({ board, material }: Pick<Stock, 'board' | 'material'>): string =>
	`${material ?? 'board'} ${nameKey(board)}`;

/** What is asked of a blank before a sheet gives it. */
interface BlankSize {
	readonly width: Length;
	readonly height: Length;
}

/** The ways round in which a piece of stock gives a blank. */
export interface Ways {
	readonly upright: boolean;
	readonly turned: boolean;
}

/**
 * The place in a list of stock that a piece was taken from: the same size, and where there are several, there as it was
 * there, and the same price. A drop-out is the same whatever is taken off to square it.
 * @returns -1 where the list has no such size any more
 */
export function placeInStock(piece: Stock, stock: readonly Stock[]): number {
	const isSameSize = (entry: Stock) =>
		entry.board === piece.board &&
		entry.material === piece.material &&
		entry.kind === piece.kind &&
		entry.width === piece.width &&
		entry.height === piece.height &&
		(entry.trim === piece.trim || entry.kind === 'drop-out');
	const isThereToo = (entry: Stock) => (entry.count === undefined) === (piece.count === undefined);
	const alike = [(entry: Stock) => isThereToo(entry) && entry.price === piece.price, isThereToo, () => true];
	const places = alike.map((isLike) => stock.findIndex((entry) => isSameSize(entry) && isLike(entry)));
	return places.find((place) => place >= 0) ?? -1;
}

/** Whether the piece has to be bought: it has a price, or none is known and it is no left-over. */
export const isBought = ({ kind, price }: Stock): boolean =>
	price === undefined ? kind === 'sheet' || kind === 'blank' : price > 0;

/** The ways round in which the piece gives the blank by its grain and its size, were there nothing else to cut from it. */
export function waysOf({ width, height }: BlankSize, stock: Stock): Ways {
	const [across, down] = [stock.width - 2 * stock.trim, stock.height - 2 * stock.trim];
	const fits = (a: number, b: number) =>
		stock.kind === 'blank' ? a === across && b === down : a <= across && b <= down;
	const alongGrain = (a: number, b: number) =>
		a === b || stock.grain === undefined || stock.grain === (a > b ? 'width' : 'height');
	return {
		upright: fits(width, height) && alongGrain(width, height),
		turned: width !== height && fits(height, width) && alongGrain(height, width),
	};
}
