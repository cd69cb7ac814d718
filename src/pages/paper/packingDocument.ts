import { packingPages } from '../../core/lists/packingPages.ts';
import { packPrints } from '../../core/packing/packPrints.ts';
import { packingCare } from '../../core/packing/packingWords.ts';
import PackingPaper from '../../ui/paper/PackingPaper.svelte';
import { namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

/** What goes into which box. */
export const packingDocument = paperDocument({
	id: 'packing',
	name: 'Packing list',
	care: packingCare,
	none: 'There are no prints yet.',
	make(source) {
		const { results, settings } = source.session;
		const pages = packingPages(packPrints(results, settings), settings, namesOfPrints(source), source.paper);
		return { pages: pages.map((page) => ({ page, settings })) };
	},
	component: PackingPaper,
	csv: { label: 'Export packing list', give: (out) => out.packingList() },
});
