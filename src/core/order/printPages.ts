import { unbroken } from '../length/unbroken.ts';
import { onPages } from '../bench/paper.ts';
import { pageRoom, type Paper } from '../values/papers.ts';
import { textLines } from '../values/textLines.ts';
import { fillPages, type PagePart } from './fillPages.ts';
import type { PaperToPrint, PictureToPrint } from './whatToPrint.ts';

/** Heights of what stands on a page of the print list, in mm; the styles hold to them. */
export const printPageMm = { head: 18, pictures: 40, noteLine: 4, noteEdge: 1.5, notePoints: 9 } as const;

/** How many pictures stand beside each other. */
const picturesInLine = 2;

/** What is said of a print over the width of the page: why it is not printed, or what else there is to look at. */
export interface PageNote {
	readonly name: string;
	readonly words: string;
}

/** What stands over a part of a page: a paper; undefined over the prints that are not printed. */
export type PrintPageHead = PaperToPrint | undefined;

/** What stands under it: a line of pictures, or what is said of a print. */
export type PrintPageItem =
	| { readonly pictures: readonly PictureToPrint[] }
	| { readonly pictures: undefined; readonly note: PageNote; readonly mm: number };

/**
 * The print list on pages: by paper, then what is not printed. What there is to say of a picture stands under its line, over
 * the width of the page: beside it a sentence would be cut off.
 * @param nameOf what a print is called, by the place of its row, from 0
 * @param notesOf what else is said of a picture
 */
export function printPages(
	printed: readonly PaperToPrint[],
	notes: readonly PageNote[],
	nameOf: (place: number) => string,
	notesOf: (picture: PictureToPrint) => readonly string[],
	paper: Paper,
): readonly (readonly PagePart<PrintPageHead, PrintPageItem>[])[] {
	const { width, height: room } = pageRoom(paper);
	const noteItem = (note: PageNote) => {
		const { noteLine, noteEdge, notePoints } = printPageMm;
		const mm = noteEdge + noteLine * textLines(unbroken(`${note.name} ${note.words}`), notePoints, width);
		return { item: { pictures: undefined, note, mm } as PrintPageItem, mm };
	};
	const sections = printed.map((each) => ({
		head: each as PrintPageHead,
		headMm: printPageMm.head,
		items: onPages(each.pictures, picturesInLine).flatMap((pictures) => [
			{ item: { pictures }, mm: printPageMm.pictures },
			...pictures.flatMap((picture) =>
				[...picture.said.map(({ message }) => message), ...notesOf(picture)].map((words) =>
					noteItem({ name: nameOf(picture.place), words }),
				),
			),
		]),
	}));
	const others = {
		head: undefined,
		headMm: printPageMm.head,
		items: notes.map(noteItem),
	};
	return fillPages([...sections, others], room);
}
