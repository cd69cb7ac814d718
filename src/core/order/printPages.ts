import { onPages } from '../bench/paper.ts';
import { type Paper, paperRoom, papers } from '../values/papers.ts';
import { fillPages, type PagePart } from './fillPages.ts';
import type { PaperToPrint, PictureToPrint } from './whatToPrint.ts';

/** Heights of what stands on a page of the print list, in mm; the styles hold to them. */
export const printPageMm = { head: 18, pictures: 40, note: 10 } as const;

/** How many pictures stand beside each other. */
const picturesInLine = 2;

/** A print that is not printed, and why. */
export interface PageNote {
	readonly name: string;
	readonly words: string;
}

/** What stands over a part of a page: a paper; undefined over the prints that are not printed. */
export type PrintPageHead = PaperToPrint | undefined;

/** What stands under it: a line of pictures, or a print that is not printed. */
export type PrintPageItem =
	{ readonly pictures: readonly PictureToPrint[] } | { readonly pictures: undefined; readonly note: PageNote };

/** The print list on pages: by paper, then what is not printed. */
export function printPages(
	printed: readonly PaperToPrint[],
	notes: readonly PageNote[],
	paper: Paper,
): readonly (readonly PagePart<PrintPageHead, PrintPageItem>[])[] {
	const { margin, head, foot } = paperRoom;
	const room = papers[paper].heightMm - 2 * margin - head - foot;
	const sections = printed.map((each) => ({
		head: each as PrintPageHead,
		headMm: printPageMm.head,
		items: onPages(each.pictures, picturesInLine).map((pictures) => ({
			item: { pictures } as PrintPageItem,
			mm: printPageMm.pictures,
		})),
	}));
	const others = {
		head: undefined,
		headMm: printPageMm.head,
		items: notes.map((note) => ({ item: { pictures: undefined, note } as PrintPageItem, mm: printPageMm.note })),
	};
	return fillPages([...sections, others], room);
}
