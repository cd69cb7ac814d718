import type { Length } from '../length/length.ts';
import type { BoardPlan } from '../sheets/boardPlan.ts';
import type { Blank } from '../show/blank.ts';
import { type Stock, stockKey } from '../stock/stock.ts';
import { groupBy } from '../values/groupBy.ts';
import { type Need, take } from './getLine.ts';

/** The area of a blank, in square units of a `Length`. */
const areaOf = ({ width, height }: { readonly width: Length; readonly height: Length }) =>
	BigInt(width) * BigInt(height);

/** How much of a board each print takes, by area; spares are nobody's, and so are blanks of prints that are gone. */
function takenOf(blanks: readonly Blank[]): ReadonlyMap<number, bigint> {
	const taken = new Map<number, bigint>();
	for (const blank of blanks) if (blank.row > 0) take(taken, blank.row - 1, areaOf(blank));
	return taken;
}

/**
 * What the plans of boards, glazing and backing take, one for each size that they are bought in. Of what is counted, what
 * the plan takes is there; of the rest nothing. What falls out of windows is not got.
 */
export const sheetNeeds = (plans: readonly BoardPlan[]): readonly Need[] =>
	plans.flatMap(({ board, material, layouts }) => {
		const taken = takenOf(layouts.flatMap(({ blanks }) => blanks));
		const pieces = groupBy(
			layouts.filter(({ stock }) => stock.kind !== 'drop-out'),
			({ stock }) => entryKey(stock),
		);
		// What is bought stands before what is left over from earlier.
		return [...pieces.values()]
			.toSorted((a, b) => rankOf(a[0]!.stock) - rankOf(b[0]!.stock))
			.map((own): Need => {
				const { kind, width, height, count, pack, price } = own[0]!.stock;
				const there = count === undefined ? 0 : own.length;
				return {
					kind: material ?? 'board',
					name: board,
					size: { width, height },
					...((kind === 'offcut' || kind === 'blank') && { piece: kind }),
					wanted: own.length,
					there,
					pack,
					price,
					taken,
					cutFor: takenOf(own.flatMap(({ blanks }) => blanks)),
				};
			});
	});

const rankOf = ({ kind }: Stock) => (kind === 'offcut' ? 1 : 0);

const entryKey = (stock: Stock): string =>
	[stockKey(stock), stock.kind, stock.width, stock.height, stock.price, stock.pack].join(' ');

/** Blanks that are not planned, for the show lists nothing that they could be cut from: to get by their size. */
export function blankNeeds(
	kind: 'board' | 'glazing' | 'backing',
	blanks: readonly (Blank & { readonly name: string })[],
): readonly Need[] {
	const alike = groupBy(blanks, ({ name, width, height }) => {
		const [long, short] = width > height ? [width, height] : [height, width];
		return `${name} ${long} ${short}`;
	});
	return [...alike.values()].map((own) => ({
		kind,
		name: own[0]!.name,
		size: { width: own[0]!.width, height: own[0]!.height },
		wanted: own.length,
		there: 0,
		pack: 1,
		price: undefined,
		taken: takenOf(own),
	}));
}
