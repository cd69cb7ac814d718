import { finestSteps, formatFiner, formatLength, type Scale } from '../../length/formatLength.ts';
import { isSame, type Length, nearestLength, zero } from '../../length/length.ts';
import type { Measure, Sides, Usual } from '../measure.ts';

/** The lengths of a sentence, in the show's unit. */
export interface Say {
	readonly unit: Scale['unit'];
	/** A length with its unit: "70 mm". */
	readonly say: (value: Measure | Usual) => string;
	/** A length whose unit another one of the sentence names. */
	readonly figure: (value: Measure | Usual) => string;
	/** A size, with the unit once: "600 × 450 mm". */
	readonly size: (sides: Sides) => string;
}

/**
 * Writes a sentence whose figures do not contradict it: "side 40 is under the least border of 40 mm" is written with 39.96,
 * for lengths which do not count as equal must not look alike in one sentence, nor what is more than nothing look like it.
 */
export function writeSentence(scale: Scale, write: (say: Say) => string): string {
	for (let steps = 0; ; steps++) {
		const { say, isContradicted } = sayer(scale, steps);
		const text = write(say);
		if (!isContradicted() || steps === finestSteps[scale.unit]) return text;
	}
}

function sayer(scale: Scale, steps: number): { readonly say: Say; readonly isContradicted: () => boolean } {
	/** What has been said so far, by what it looks like. */
	const said = new Map<string, Length>();
	let isContradicted = false;
	const { unit } = scale;
	function figure(value: Measure | Usual): string {
		const length = nearestLength(typeof value === 'number' ? value : value.usual);
		const text = steps === 0 ? formatLength(length, scale) : formatFiner(length, scale, steps);
		const alike = text === '0' ? zero : said.get(text);
		if (alike !== undefined && !isSame(alike, length)) isContradicted = true;
		said.set(text, length);
		return text;
	}
	const say = (value: Measure | Usual) => `${figure(value)} ${unit}`;
	const size = ({ width, height }: Sides) => `${figure(width)} × ${say(height)}`;
	return { say: { unit, figure, say, size }, isContradicted: () => isContradicted };
}
