import { type Part, partsOf } from '../row/partsOf.ts';
import type { Settings } from '../settings/settings.ts';
import { type Stock, waysOf } from '../stock/stock.ts';
import { stockOf } from '../stock/stockOf.ts';
import { clearEach, cutToSuit } from './candidates.ts';
import type { Finder } from './found.ts';

/** Rows of one show ask for the same few boards: their stock is put together once. */
const known = new WeakMap<Settings, Map<string, readonly Stock[]>>();

/** Every size of a board that is there or can be bought. */
function stockAtHand(board: string, settings: Settings): readonly Stock[] {
	const boards = known.get(settings) ?? new Map<string, readonly Stock[]>();
	known.set(settings, boards);
	const stock = boards.get(board) ?? stockOf(board, settings).filter(({ count }) => count !== 0);
	boards.set(board, stock);
	return stock;
}

const isGiven = (part: Part, settings: Settings): boolean =>
	stockAtHand(part.board, settings).some((stock) => {
		const { upright, turned } = waysOf(part, stock);
		return upright || turned;
	});

/** `no-board`: no sheet or ready-cut blank in stock gives this blank. Nothing is found in a show without any stock. */
export const noBoard: Finder = (context) => {
	const { settings, hasMount, solution, boards } = context;
	const { mountWidth, mountHeight } = solution.solved;
	if (settings.boards.length === 0 || !hasMount) return [];
	if (mountWidth === undefined || mountHeight === undefined) return [];
	const missing = partsOf(context, settings).find((part) => !isGiven(part, settings));
	if (missing === undefined) return [];
	const column = missing.part === 'undermount' ? 'board' : boards[missing.part].cell;
	const isThere = stockAtHand(missing.board, settings).length > 0;
	return [
		{
			code: 'no-board',
			level: 'stop',
			cells: isThere ? ['mountWidth', 'mountHeight'] : [column],
			figures: () => {
				const { board, part, width, height } = missing;
				return isThere
					? { kind: 'too small', board, part, blank: { width, height } }
					: { kind: 'not in stock', board, part };
			},
			candidates: () => [
				...clearEach(context, [column, 'mount', 'mount width', 'mount height']),
				...[...new Set(settings.boards.map(({ name }) => name))].map((board) => ({
					offer: { kind: 'set name' as const, column, name: board },
					change: { [column]: board },
				})),
				cutToSuit,
			],
		},
	];
};
