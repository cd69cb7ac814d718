import type { Session } from '../../app/session.svelte.ts';
import { type CatalogueLine, catalogueOf } from '../../core/lists/catalogue.ts';
import { recordOf } from '../../core/lists/recordOf.ts';
import type { PaperDocument } from './paperDocument.ts';

/** The prints of a show as its catalogue names them, with prices or without as the show says. */
export function catalogueLines({ show, results, settings, costs }: Session): readonly CatalogueLine[] {
	const { rows } = show;
	const record = recordOf({ rows, results, settings, costOf: (row) => costs.costOfRow(row) });
	return catalogueOf({ rows, results, ...record }, { hasPrices: settings.catalogue.prices === 'shown' });
}

/** The catalogue as a file. */
export const catalogueCsv: NonNullable<PaperDocument['csv']> = {
	label: 'Export catalogue',
	give: (out) => out.catalogue(),
};
