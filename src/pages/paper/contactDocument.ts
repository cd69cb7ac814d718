import ContactPaper from '../../ui/paper/ContactPaper.svelte';
import { contactPages } from './contactPages.ts';
import { paperDocument } from './paperDocument.ts';

/** The contact sheet. */
export const contactDocument = paperDocument({
	id: 'contact',
	name: 'Contact sheet',
	care: '',
	none: 'There are no prints yet.',
	make({ session }) {
		const { pages, scale } = contactPages(session);
		return { pages: pages.map((prints) => ({ prints, scale })) };
	},
	component: ContactPaper,
});
