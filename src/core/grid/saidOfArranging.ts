import type { Code } from '../findings/figures.ts';
import { titles } from '../findings/words/titles.ts';
import type { Filter } from './filter.ts';
import type { Sort } from './sortRows.ts';
import { sortWords } from './sortWords.ts';

/** Why rows cannot be moved while they are sorted. */
export const cannotMoveSorted = (column: string | undefined): string =>
	`The prints are sorted by ${column ?? 'a column'}, so they can’t be moved. Choose Hanging order first.`;

/**
 * What is seen of a show, in a sentence: "12 of 30 prints, sorted by title".
 * @param seen how many rows are seen, @param all how many there are
 */
export function saidOfShown(seen: number, all: number, sort: Sort | undefined): string {
	const prints = (count: number) => `${count} print${count === 1 ? '' : 's'}`;
	const count = seen === all ? prints(all) : `${seen} of ${prints(all)}`;
	if (sort === undefined) return count;
	return `${count}, sorted by ${sort.column === 'findings' ? 'checks' : sort.column}${sort.way === 'down' ? `, ${sortWords(sort.column).down}` : ''}`;
}

/** What a filter asks, in words, in the order in which it is put together. */
export function askedOf({ words, check, mount, board, frame, maker, cut }: Filter): readonly string[] {
	const asked = [
		words.trim() && `“${words.trim()}”`,
		checkWords(check),
		mount && `mount ${mount}`,
		board,
		frame,
		maker,
		cut,
	];
	return asked.filter((word) => word !== '');
}

const levelWords: Readonly<Record<string, string>> = {
	stop: 'can’t be cut yet',
	look: 'to check',
	note: 'notes',
	none: 'nothing to check',
};

const checkWords = (check: string): string =>
	levelWords[check] ?? (Object.hasOwn(titles, check) ? titles[check as Code] : '');
