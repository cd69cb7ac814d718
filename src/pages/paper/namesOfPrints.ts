import { leftOutWords } from '../../core/order/printWords.ts';
import { nameOfPrint } from '../../core/show/nameOfPrint.ts';
import type { PaperSource } from './paperDocument.ts';

/** What prints are called on paper, by the places of their rows, from 0. */
export const namesOfPrints =
	({ session }: PaperSource) =>
	(place: number) =>
		nameOfPrint(session.show.rows[place]!, place);

/** What is left out of a list, by row, from 1: what each print is called, and why in words. */
export const leftOutNotes = (
	source: PaperSource,
	leftOut: readonly { readonly row: number; readonly reason: Parameters<typeof leftOutWords>[0] }[],
) =>
	leftOut.map(({ row, reason }) => ({
		name: namesOfPrints(source)(row - 1),
		words: leftOutWords(reason, source.session.results[row - 1], source.session.settings),
	}));
