import { cataloguePage, cataloguePicturePages, roomOf } from '../../core/lists/cataloguePages.ts';
import { drawnPrint } from '../../ui/mount/drawnPrint.ts';
import CataloguePicturesPaper from '../../ui/paper/CataloguePicturesPaper.svelte';
import { catalogueCsv, catalogueLines } from './catalogueLines.ts';
import { paperDocument } from './paperDocument.ts';

/** The catalogue with pictures. */
export const cataloguePicturesDocument = paperDocument({
	id: 'catalogue-pictures',
	name: 'Catalogue with pictures',
	title: 'Catalogue',
	care: '',
	none: 'There are no prints yet.',
	make({ session, paper }) {
		const { show, results, settings, pictures } = session;
		const { inRow, gap } = cataloguePage.pictures;
		const column = (roomOf(paper).width - (inRow - 1) * gap) / inRow;
		const drawnOf = (place: number) => drawnPrint(results[place]!);
		const addressOf = (place: number) => pictures.addressOf(show.rows[place]!);
		const pages = cataloguePicturePages(catalogueLines(session), settings, paper);
		return { pages: pages.map((page) => ({ page, settings, column, drawnOf, addressOf })) };
	},
	component: CataloguePicturesPaper,
	csv: catalogueCsv,
});
