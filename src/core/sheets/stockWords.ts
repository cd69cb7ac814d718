import { formatLength, formatWithUnit } from '../length/formatLength.ts';
import type { Unit } from '../length/reading.ts';
import type { Board } from '../show/settings.ts';

/** Why nothing can ever be cut from an entry of the stock, in a sentence; undefined where something may. */
export function uselessWords({ width, height, trim, count }: Board, unit: Unit): string | undefined {
	if (trim !== undefined && 2 * trim >= Math.min(width, height)) {
		const size = `${formatLength(width, unit)} × ${formatWithUnit(height, unit)}`;
		return `The trim, ${formatWithUnit(trim, unit)} off each side, leaves nothing of ${size}. Make it less.`;
	}
	if (count === 0) return 'None is at hand, so nothing is cut from it. Left blank, as many as are needed are bought.';
	return undefined;
}
