import type { Unit } from '../core/length/reading.ts';
import { type ColumnName, columns, hasUnit, kindOf } from '../core/show/columns.ts';
import { solvedKeys, type SolvedKey } from '../core/row/solvedRow.ts';
import { headerWords, inOurWords } from './headerWords.ts';

/** The columns of worked-out lengths, by the key of the result: `result mount width`. */
export const resultLengths: readonly { readonly name: string; readonly key: SolvedKey }[] = solvedKeys.map((key) => ({
	name: `result ${key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)}`,
	key,
}));

/** The columns of other results, in the order in which they are written. */
export const resultTexts = ['result findings', 'result steps', 'result settings'] as const;

/** What a header of a file stands for. */
export type Header =
	| { readonly kind: 'typed'; readonly name: ColumnName; readonly unit: HeaderUnit | undefined }
	| { readonly kind: 'result'; readonly name: string; readonly unit: HeaderUnit | undefined }
	| { readonly kind: 'unknown'; readonly name: string };

/** The unit that a header may carry. Metres and feet are none that a show can have. */
export type HeaderUnit = Unit | 'm' | 'ft' | '%';

const headerUnits: ReadonlyMap<string, HeaderUnit> = new Map([
	['mm', 'mm'],
	['cm', 'cm'],
	['m', 'm'],
	['in', 'in'],
	['inch', 'in'],
	['inches', 'in'],
	['"', 'in'],
	['″', 'in'],
	['ft', 'ft'],
	['foot', 'ft'],
	['feet', 'ft'],
	["'", 'ft'],
	['′', 'ft'],
	['%', '%'],
	['percent', '%'],
]);

/** A header without what it may be written with or without. */
const bare = (header: string) => header.toLowerCase().replace(/[\s\-_]+/g, '');

const typedNames = new Map<string, ColumnName>(columns.map(({ name }) => [bare(name), name]));
/** A size in one column: its two lengths go into both columns of the pair. */
const sizeNames = new Map<string, ColumnName>([
	['picturesize', 'picture width'],
	['windowsize', 'window width'],
	['mountsize', 'mount'],
	['papersize', 'paper'],
]);
const resultNames = new Map<string, string>(
	[...resultLengths.map(({ name }) => name), ...resultTexts].map((name) => [bare(name), name]),
);

const isResultLength = (name: string) => resultLengths.some((column) => column.name === name);

/**
 * What a header stands for: its case, spaces, `-` and `_` are nothing, the trade's other words are ours, and a unit may
 * stand behind it, in brackets or not.
 */
export function readHeader(text: string): Header {
	const [, name = text, inBrackets] = /^(.*?)\s*[([]\s*([^()[\]]*?)\s*[)\]]\s*$/s.exec(text) ?? [];
	const unit = inBrackets === undefined ? undefined : headerUnits.get(inBrackets.toLowerCase().replaceAll(' ', ''));
	if (inBrackets !== undefined && unit === undefined) return { kind: 'unknown', name: text };
	const known = named(name, unit);
	if (known) return known;
	const [, before = '', last = ''] = /^(.*?)[\s\-_,]+([^\s\-_,]+)$/s.exec(name.trim()) ?? [];
	const unbracketed = headerUnits.get(last.toLowerCase().replace(/\.$/, ''));
	const shortened = inBrackets === undefined && unbracketed !== undefined ? named(before, unbracketed) : undefined;
	return shortened ?? { kind: 'unknown', name: text };
}

function named(name: string, unit: HeaderUnit | undefined): Header | undefined {
	for (const form of [bare(name), inOurWords(headerWords(name)).join('')]) {
		const typed = typedNames.get(form) ?? sizeNames.get(form);
		if (typed !== undefined && mayCarry(typed, unit)) return { kind: 'typed', name: typed, unit };
		const result = resultNames.get(form);
		if (result !== undefined && (unit === undefined || (isResultLength(result) && unit !== '%')))
			return { kind: 'result', name: result, unit };
	}
	return undefined;
}

/** Whether a header speaks of a size, width and height in one. */
export const isSizeName = (text: string): boolean => inOurWords(headerWords(text)).includes('size');

/** Whether a header has a column's own name, not another word for it. */
export const isOwnName = (text: string, name: string): boolean => bare(text.replace(/[([].*$/s, '')) === bare(name);

/** The unit that stands in a header; undefined where none does. */
export function unitIn(text: string): HeaderUnit | undefined {
	const last = /([^\s\-_,([]+?)\s*[)\]]?\s*$/s.exec(text)?.[1] ?? '';
	return headerUnits.get(last.toLowerCase());
}

/** Whether the numbers of a column may be in a unit. */
export function mayCarry(column: ColumnName, unit: HeaderUnit | undefined): boolean {
	if (unit === undefined) return true;
	return unit === '%' ? kindOf(column) === 'weight' : hasUnit(column);
}
