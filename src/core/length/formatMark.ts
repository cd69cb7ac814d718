import { formatLength, type Scale } from './formatLength.ts';
import { inches, type Length, mm } from './length.ts';
import { onRuler } from './ruler.ts';

/** The graduations by which hands mark a wall or an undermount: 1 mm, or 0.5 mm where the show's ruler has it; 1/16 in. */
const markedBy = ({ unit, ruler }: Scale): Length =>
	unit === 'in' ? inches(1 / 16) : ruler === mm(0.5) ? ruler : mm(1);

/** A length that is marked by hand, to the nearest graduation, the upper one half way: where hooks, hinges and gaps are. */
export const toMark = (value: number, scale: Scale): Length => onRuler(value, markedBy(scale));

/** The same as it is shown, without its unit: a worked-out 604.5 mm is marked at `605`. */
export const formatMark = (value: number, scale: Scale): string => formatLength(toMark(value, scale), scale);

/** The same in a sentence: `605 mm`, `23 13/16 in`. */
export const formatMarkWithUnit = (value: number, scale: Scale): string => `${formatMark(value, scale)} ${scale.unit}`;
