import { formatLength, formatWithUnit } from '../length/formatLength.ts';
import { nearestLength } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';

/** Ways to say lengths as they are shown: bare, with the unit, and two as a size with the unit once. */
export function sayer(settings: Settings) {
	const n = (value: number) => formatLength(nearestLength(value), settings);
	const say = (value: number) => formatWithUnit(nearestLength(value), settings);
	return { n, say, size: (width: number, height: number) => `${n(width)} × ${say(height)}` };
}
