import { addFractions, fraction, type Fraction } from './fraction.ts';
import type { Problem } from './reading.ts';
import type { Token, Tokens } from './tokens.ts';

/** A number that was typed, exactly, and the unit behind it. */
export interface Quantity {
	/** At or above zero; the sign is apart. */
	readonly value: Fraction;
	readonly isNegative: boolean;
	/** Whether it was typed as a fraction (`2 5/8`), not as a decimal. */
	readonly isFraction: boolean;
	/** The place of the first piece after it. */
	readonly next: number;
}

/**
 * Reads the number that begins at a place among the pieces: `70`, `2.625`, `5/8`, `2 5/8`, `2-5/8`, with a sign or not.
 * @returns a problem with `problem: ''` where the pieces are no number
 */
export function numberAt(tokens: readonly Token[], at: number): Quantity | Problem {
	let next = at;
	const sign = tokens[next];
	const isNegative = sign?.kind === 'minus';
	if (sign?.kind === 'minus' || sign?.kind === 'plus') next++;
	const first = tokens[next];
	if (first?.kind !== 'number') return { problem: '' };
	const whole = { value: first.value, isNegative, isFraction: false, next: next + 1 };
	if (tokens[next + 1]?.kind === 'slash') return fractionAt(tokens, next, isNegative);
	const fractionStart = tokens[next + 1]?.kind === 'minus' ? next + 2 : next + 1;
	if (tokens[fractionStart]?.kind !== 'number' || tokens[fractionStart + 1]?.kind !== 'slash') return whole;
	const part = fractionAt(tokens, fractionStart, isNegative);
	if ('problem' in part) return part;
	if (!first.isWhole || part.value.numerator >= part.value.denominator) return { problem: '' };
	return { ...part, value: addFractions(first.value, part.value) };
}

function fractionAt(tokens: readonly Token[], at: number, isNegative: boolean): Quantity | Problem {
	const [over, , under] = tokens.slice(at, at + 3);
	if (over?.kind !== 'number' || under?.kind !== 'number' || !over.isWhole || !under.isWhole) return { problem: '' };
	if (under.value.numerator === 0n) return { problem: `${over.value.numerator}/0 divides by zero, so it is no length` };
	const value = fraction(over.value.numerator, under.value.numerator);
	return { value, isNegative, isFraction: true, next: at + 3 };
}

/**
 * The problem of a text in which a number may be meant in more than one way, with each meaning offered; undefined where
 * there is no such number.
 */
export function unsureProblem({ text, tokens }: Tokens, isWholeLikelier: boolean): Problem | undefined {
	const unsure = tokens.filter((token) => token.kind === 'unsure number');
	const first = unsure[0];
	if (first === undefined) return groupedBySpaces({ text, tokens });
	const readings = [0, 1].flatMap((which) => {
		if (!unsure.every(({ meanings }) => which < meanings.length || meanings.length === 1)) return [];
		let reading = text;
		for (const { start, end, meanings } of unsure.toReversed())
			reading = reading.slice(0, start) + (meanings[which] ?? meanings[0])! + reading.slice(end);
		return [reading];
	});
	const different = [...new Set(isWholeLikelier ? readings : readings.toReversed())];
	return { problem: unsureSentence(text.slice(first.start, first.end), first.meanings), readings: different };
}

function unsureSentence(digits: string, meanings: readonly string[]): string {
	if (meanings.length === 0) return `“${digits}” has more than one decimal mark`;
	if (meanings.length === 1) return `“${digits}” has a mark between thousands: ${meanings[0]!}?`;
	return `“${digits}” can be read in more than one way: ${meanings.join(' or ')}?`;
}

/** `1 500 mm`: digits in groups of three with spaces between them. */
function groupedBySpaces({ text }: Tokens): Problem | undefined {
	const grouped = /(?<![\d.,/] ?)\d{1,3}(?: \d{3})+(?![\d.,/]| ?\/)/.exec(text)?.[0];
	if (grouped === undefined) return undefined;
	const joined = grouped.replaceAll(' ', '');
	return {
		problem: `“${grouped}” is two numbers. A size has an x between them, and one number no space in it`,
		readings: [text.replace(grouped, joined)],
	};
}
