import { type LengthContext, parseLength, type ReadLength } from './parseLength.ts';
import type { Reading } from './reading.ts';

/** How many texts are remembered, at most: the cells of a long show, and no more than a few hundred kilobytes. */
const mostRemembered = 20_000;

const remembered = new Map<string, Reading<ReadLength>>();

/** What `parseLength` gives, remembered: the same few texts are read again whenever a setting of the show changes. */
export function rememberedLength(text: string, context: LengthContext): Reading<ReadLength> {
	const key = `${context.unit}${context.isUnitStated ? '!' : ''}${context.allowZero ? '0' : ''}${context.greatest ?? ''} ${text}`;
	const known = remembered.get(key);
	if (known) return known;
	const reading = parseLength(text, context);
	if (remembered.size >= mostRemembered) remembered.clear();
	remembered.set(key, reading);
	return reading;
}
