import type { Session } from '../../app/session.svelte.ts';
import { type CatalogueLine, catalogueOf } from '../../core/lists/catalogue.ts';
import { recordOf } from '../../core/lists/recordOf.ts';
import type { PaperDocument } from './paperDocument.ts';

/** The prints of a show as its catalogue names them, with prices or without as the show says. */
export function catalogueLines({ show, results, settings }: Session): readonly CatalogueLine[] {
	const record = recordOf(show.rows, results, settings);
	const hasPrices = settings.catalogue.prices === 'shown';
	return catalogueOf({ rows: show.rows, results, settings, ...record }, { hasPrices });
}

/** The catalogue as a file. */
export const catalogueCsv: NonNullable<PaperDocument['csv']> = {
	label: 'Export catalogue',
	give: (out) => out.catalogue(),
};
