import { timesRounded } from './fraction.ts';
import { greatestLength, type Length, length } from './length.ts';
import { notALength, parseLength, quoted } from './parseLength.ts';
import { numberAt, unsureProblem } from './quantity.ts';
import type { Reading, Unit } from './reading.ts';
import { tokenize } from './tokens.ts';

/** Units of a `Length` in one of each measure that boards are sold by. A ply is 0.35 mm: common practice, 4-ply is 1.4 mm. */
const unitsIn = { micron: 10_000n, ply: 3_500_000n };

const soldBy = /^(.*?)[\s-]*(?:(microns?|[µμu]m)|ply)$/i;

/** Reads a thickness: a length, or as boards are sold, `1400 micron`, `1400 µm`, `4-ply`. */
export function parseThickness(text: string, context: { readonly unit: Unit }): Reading<Length> {
	const sold = soldBy.exec(text.trim());
	if (sold === null) {
		const read = parseLength(text, context);
		return 'value' in read ? { value: read.value.length } : read;
	}
	const pieces = tokenize(sold[1]!);
	const measure = sold[2] === undefined ? 'ply' : 'micron';
	const unsure = unsureProblem(pieces, true);
	if (unsure !== undefined)
		return { ...unsure, readings: (unsure.readings ?? []).map((reading) => `${reading} ${measure}`) };
	const number = numberAt(pieces.tokens, 0);
	if ('problem' in number || number.next !== pieces.tokens.length) return notALength(text);
	const units = timesRounded(number.value, unitsIn[measure]);
	if (units === 0n) return { problem: `${quoted(text)} is not above zero: a thickness must be` };
	if (number.isNegative) return { problem: `${quoted(text)} is below zero, which a thickness cannot be` };
	if (units > BigInt(greatestLength))
		return { problem: `${quoted(text)} is more than 10 m, the longest length allowed` };
	return { value: length(Number(units)) };
}
