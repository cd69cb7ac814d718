import { priceWords } from '../../core/lists/catalogue.ts';
import { catalogueListPages } from '../../core/lists/cataloguePages.ts';
import CataloguePaper from '../../ui/paper/CataloguePaper.svelte';
import CatalogueOptions from './CatalogueOptions.svelte';
import { catalogueCsv, catalogueLines } from './catalogueLines.ts';
import { paperDocument } from './paperDocument.ts';

/** The catalogue as a plain list. */
export const catalogueDocument = paperDocument({
	id: 'catalogue',
	name: 'Catalogue, plain list',
	title: 'Catalogue',
	care: '',
	none: 'There are no prints yet.',
	make({ session, paper }) {
		const { settings } = session;
		const lines = catalogueLines(session);
		const hasPrices = lines.some((line) => priceWords(line) !== '');
		const pages = catalogueListPages(lines, settings, paper);
		return { pages: pages.map((page) => ({ page, settings, hasPrices })) };
	},
	component: CataloguePaper,
	options: CatalogueOptions,
	csv: catalogueCsv,
});
