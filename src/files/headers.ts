import type { Unit } from '../core/length/reading.ts';
import { type ColumnName, columns, hasUnit, kindOf } from '../core/show/columns.ts';
import { solvedKeys, type SolvedKey } from '../core/row/solvedRow.ts';

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

const headerUnits: Readonly<Record<string, HeaderUnit>> = {
	mm: 'mm',
	cm: 'cm',
	m: 'm',
	in: 'in',
	inch: 'in',
	inches: 'in',
	'"': 'in',
	'″': 'in',
	ft: 'ft',
	foot: 'ft',
	feet: 'ft',
	"'": 'ft',
	'′': 'ft',
	'%': '%',
	percent: '%',
};

/** A header without what it may be written with or without. */
const bare = (header: string) => header.toLowerCase().replace(/[\s\-_]+/g, '');

/** The trade has two words for the same thing. */
const withMat = (name: string) => [bare(name), bare(name.replace('mount', 'mat'))];

const typedNames = new Map<string, ColumnName>(
	columns.flatMap(({ name }) => withMat(name).map((form): [string, ColumnName] => [form, name])),
);

const resultNames = new Map<string, string>(
	[...resultLengths.map(({ name }) => name), ...resultTexts].flatMap((name) =>
		withMat(name).map((form): [string, string] => [form, name]),
	),
);

const isResultLength = (name: string) => resultLengths.some((column) => column.name === name);

/** What a header stands for: its case, spaces, `-` and `_` are nothing, and a unit may stand behind it in brackets. */
export function readHeader(text: string): Header {
	const [, name = text, inBrackets] = /^(.*?)\s*[([]\s*([^()[\]]*?)\s*[)\]]\s*$/s.exec(text) ?? [];
	const unit = inBrackets === undefined ? undefined : headerUnits[inBrackets.toLowerCase().replaceAll(' ', '')];
	if (inBrackets !== undefined && unit === undefined) return { kind: 'unknown', name: text };
	const typed = typedNames.get(bare(name));
	if (typed !== undefined && mayCarry(typed, unit)) return { kind: 'typed', name: typed, unit };
	const result = resultNames.get(bare(name));
	if (result !== undefined && (unit === undefined || (isResultLength(result) && unit !== '%')))
		return { kind: 'result', name: result, unit };
	return { kind: 'unknown', name: text };
}

function mayCarry(column: ColumnName, unit: HeaderUnit | undefined): boolean {
	if (unit === undefined) return true;
	return unit === '%' ? kindOf(column) === 'weight' : hasUnit(column);
}
