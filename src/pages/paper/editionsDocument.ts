import { editionPages } from '../../core/record/editionPages.ts';
import { editionRegister } from '../../core/record/editionRegister.ts';
import EditionsPaper from '../../ui/paper/EditionsPaper.svelte';
import { paperDocument } from './paperDocument.ts';

/** The edition register: what of each title is numbered, sold and left. */
export const editionsDocument = paperDocument({
	id: 'editions',
	name: 'Edition register',
	care: '',
	none: 'No print has an edition yet.',
	make({ session: { show, results }, paper }) {
		return { pages: editionPages(editionRegister(show.rows, results), paper).map((page) => ({ page })) };
	},
	component: EditionsPaper,
	csv: {
		label: 'Export edition register',
		give: (out, { session: { show, results } }) => out.editions(editionRegister(show.rows, results)),
	},
});
