import { formatLength, formatWithUnit } from '../length/formatLength.ts';
import { type Length, sameWithin } from '../length/length.ts';
import { parseLength } from '../length/parseLength.ts';
import type { Settings } from '../settings/settings.ts';

/**
 * A sum of lengths as it is shown: `1.4 + 0.3 = 1.7 mm`. Where what is shown is rounded so that it would not add up, as
 * thin layers are in sixteenths of an inch, the sum alone is said: `about 1/16 in`.
 */
export function sumWords(parts: readonly Length[], sum: Length, settings: Settings): string {
	const shown = parts.map((part) => formatLength(part, settings));
	const lengthOf = (text: string) => {
		const read = parseLength(text, settings);
		return 'value' in read ? read.value.length : Number.NaN;
	};
	const added = shown.reduce((all, text) => all + lengthOf(text), 0);
	const whole = formatWithUnit(sum, settings);
	return Math.abs(added - lengthOf(formatLength(sum, settings))) <= sameWithin
		? `${shown.join(' + ')} = ${whole}`
		: `about ${whole}`;
}
