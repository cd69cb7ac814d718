import { finestSteps, formatFiner, formatLength, type Scale } from '../length/formatLength.ts';
import { isSame, type Length, nearestLength, zero } from '../length/length.ts';

/** The lengths of sentences, in the show's unit. */
export interface Figures {
	/** A length with its unit: "70 mm". */
	readonly say: (value: Length | number) => string;
	/** A length whose unit another one of the sentence names. */
	readonly figure: (value: Length | number) => string;
	/** The sentence that is written; again, and finer, where figures of it would contradict it by their rounding. */
	readonly sentence: (write: () => string) => string;
}

/** What a sentence has said so far. */
interface Said {
	/** Lengths by what they look like. */
	readonly lengths: Map<string, Length>;
	isContradicted: boolean;
}

/**
 * Figures that do not contradict their sentence: "side 40 is under the least border of 40 mm" is written with 39.96, for
 * lengths which do not count as equal must not look alike in one sentence, nor what is more than nothing look like it.
 */
export function makeFigures(scale: Scale): Figures {
	let steps = 0;
	let said: Said = { lengths: new Map(), isContradicted: false };

	function figure(value: Length | number): string {
		const length = nearestLength(value);
		const text = steps === 0 ? formatLength(length, scale) : formatFiner(length, scale, steps);
		const alike = text === '0' ? zero : said.lengths.get(text);
		if (alike !== undefined && !isSame(alike, length)) said.isContradicted = true;
		said.lengths.set(text, length);
		return text;
	}

	function sentence(write: () => string): string {
		let text: string;
		for (steps = 0; ; steps++) {
			said = { lengths: new Map(), isContradicted: false };
			text = write();
			if (!said.isContradicted || steps === finestSteps[scale.unit]) break;
		}
		steps = 0;
		return text;
	}

	return { figure, say: (value) => `${figure(value)} ${scale.unit}`, sentence };
}
