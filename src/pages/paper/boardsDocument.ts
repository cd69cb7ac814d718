import SheetPaper from '../../ui/sheet/SheetPaper.svelte';
import { blankNames } from '../blankNames.ts';
import { boardsInView } from '../boardsInView.ts';
import { dropOutWords } from '../dropOutWords.ts';
import { boardPages } from './boardPages.ts';
import { paperDocument } from './paperDocument.ts';

/** Sheets of board, each way of cutting with its cuts. */
export const boardsDocument = paperDocument({
	id: 'boards',
	name: 'Sheets of board',
	none: 'No board is planned yet.',
	make({ session, packing, paper }) {
		const { show, results, settings } = session;
		const boards = boardsInView(packing.boards, show.cutSheets ?? []);
		const isOld = boards.some(({ planned }) => planned === undefined || planned.isOld);
		const nameOf = blankNames(show.rows, results, settings);
		const pages = boardPages(boards, nameOf, settings, paper, (stock) =>
			dropOutWords(stock, show.rows, results, settings),
		);
		return {
			pages: pages.map((page) => ({ page, nameOf, scale: settings })),
			waits: !packing.isBusy
				? undefined
				: isOld
					? 'Replanning. Wait before you print.'
					: 'Looking for a better plan. Wait before you print.',
		};
	},
	component: SheetPaper,
});
