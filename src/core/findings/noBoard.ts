import { type Part, partsOf } from '../sheets/partsOf.ts';
import { type Stock, waysOf } from '../sheets/stock.ts';
import { stockOf } from '../sheets/stockOf.ts';
import type { Settings } from '../show/settings.ts';
import { shownText } from '../show/shownText.ts';
import { clearEach, cutToSuit } from './candidates.ts';
import type { Finder } from './found.ts';
import { sizeText } from './sizeText.ts';

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

/** `no-board`: no sheet or ready-cut blank in stock gives this blank. A show without any stock is told nothing. */
export const noBoard: Finder = (context) => {
	const { row, settings, read, solution } = context;
	const { mountWidth, mountHeight } = solution.solved;
	if (settings.boards.length === 0 || read.cells.mount.kind === 'none') return [];
	if (mountWidth === undefined || mountHeight === undefined) return [];
	const { innerMount } = read.cells;
	const missing = partsOf(row, { solved: solution.solved, innerMount }, settings).find(
		(part) => !isGiven(part, settings),
	);
	if (missing === undefined) return [];
	const isThere = stockAtHand(missing.board, settings).length > 0;
	const what = missing.part === 'mount' ? '' : ` for the ${missing.part}`;
	return [
		{
			code: 'no-board',
			level: 'stop',
			cells: isThere ? ['mountWidth', 'mountHeight'] : ['board'],
			message: () =>
				isThere
					? `No sheet or ready-cut blank of “${shownText(missing.board)}” gives a blank of ${sizeText(context, missing.width, missing.height)}${what}. Take another board, or add a size of it to the stock.`
					: `There is no “${shownText(missing.board)}”${what} in stock. Add it to the boards, or take another.`,
			candidates: () => [
				...clearEach(context, ['board', 'mount', 'mount width', 'mount height']),
				...[...new Set(settings.boards.map(({ name }) => name))].map((board) => ({
					label: () => `Take “${shownText(board)}”`,
					change: { board },
				})),
				cutToSuit,
			],
		},
	];
};
