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
		const { settings } = source.session;
		const { toGet, isBusy, notYet, openKinds } = source.getting;
		const pages = getPages(
			toGet,
			leftOutNotes(source, toGet.leftOut),
			namesOfPrints(source),
			settings,
			source.paper,
			notYet,
			openKinds,
		);
		return {
			pages: pages.map((page) => ({ page, settings })),
			waits: isBusy ? 'Working out the plans. Wait before you print.' : undefined,
		};
	},
	component: GetPaper,
	csv: { label: 'Export what to get', give: (out, { getting }) => out.getList(getting.toGet) },
});
