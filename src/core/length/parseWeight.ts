import type { BottomWeight } from './bottomWeight.ts';
import { fraction } from './fraction.ts';
import { bareName } from './paperSizes.ts';
import { parseLength, quoted, typedLength, unsureFraction } from './parseLength.ts';
import { numberAt, unsureProblem } from './quantity.ts';
import type { Reading, Unit } from './reading.ts';
import { tokenize } from './tokens.ts';

/** The greatest bottom weight that is read, in percent of the top. */
const greatestPercent = 1000n;

/**
 * Reads a bottom weight: `12 %` or a bare `12` (per cent of the top), `6 mm`, `none`, `optical centre`.
 * A bare fraction is not read, both meanings are offered.
 *
 * @param statedUnit the unit that a CSV header states for bare numbers; undefined where it states none, or per cent
 */
export function parseWeight(text: string, statedUnit?: Unit): Reading<BottomWeight> {
	const name = bareName(text);
	if (name === 'none') return { value: { kind: 'share', numerator: 0, denominator: 1 } };
	if (name === 'opticalcentre' || name === 'opticalcenter') return { value: { kind: 'optical centre' } };
	const pieces = tokenize(text);
	const unsure = unsureProblem(pieces, false);
	if (unsure !== undefined)
		return {
			...unsure,
			readings: (unsure.readings ?? []).filter((reading) => 'value' in parseWeight(reading, statedUnit)),
		};
	const number = numberAt(pieces.tokens, 0);
	if ('problem' in number)
		return { problem: number.problem === '' ? notAWeight(text) : `${quoted(text)} divides by zero` };
	const isBare = number.next === pieces.tokens.length;
	const isPercent = number.next === pieces.tokens.length - 1 && pieces.tokens[number.next]?.kind === 'per cent';
	if (number.isNegative && number.value.numerator > 0n)
		return { problem: `${quoted(text)} is below zero, which a bottom weight cannot be` };
	if (isBare && number.isFraction && statedUnit !== 'in')
		return unsureFraction(
			pieces.text,
			statedUnit ?? '%',
			statedUnit === undefined ? 'a bottom weight is often in' : 'the column is in',
			(reading) => parseWeight(reading, statedUnit),
		);
	if (isPercent || (isBare && statedUnit === undefined)) return share(number, text);
	if ('problem' in typedLength(pieces.tokens)) return { problem: notAWeight(text) };
	const read = parseLength(text, { unit: statedUnit ?? 'mm', allowZero: true });
	return 'problem' in read ? read : { value: { kind: 'length', more: read.value.length } };
}

const notAWeight = (text: string) =>
	`${quoted(text)} is not a bottom weight. Type a share such as 12 %, a length such as 6 mm, none or optical centre`;

function share(
	{ value }: Exclude<ReturnType<typeof numberAt>, { problem: string }>,
	text: string,
): Reading<BottomWeight> {
	if (value.numerator > greatestPercent * value.denominator)
		return { problem: `${quoted(text)} is more than ${greatestPercent} %, the greatest bottom weight that is read` };
	const part = fraction(value.numerator, value.denominator * 100n);
	const [numerator, denominator] = [Number(part.numerator), Number(part.denominator)];
	if (!Number.isSafeInteger(numerator) || !Number.isSafeInteger(denominator))
		return { problem: `${quoted(text)} has too many digits for a bottom weight` };
	return { value: { kind: 'share', numerator, denominator } };
}
