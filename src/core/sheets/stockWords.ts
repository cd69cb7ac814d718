import { formatSize, formatWithUnit, type Scale } from '../length/formatLength.ts';
import type { Board } from '../show/settings.ts';

/** Why nothing can ever be cut from an entry of the stock, in a sentence; undefined where something may. */
export function uselessWords({ width, height, trim, count }: Board, scale: Scale): string | undefined {
	if (trim !== undefined && 2 * trim >= Math.min(width, height)) {
		const size = formatSize(width, height, scale);
		return `The trim, ${formatWithUnit(trim, scale)} off each side, leaves nothing of ${size}. Make it less.`;
	}
	if (count === 0) return 'None is at hand, so nothing is cut from it. Left blank, as many as are needed are bought.';
	return undefined;
}
