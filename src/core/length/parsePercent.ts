import type { Fraction } from './fraction.ts';
import { quoted } from './parseLength.ts';
import { numberAt, unsureProblem } from './quantity.ts';
import type { Reading } from './reading.ts';
import { tokenize } from './tokens.ts';

/** Reads a share in per cent, zero or more: `15 %`, `12.5`. */
export function parsePercent(text: string): Reading<number> {
	const read = parseShare(text);
	return 'problem' in read ? read : { value: Number(read.value.numerator) / Number(read.value.denominator) };
}

/** The same, exactly: how many per cent. */
export function parseShare(text: string): Reading<Fraction> {
	const pieces = tokenize(text);
	const unsure = unsureProblem(pieces, false);
	if (unsure !== undefined) return unsure;
	const number = numberAt(pieces.tokens, 0);
	const isEnd =
		!('problem' in number) &&
		(number.next === pieces.tokens.length ||
			(number.next === pieces.tokens.length - 1 && pieces.tokens[number.next]?.kind === 'per cent'));
	if (!isEnd) return { problem: `${quoted(text)} is not a share. Type one such as 15 %` };
	if (number.isNegative && number.value.numerator > 0n)
		return { problem: `${quoted(text)} is below zero, which a share cannot be` };
	return { value: number.value };
}
