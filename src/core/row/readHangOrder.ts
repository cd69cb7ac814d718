import { quoted } from '../length/parseLength.ts';
import { unsureProblem } from '../length/quantity.ts';
import type { Reading } from '../length/reading.ts';
import { tokenize } from '../length/tokens.ts';

/** Reads a number in the order on a wall: `3`, or `2.5` for between two. Digits that may be meant in two ways are not guessed. */
export function readHangOrder(text: string): Reading<number> {
	const unsure = unsureProblem(tokenize(text), true);
	if (unsure !== undefined) return unsure;
	return /^-?\d+(?:[.,]\d+)?$/.test(text)
		? { value: Number(text.replace(',', '.')) }
		: { problem: `${quoted(text)} is not a place in the hang order. Type a number, such as 3` };
}
