import type { BottomWeight } from '../length/bottomWeight.ts';
import { upToRuler } from '../length/ruler.ts';
import type { Settings } from '../settings/settings.ts';
import type { Cells } from './cells.ts';
import type { Weight } from './equations.ts';

/** The same border at top and bottom. */
export const evenWeight: Weight = { times: 1, more: 0 };

/** How the bottom follows from the top, for a share or a length. The optical centre depends on the mount: undefined. */
export function fixedWeight(weight: BottomWeight): Weight | undefined {
	switch (weight.kind) {
		case 'share':
			return { times: (weight.denominator + weight.numerator) / weight.denominator, more: 0 };
		case 'length':
			return { times: 1, more: weight.more };
		case 'optical centre':
			return undefined;
	}
}

/** The weight in force: the row's own, else the show's. */
export const weightOf = (cells: Cells, settings: Settings): BottomWeight => cells.bottomWeight ?? settings.bottomWeight;

/**
 * The border that a row starts from, not rounded: the side typed in the row, else the top, else the top that a typed
 * bottom gives by its weight, else the show's border put up to the ruler.
 */
export function startingBorder(cells: Cells, settings: Settings): number {
	if (cells.side !== undefined) return cells.side;
	if (cells.top !== undefined) return cells.top;
	const weight = fixedWeight(weightOf(cells, settings));
	if (cells.bottom !== undefined && weight) {
		const top = (cells.bottom - weight.more) / weight.times;
		return top > 0 ? top : cells.bottom; // a weight that would leave no top is none
	}
	return upToRuler(settings.border, settings.ruler);
}
