import { formatSize, formatWithUnit, type Scale } from '../length/formatLength.ts';
import type { Board } from '../settings/board.ts';

/** Why nothing can ever be cut from an entry of the stock, in a sentence; undefined where something may. */
export function uselessWords({ kind, width, height, trim, count }: Board, scale: Scale): string | undefined {
	if (kind === 'sheet' && trim !== undefined && 2 * trim >= Math.min(width, height)) {
		const size = formatSize(width, height, scale);
		return `The trim, ${formatWithUnit(trim, scale)} off each side, leaves nothing of ${size}. Make it less.`;
	}
	if (count === 0) return 'None in stock, so nothing is cut from it. Left blank, as many as are needed are bought.';
	return undefined;
}

/** That an entry of the stock is there already, in a sentence; undefined where it is another board, or another size. */
export function twiceWords({ name, kind, width, height }: Board, before: readonly Board[]): string | undefined {
	const isSame = (other: Board) =>
		other.name === name && other.kind === kind && other.width === width && other.height === height;
	if (!before.some(isSame)) return undefined;
	return `This size of “${name}” stands above too. If it is the same board, put how many there are into one of the two.`;
}
