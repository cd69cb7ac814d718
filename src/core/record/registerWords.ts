import type { Series } from '../row/edition.ts';
import { countOf } from '../values/countOf.ts';
import type { Counted, NumberRange, RegisteredTitle, Run } from './editionRegister.ts';

const seriesNames: Readonly<Record<Exclude<Series, '' | 'roman'>, readonly [one: string, many: string]>> = {
	AP: ['artist’s proof', 'artist’s proofs'],
	HC: ['hors commerce print', 'hors commerce prints'],
	PP: ['printer’s proof', 'printer’s proofs'],
	BAT: ['bon à tirer (BAT)', 'bons à tirer (BAT)'],
};

/** What a run is called: `Edition of 25`, `I to X`, `3 artist’s proofs`. */
export function runName({ series, size, count }: Pick<Run, 'series' | 'size' | 'count'>): string {
	if (series === '') return `Edition of ${size}`;
	if (series === 'roman') return `Edition of ${size} in Roman numerals`;
	const [one, many] = seriesNames[series];
	return countOf(size ?? count, one, many);
}

/** Numbers in words: `1–4, 7, 9–25`; at most so many ranges, then what is left out is said to be more. */
export function rangesText(ranges: readonly NumberRange[], most = 12): string {
	const said = ranges.slice(0, most).map(({ first, last }) => (first === last ? `${first}` : `${first}–${last}`));
	return said.join(', ') + (ranges.length > most ? ' and more' : '');
}

/** The numbers that the show has, as ranges. */
export function numbersHere(numbers: Run['numbers']): readonly NumberRange[] {
	const ranges: { first: number; last: number }[] = [];
	for (const { number } of numbers) {
		const last = ranges.at(-1);
		if (last && number <= last.last + 1) last.last = number;
		else ranges.push({ first: number, last: number });
	}
	return ranges;
}

/** The numbers of those that are sold. */
export const soldNumbers = (numbers: Run['numbers']): readonly NumberRange[] =>
	numbersHere(numbers.filter(({ isSold }) => isSold));

/** `4 prints, 1 sold`. */
export const countedWords = ({ count, sold }: Counted): string =>
	`${count} ${count === 1 ? 'print' : 'prints'}, ${sold === 0 ? 'none' : sold} sold`;

/** A figure of a run, after its word. */
export interface RunFigure {
	readonly word: string;
	readonly figure: string;
}

/** What of a run is here, sold, left, and not in the show. What are numbers of prints says so: how many are left is a count. */
export const runFigures = (run: Run): readonly RunFigure[] => [
	...(run.numbers.length > 0 ? [{ word: 'numbers here', figure: rangesText(numbersHere(run.numbers)) }] : []),
	soldFigure(run),
	...(run.left === undefined ? [] : [{ word: 'left', figure: `${run.left}` }]),
	...(run.missing.length > 0 ? [{ word: 'not in the show', figure: rangesText(run.missing) }] : []),
];

function soldFigure({ sold, numbers }: Run): RunFigure {
	const which = rangesText(soldNumbers(numbers));
	return sold > 0 && which ? { word: 'numbers sold', figure: which } : { word: 'sold', figure: `${sold || 'none'}` };
}

/** All that the register says of a title, a line each. */
export const titleLines = ({ runs, open, unnumbered }: RegisteredTitle): readonly string[] => [
	...runs.flatMap((run) => [
		`${runName(run)}: ${runFigures(run)
			.map(({ word, figure }) => `${word} ${figure}`)
			.join('; ')}`,
		...new Set(run.clashes.map(({ message }) => message)),
	]),
	...(open.count > 0 ? [`Open edition: ${countedWords(open)}`] : []),
	...(unnumbered.count > 0 ? [`Without a number: ${countedWords(unnumbered)}`] : []),
];
