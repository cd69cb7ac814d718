import type { CutSheet } from '../show/cutSheet.ts';

/** No vowels, so that no mark is a word, and none that is read as a figure. */
const letters = 'BCDFGHJKLMNPRSTVWXZ';

/**
 * A mark of three letters for how sheets are cut, in the order of their numbers: "KTB". Plans of one show differ from one
 * search to the next, and a page that was printed before says so by its mark. Ticks change nothing of it.
 */
export function planMark(sheets: readonly Pick<CutSheet, 'stock' | 'blanks' | 'cuts'>[]): string {
	const text = JSON.stringify(
		sheets.map(({ stock, blanks, cuts }) => [
			[stock.board, stock.width, stock.height],
			blanks.map(({ rowId, copy, part, x, y, width, height }) => [rowId, copy, part, x, y, width, height]),
			cuts.map(({ piece: { x, y, width, height }, across, at }) => [x, y, width, height, across, at]),
		]),
	);
	// FNV-1a, in 32 bits.
	let hash = 0x811c9dc5;
	for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193) >>> 0;
	const size = letters.length;
	return [hash, Math.floor(hash / size), Math.floor(hash / size ** 2)].map((part) => letters[part % size]).join('');
}
