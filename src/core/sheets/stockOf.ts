import { zero } from '../length/length.ts';
import type { Board, Settings } from '../show/settings.ts';
import type { Stock } from './stock.ts';

/** The stock of a board in all its sizes: the entries of the settings that have its name, whatever their capitals. */
export function stockOf(board: string, { boards }: Settings): readonly Stock[] {
	const wanted = board.trim().toLowerCase();
	return boards.filter(({ name }) => name.trim().toLowerCase() === wanted).map(stockOfEntry);
}

const stockOfEntry = ({ name, kind, width, height, trim, grain, price, pack, count }: Board): Stock => ({
	board: name,
	kind,
	width,
	height,
	trim: trim ?? zero,
	grain,
	price,
	pack: pack ?? 1,
	count,
});
