import { withEditionClashes } from '../core/findings/editionClashes.ts';
import type { RowResult } from '../core/row/rowResult.ts';
import { workOut } from '../core/row/workOut.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/show/settings.ts';

/**
 * What rows work out, kept for as long as row and settings are the same objects: an edit of one row works out that row
 * alone.
 */
export class ResultCache {
	readonly #bySettings = new WeakMap<Settings, WeakMap<Row, RowResult>>();

	/** The result of each row, in order. */
	resultsOf(rows: readonly Row[], settings: Settings): readonly RowResult[] {
		const known = this.#bySettings.get(settings) ?? new WeakMap<Row, RowResult>();
		this.#bySettings.set(settings, known);
		const results = rows.map((row) => {
			const result = known.get(row) ?? workOut(row, settings);
			known.set(row, result);
			return result;
		});
		return withEditionClashes(rows, results);
	}
}
