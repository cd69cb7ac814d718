import { frameSizes } from '../../core/order/frameSizes.ts';
import { getPages } from '../../core/order/getPages.ts';
import GetPaper from '../../ui/paper/GetPaper.svelte';
import { leftOutNotes, namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

/** What is to be got. */
export const getDocument = paperDocument({
	id: 'get',
	name: 'To get',
	care: '',
	none: 'There is nothing to get yet.',
	make(source) {
		const { settings, results } = source.session;
		const nameOf = namesOfPrints(source);
		const { toGet, isBusy, notYet, openKinds } = source.getting;
		const pages = getPages(
			toGet,
			leftOutNotes(source, toGet.leftOut),
			nameOf,
			settings,
			source.paper,
			notYet,
			openKinds,
			(line) => frameSizes(line, results, nameOf, settings),
		);
		return {
			pages: pages.map((page) => ({ page, settings })),
			waits: isBusy ? 'Working out the plans. Wait before you print.' : undefined,
		};
	},
	component: GetPaper,
	csv: { label: 'Export what to get', give: (out, { getting }) => out.getList(getting.toGet) },
});
