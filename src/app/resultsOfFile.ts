import { judgeRow } from '../core/findings/judgeRow.ts';
import { readSettings } from '../core/settings/readSettings.ts';
import type { Row } from '../core/show/row.ts';
import { isSameValue } from '../core/values/isSameValue.ts';
import { compareResults, type EditedResult } from '../files/csv.ts';
import type { MergeReview } from './mergeReview.svelte.ts';
import type { Session } from './session.svelte.ts';

/** What there is to say of the results that came with the rows of a file. They are compared, never imported. */
export interface ResultsOfFile {
	/** How many rows have results that are not what is worked out here. */
	readonly differing: number;
	/** The results that somebody has typed over, by the row in the file. */
	readonly edited: readonly (EditedResult & { readonly row: Row; readonly place: number })[];
}

/** Compares the results of a file with what its rows come to, here and under the settings that the file says. */
export function resultsOfFile({ show, results, settings }: Session, review: MergeReview): ResultsOfFile {
	const { read, settings: ofRows } = review.file;
	if (read.results.every((cells) => cells.every(({ text }) => text.trim() === ''))) return { differing: 0, edited: [] };
	const there = ofRows?.change ? readSettings({ ...show.settings, ...ofRows.change }).settings : settings;
	const places = new Map(show.rows.map(({ id }, place) => [id, place]));
	const before = new Map(review.compared.base?.rows.map((row) => [row.id, row]));
	const was = new Map(review.compared.rows.map((row) => [row.id, row]));
	const meant = review.meantRows;
	let differing = 0;
	const edited: ResultsOfFile['edited'][number][] = [];
	read.results.forEach((cells, place) => {
		const row = meant[place];
		if (row === undefined || cells.every(({ text }) => text.trim() === '')) return;
		const here = show.rows[places.get(row.id) ?? -1];
		const isKnown = here && isSameValue([here.typed, here.units], [row.typed, row.units]);
		const judged = isKnown ? results[places.get(row.id)!]! : judgeRow(row, settings);
		const others = () => {
			// A spreadsheet works nothing out: after an edit, the results are still those of the row as it was.
			const rows = [row, before.get(row.id), was.get(row.id)].filter((each) => each !== undefined);
			return rows.flatMap((each) =>
				[settings, there].map((under) => ({ result: judgeRow(each, under), unit: under.unit })),
			);
		};
		const compared = compareResults(cells, { result: judged, unit: settings.unit }, others);
		if (compared.isOther) differing++;
		edited.push(...compared.edited.map((each) => ({ ...each, row, place })));
	});
	return { differing, edited };
}
