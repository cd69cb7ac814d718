import { printPages } from '../../core/order/printPages.ts';
import { printNotes } from '../../core/order/printWords.ts';
import { type PictureToPrint, whatToPrint } from '../../core/order/whatToPrint.ts';
import PrintsPaper from '../../ui/paper/PrintsPaper.svelte';
import { leftOutNotes, namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

const none = 'No print has a paper to be printed on yet.';

/** Pictures to print, by paper. */
export const printsDocument = paperDocument({
	id: 'prints',
	name: 'Pictures to print',
	care: '',
	none,
	make(source) {
		const { show, results, settings } = source.session;
		const nameOf = namesOfPrints(source);
		const { papers, leftOut } = whatToPrint(show.rows, results, settings);
		const notesOf = (picture: PictureToPrint) => printNotes(picture, settings);
		const pages = printPages(papers, leftOutNotes(source, leftOut), nameOf, notesOf, source.paper);
		return {
			pages: pages.map((page) => ({ page, nameOf, settings })),
			says: papers.length === 0 ? none : undefined, // there may be a page of those left out
		};
	},
	component: PrintsPaper,
});
