import { toMm } from '../../core/length/length.ts';
import type { CatalogueLine } from '../../core/lists/catalogue.ts';
import { cataloguePage, cataloguePicturePages, pictureColumn } from '../../core/lists/cataloguePages.ts';
import { drawnPrint } from '../../ui/mount/drawnPrint.ts';
import CataloguePicturesPaper from '../../ui/paper/CataloguePicturesPaper.svelte';
import CatalogueOptions from './CatalogueOptions.svelte';
import { catalogueCsv, catalogueLines } from './catalogueLines.ts';
import { paperDocument } from './paperDocument.ts';

/** Where nothing of a print can be drawn there is a line that says so, in mm. */
const nothingDrawn = 8;

/** The catalogue with pictures. */
export const cataloguePicturesDocument = paperDocument({
	id: 'catalogue-pictures',
	name: 'Catalogue with pictures',
	title: 'Catalogue',
	care: '',
	none: 'There are no prints yet.',
	make({ session, paper }) {
		const { show, results, settings, pictures } = session;
		const column = pictureColumn(paper);
		const most = cataloguePage.pictures.height;
		const drawnOf = (place: number) => drawnPrint(results[place]!);
		const addressOf = (place: number) => pictures.addressOf(show.rows[place]!);
		const heightOf = ({ place, size }: CatalogueLine) => {
			if (addressOf(place)) return size ? Math.min(most, (column * toMm(size.height)) / toMm(size.width)) : most;
			const outer = drawnOf(place)?.outer;
			return outer ? Math.min(most, (column * (outer.bottom - outer.top)) / (outer.right - outer.left)) : nothingDrawn;
		};
		const pages = cataloguePicturePages(catalogueLines(session), settings, paper, heightOf);
		return { pages: pages.map((page) => ({ page, settings, column, drawnOf, addressOf })) };
	},
	component: CataloguePicturesPaper,
	options: CatalogueOptions,
	csv: catalogueCsv,
});
