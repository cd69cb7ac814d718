import { namedSize } from './paperSizes.ts';
import { isInInches, quoted, toLength, typedLength, type TypedLength, unsureFraction } from './parseLength.ts';
import { missingSpaceProblem } from './missingSpace.ts';
import { unsureProblem } from './quantity.ts';
import type { Problem, Reading, Unit } from './reading.ts';
import type { NamedSize, Size } from './size.ts';
import { tokenize, type Token } from './tokens.ts';

/** What a typed size is read by. */
export interface SizeContext {
	/** The unit of bare numbers. */
	readonly unit: Unit;
	/** Whether the unit was stated for this very cell (by a CSV header): then a bare fraction is not inches by itself. */
	readonly isUnitStated?: boolean;
	/** The show's own sizes, whose names come before those of paper. */
	readonly sizes?: readonly NamedSize[];
}

/** A size as read. */
export interface ReadSize extends Size {
	/** The name, as listed, where a name was typed. */
	readonly name: string | undefined;
	/** Whether one of its lengths was a fraction and no unit was stated or typed: then both are inches. */
	readonly isBareFraction: boolean;
}

/**
 * Reads a size: a listed name, or two lengths (`60 x 45 cm`, `600×450`, `24 by 18 in`). One unit, wherever it stands,
 * serves both lengths; two each serve their own; a bare fraction makes both inches.
 */
export function parseSize(text: string, context: SizeContext): Reading<ReadSize> {
	const named = namedSize(text, context.sizes ?? []);
	if (named !== undefined)
		return { value: { width: named.width, height: named.height, name: named.name, isBareFraction: false } };
	const pieces = tokenize(text);
	const unsure = unsureProblem(pieces, context.unit === 'mm');
	if (unsure !== undefined)
		return {
			...unsure,
			readings: (unsure.readings ?? []).filter((reading) => 'value' in parseSize(reading, context)),
		};
	const lengths = splitAtTimes(pieces.tokens).map(typedLength);
	const problem = lengths.find((typed) => 'problem' in typed && typed.problem !== '');
	if (problem !== undefined) return problem as Problem;
	const [width, height] = lengths;
	if (
		width === undefined ||
		'problem' in width ||
		(lengths.length > 1 && (height === undefined || 'problem' in height))
	)
		return notASize(text);
	if (lengths.length !== 2 || height === undefined || 'problem' in height)
		return {
			problem: `${quoted(text)} is ${lengths.length === 1 ? 'one length' : 'more than two lengths'}; a size has two, such as 600 x 450`,
		};
	const isFraction = width.isFraction || height.isFraction;
	const missing = isInInches(width.unit ?? height.unit, isFraction, context) ? missingSpaceProblem(pieces) : undefined;
	return missing ?? sizeOf(width, height, pieces.text, context);
}

/**
 * The two lengths of a size that was typed into one cell, as texts for two cells that mean the same: `24 by 18 in` is
 * `24 in` and `18 in`. A name gives none: its lengths are `parseSize`'s.
 *
 * @returns undefined if the text is not two lengths
 */
export function splitSizeText(text: string): { readonly width: string; readonly height: string } | undefined {
	const { text: plain, tokens } = tokenize(text);
	const parts = splitAtTimes(tokens);
	const [width, height] = parts;
	if (parts.length !== 2 || !width?.length || !height?.length) return undefined;
	const widthUnit = width.findLast(({ kind }) => kind === 'unit');
	const heightUnit = height.findLast(({ kind }) => kind === 'unit');
	const textOf = (tokens: readonly Token[], own: Token | undefined, other: Token | undefined) => {
		const typed = plain.slice(tokens[0]!.start, tokens.at(-1)!.end);
		return own === undefined && other !== undefined ? `${typed} ${plain.slice(other.start, other.end)}` : typed;
	};
	return { width: textOf(width, widthUnit, heightUnit), height: textOf(height, heightUnit, widthUnit) };
}

const notASize = (text: string): Problem => ({
	problem: `${quoted(text)} is not a size. Type two lengths, such as 600 x 450 or 24 x 18 in, or a listed name`,
});

function splitAtTimes(tokens: readonly Token[]): Token[][] {
	const parts: Token[][] = [[]];
	for (const token of tokens) {
		if (token.kind === 'times') parts.push([]);
		else parts.at(-1)!.push(token);
	}
	return parts;
}

function sizeOf(width: TypedLength, height: TypedLength, text: string, context: SizeContext): Reading<ReadSize> {
	const shared = width.unit ?? height.unit;
	const isWithoutUnit = shared === undefined && (width.isFraction || height.isFraction);
	const isBareFraction = isWithoutUnit && !context.isUnitStated;
	const bareUnit = shared ?? (isBareFraction ? 'in' : context.unit);
	const readWidth = toLength(width, bareUnit, text, false);
	if ('problem' in readWidth) return readWidth;
	const readHeight = toLength(height, bareUnit, text, false);
	if ('problem' in readHeight) return readHeight;
	if (isWithoutUnit && !isBareFraction && context.unit !== 'in')
		return unsureFraction(text, context.unit, 'the column is in', (reading) => parseSize(reading, context));
	return { value: { width: readWidth.value, height: readHeight.value, name: undefined, isBareFraction } };
}
