import { hookMarks } from '../../core/order/hookMarks.ts';
import { hangingList } from '../../core/walls/hangingList.ts';
import { hangingCautions } from '../../core/walls/wallWords.ts';
import HookPaper from '../../ui/paper/HookPaper.svelte';
import { namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

/** Where hooks go under the top of their frames, true to size. */
export const hookMarksDocument = paperDocument({
	id: 'hook marks',
	name: 'Hook marks, true to size',
	care: hangingCautions[2],
	none: 'No print hangs on hooks yet.',
	make(source) {
		const { results, settings } = source.session;
		const nameOf = namesOfPrints(source);
		const { paper } = source;
		const { pages, tooLow } = hookMarks(hangingList(results, settings), paper);
		return {
			pages: pages.map((page) => ({ page, paper, nameOf, settings })),
			says:
				tooLow.length > 0
					? `Too far below the frame’s top for this paper: ${tooLow.map(nameOf).join(', ')}.`
					: undefined,
		};
	},
	component: HookPaper,
});
