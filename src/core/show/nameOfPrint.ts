import { shownText } from '../values/shownText.ts';
import type { Row } from './row.ts';

/**
 * What a print is called in lists and sentences: its number and title, else its place in the show.
 * @param index place of the row, from 0
 */
export function nameOfPrint({ typed }: Row, index: number): string {
	const name = [typed.number, typed.title]
		.map((text) => text?.trim() ?? '')
		.join(' ')
		.trim();
	return name === '' ? `Row ${index + 1}` : shownText(name);
}
