import type { Counted, RegisteredTitle, Run } from '../core/record/editionRegister.ts';
import { numbersHere, rangesText, soldNumbers } from '../core/record/registerWords.ts';
import { csvText } from './csvText.ts';

/** The columns of the edition register. */
export const editionsColumns = [
	...(['maker', 'title', 'series', 'size', 'prints', 'sold', 'left'] as const),
	...(['numbers', 'sold numbers', 'not here', 'clashes'] as const),
] as const;

const everyRange = Infinity;

/** The edition register as delimited text: a line for each run of numbers or proofs, the open edition and what has no number. */
export function writeEditions(register: readonly RegisteredTitle[]): string {
	const records = register.flatMap(({ maker, title, runs, open, unnumbered }) => [
		...runs.map((run) => [maker, title, ...runCells(run)]),
		...countedLine('open', open).map((cells) => [maker, title, ...cells]),
		...countedLine('no number', unnumbered).map((cells) => [maker, title, ...cells]),
	]);
	return csvText([editionsColumns, ...records]);
}

const runCells = ({ series, size, numbers, count, sold, left, missing, clashes }: Run): readonly string[] => [
	...[series === '' ? 'edition' : series, size === undefined ? '' : `${size}`],
	...[`${count}`, `${sold}`, left === undefined ? '' : `${left}`],
	rangesText(numbersHere(numbers), everyRange),
	rangesText(soldNumbers(numbers), everyRange),
	rangesText(missing, everyRange),
	[...new Set(clashes.map(({ message }) => message))].join(' '),
];

const countedLine = (series: string, { count, sold }: Counted): readonly (readonly string[])[] =>
	count === 0 ? [] : [[series, '', `${count}`, `${sold}`, '', '', '', '', '']];
