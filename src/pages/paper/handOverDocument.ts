import { handOverPages, handOvers } from '../../core/lists/handOver.ts';
import { recordOf } from '../../core/lists/recordOf.ts';
import HandOverPaper from '../../ui/paper/HandOverPaper.svelte';
import { namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

/** What each maker hands over, and gets back when the show is taken down. */
export const handOverDocument = paperDocument({
	id: 'hand-over',
	name: 'Handing over and taking down',
	care: 'Look at glass, corners and surface before you sign. Carry framed prints upright; gloves for glass.',
	none: 'There are no prints yet.',
	make(source) {
		const { show, results, settings, costs } = source.session;
		const { rows } = show;
		const record = recordOf({ rows, results, settings, costOf: (row) => costs.costOfRow(row) });
		const makers = handOvers({ rows, results, ...record, nameOf: namesOfPrints(source) });
		return { pages: handOverPages(makers, source.paper).map((page) => ({ page })) };
	},
	component: HandOverPaper,
});
