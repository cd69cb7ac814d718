import { nameKey } from '../values/named.ts';
import type { RowResult } from '../findings/rowResult.ts';
import { inches, type Length, minus, mm, zero } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import { isInnerTaped } from '../row/innerMount.ts';
import { partsOf } from '../row/partsOf.ts';
import type { Settings } from '../settings/settings.ts';
import type { Blank } from '../show/blank.ts';
import type { Stock, StockKind } from '../stock/stock.ts';
import type { Layout } from './layout.ts';

/** The offcuts of sheets that are cut, as stock that costs nothing. */
export const offcutsOf = (cutSheets: readonly Layout[]): readonly Stock[] =>
	counted(
		cutSheets.flatMap(({ stock: { board, material, grain }, offcuts }) =>
			offcuts.map((size) => ({ ...leftOver(board, 'offcut', size, grain, zero), ...(material && { material }) })),
		),
	);

/**
 * What comes off each side of a drop-out before anything is measured on it. Its back is as large as the window and its
 * bevelled face larger: cut that far inside the edge of the back it is square. Common practice.
 */
const squaringOf = ({ unit }: Settings): Length => (unit === 'in' ? inches(1 / 16) : mm(1));

/**
 * The drop-outs of the windows of a board's mounts, as stock that costs nothing. What is cut from one is smaller than
 * the mount it falls out of, so in the order of size each is there in time.
 * @param blanks all blanks of the board, spares left out
 * @param results of the show's rows, by place
 */
export function dropOutsOf(
	blanks: readonly Blank[],
	results: readonly RowResult[],
	boardStock: readonly Stock[],
	settings: Settings,
): readonly Stock[] {
	const [first] = boardStock;
	const trim = squaringOf(settings);
	if (first === undefined) return [];
	const hasGrain = boardStock.some(({ grain }) => grain !== undefined);
	return counted(
		blanks.flatMap((blank) => {
			const size = windowOf(blank, results[blank.row - 1], settings);
			// The long side of a mount lies along the grain; of a square one nobody knows how the grain runs.
			if (size === undefined || (hasGrain && blank.width === blank.height)) return [];
			if (Math.min(size.width, size.height) <= 2 * trim) return [];
			const grain = !hasGrain ? undefined : blank.width > blank.height ? 'width' : 'height';
			return [leftOver(first.board, 'drop-out', size, grain, trim)];
		}),
	);
}

/** The places of the rows in whose windows a drop-out may have been: those of its board and size, from 0. */
export function rowsOfDropOut(
	{ board, width, height }: Pick<Stock, 'board' | 'width' | 'height'>,
	results: readonly RowResult[],
	settings: Settings,
): readonly number[] {
	return results.flatMap((result, place) => {
		if (result.isStopped || result.copies === 0) return [];
		if (result.solved.mountWidth === undefined || result.solved.mountHeight === undefined) return [];
		const isIts = partsOf(result, settings).some((part) => {
			const size = windowOf(part, result, settings);
			return nameKey(part.board) === nameKey(board) && size?.width === width && size.height === height;
		});
		return isIts ? place : [];
	});
}

/** The size of what falls out of a blank's window; none where it is taped to what falls out of the other window of a double mount. */
function windowOf({ part }: Pick<Blank, 'part'>, result: RowResult | undefined, settings: Settings) {
	if (result?.read.cells.innerMount && isInnerTaped(settings)) return undefined;
	const { windowWidth: width, windowHeight: height } = result?.solved ?? {};
	if (width === undefined || height === undefined || part === 'undermount') return undefined;
	const shown = part === 'inner mount' ? (result?.read.cells.innerMount ?? zero) : zero;
	const size = { width: minus(width, shown, shown), height: minus(height, shown, shown) };
	return size.width > 0 && size.height > 0 ? size : undefined;
}

const leftOver = (
	board: string,
	kind: StockKind,
	{ width, height }: Size,
	grain: 'width' | 'height' | undefined,
	trim: Length,
): Stock => ({ board, kind, width, height, trim, grain, price: 0, pack: 1, count: 1 });

/** Equal left-overs together, with how many there are. */
export function counted(pieces: readonly Stock[]): readonly Stock[] {
	const entries = new Map<string, { piece: Stock; count: number }>();
	for (const piece of pieces) {
		const key = `${piece.kind} ${piece.width} ${piece.height} ${piece.grain}`;
		const entry = entries.get(key);
		if (entry) entry.count += piece.count ?? 1;
		else entries.set(key, { piece, count: piece.count ?? 1 });
	}
	return [...entries.values()].map(({ piece, count }) => ({ ...piece, count }));
}
