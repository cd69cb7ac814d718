import { formatLength, type Scale } from '../../core/length/formatLength.ts';
import type { Length } from '../../core/length/length.ts';

/**
 * Whether a measure stands over the ticks of its step, so that the drawing has the height of the screen: where there are
 * four ticks at most, and a figure short enough to be read from two metres there too.
 */
export const isSetOverTicks = (measure: Length, ticks: number, scale: Scale): boolean =>
	ticks <= 4 && formatLength(measure, scale).length <= 4;
