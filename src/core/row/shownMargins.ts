import type { Scale } from '../length/formatLength.ts';
import { inches, type Length, length, minus, mm } from '../length/length.ts';
import { isOnRuler } from '../length/ruler.ts';
import type { OnPaper } from './paper.ts';

/** A length as `formatLength` shows it: on the ruler as it is, else to 0.1 mm; in inches to 1/64 in. */
function asShown(value: Length, { unit, ruler }: Scale): Length {
	if (unit !== 'in' && isOnRuler(value, ruler)) return value;
	const step = unit === 'in' ? inches(1 / 64) : mm(0.1);
	return length(Math.sign(value) * Math.round(Math.abs(value) / step) * step);
}

/**
 * The margins of a picture on its paper, as they are shown: with the picture as it is shown they add up to the paper. Each
 * rounded by itself, 9.8 + 309.3 + 9.8 on a paper of 329 look like a slip; here the right one, or the bottom, has what is
 * left.
 */
export function shownMargins({ paper, left, top, right, bottom }: OnPaper, scale: Scale): OnPaper {
	const rest = (outer: Length, before: Length, after: Length) =>
		minus(asShown(outer, scale), asShown(before, scale), asShown(minus(outer, before, after), scale));
	return {
		paper,
		left: asShown(left, scale),
		top: asShown(top, scale),
		right: rest(paper.width, left, right),
		bottom: rest(paper.height, top, bottom),
	};
}
