import { zero } from '../length/length.ts';
import type { Board, Offcut } from '../settings/board.ts';
import type { FrameMaterial } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import { nameKey } from '../values/named.ts';
import type { Stock } from './stock.ts';

/**
 * The stock of a board in all its sizes: the entries of the settings that have its name, whatever their capitals, and
 * the offcuts of it that were kept from earlier.
 */
export function stockOf(board: string, { boards, offcuts }: Settings): readonly Stock[] {
	const own = boards.filter(({ name }) => nameKey(name) === nameKey(board));
	const kept = offcuts.filter((offcut) => nameKey(offcut.board) === nameKey(board));
	return [...own.map(stockOfEntry), ...kept.map((offcut) => stockOfOffcut(offcut, own[0]?.name ?? offcut.board))];
}

/** The stock of a glazing or a backing in all its sizes. */
export function stockOfMaterial(name: string, material: FrameMaterial, settings: Settings): readonly Stock[] {
	const list: readonly Board[] = settings[material];
	return list
		.filter((entry) => nameKey(entry.name) === nameKey(name))
		.map((entry) => ({ ...stockOfEntry(entry), material }));
}

const stockOfOffcut = ({ width, height, grain, count = 1 }: Offcut, board: string): Stock => ({
	board,
	kind: 'offcut',
	width,
	height,
	trim: zero,
	grain,
	price: 0,
	pack: 1,
	count,
});

const stockOfEntry = ({ name, kind, width, height, trim, grain, price, pack, count }: Board): Stock => ({
	board: name,
	kind,
	width,
	height,
	// A ready-cut blank is used as it is, whatever edge is typed beside it.
	trim: kind === 'sheet' ? (trim ?? zero) : zero,
	grain,
	// What is there is not bought, whatever others like it cost.
	price: count === undefined ? price : 0,
	pack: pack ?? 1,
	count,
});
