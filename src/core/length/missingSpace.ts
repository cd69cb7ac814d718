import { fraction } from './fraction.ts';
import type { Problem } from './reading.ts';
import type { Token, Tokens } from './tokens.ts';

/** A fraction that stands by itself, and what it may mean. */
interface Ambiguous {
	readonly start: number;
	readonly end: number;
	/** With a space put back between whole and fraction, then as it stands: each a text that is read in one way only. */
	readonly meanings: readonly string[];
}

/**
 * The problem of inches whose fraction is above one because a space may be missing: `21/8` may be 2 1/8. Undefined where
 * no fraction can be read so: `9/8`, `10/8`, `2 5/8`.
 */
export function missingSpaceProblem({ text, tokens }: Tokens): Problem | undefined {
	const found = tokens.flatMap((token, at) => (token.kind === 'slash' ? ambiguousAt(text, tokens, at) : []));
	const [first] = found;
	if (first === undefined) return undefined;
	const most = Math.max(...found.map(({ meanings }) => meanings.length));
	const readings = Array.from({ length: most }, (_, which) =>
		found.reduceRight(
			(reading, { start, end, meanings }) =>
				reading.slice(0, start) + (meanings[which] ?? meanings.at(-1))! + reading.slice(end),
			text,
		),
	);
	const [asTyped, ...spaced] = first.meanings.toReversed();
	const ways = spaced.reverse().map((meaning) => `${meaning} (a space is missing)`);
	return {
		problem: `“${text.slice(first.start, first.end)}” can be read in more than one way: ${[...ways, asTyped].join(' or ')}?`,
		readings,
	};
}

/** The fraction around a slash, unless a whole number stands before it or no space can be missing in it. */
function ambiguousAt(text: string, tokens: readonly Token[], slash: number): Ambiguous[] {
	const [over, under] = [tokens[slash - 1], tokens[slash + 1]];
	if (over?.kind !== 'number' || under?.kind !== 'number' || !over.isWhole || !under.isWhole) return [];
	const before = tokens[slash - 2];
	const isMixed = before?.kind === 'number' || (before?.kind === 'minus' && tokens[slash - 3]?.kind === 'number');
	if (isMixed || under.value.numerator === 0n) return [];
	const isAboveOne = over.value.numerator > under.value.numerator; // whole numbers both
	if (!isAboveOne) return [];
	const digits = text.slice(over.start, over.end);
	const parts = text.slice(under.start, under.end);
	const spaced = Array.from(
		digits.slice(1),
		(_, at) => [digits.slice(0, at + 1), digits.slice(at + 1)] as const,
	).filter(([whole, rest]) => !whole.startsWith('0') && !rest.startsWith('0') && BigInt(rest) < BigInt(parts));
	if (spaced.length === 0) return [];
	const meanings = spaced.map(([whole, rest]) => `${whole} ${rest}/${parts}`);
	return [{ start: over.start, end: under.end, meanings: [...meanings, mixed(BigInt(digits), BigInt(parts))] }];
}

/** A fraction above one as a whole number and a fraction in lowest terms: 21/8 is `2 5/8`. */
function mixed(over: bigint, under: bigint): string {
	const whole = over / under;
	const rest = fraction(over % under, under);
	return rest.numerator === 0n ? `${whole}` : `${whole} ${rest.numerator}/${rest.denominator}`;
}
