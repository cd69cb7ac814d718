import { withFindingsAcross } from '../core/findings/acrossRows.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import { judgeRow } from '../core/findings/judgeRow.ts';
import type { RowDiff } from '../core/show/edit.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/settings/settings.ts';

/** How long rows are worked out ahead before the page may do something else: half a frame at 60 a second. */
const sliceMs = 8;

/**
 * For how many edits the results of rows are kept that are no longer in the show. Undo of the latest steps then works
 * nothing out, however many rows they changed, and the steps before, which may be thousands, hold their rows alone.
 */
export const editsRemembered = 16;

/**
 * What rows work out, kept for as long as row and settings are the same objects: an edit of one row works out that row
 * alone.
 */
export class ResultCache {
	readonly #bySettings = new WeakMap<Settings, WeakMap<Row, RowResult>>();
	/** The rows that edits have removed or replaced, each with the number of its edit; in the order of the edits. */
	readonly #left = new Map<Row, number>();
	#edits = 0;

	/** The result of each row, in order. */
	resultsOf(rows: readonly Row[], settings: Settings): readonly RowResult[] {
		const known = this.#knownFor(settings);
		return withFindingsAcross(
			rows,
			rows.map((row) => resultOf(row, settings, known)),
			settings,
		);
	}

	/** Works rows out before they are asked for, a slice at a time. Gives how many are done after each slice. */
	async *ahead(rows: readonly Row[], settings: Settings): AsyncGenerator<number, void> {
		const known = this.#knownFor(settings);
		let until = performance.now() + sliceMs;
		for (const [index, row] of rows.entries()) {
			resultOf(row, settings, known);
			if (performance.now() < until) continue;
			yield index + 1;
			await new Promise((resolve) => setTimeout(resolve));
			until = performance.now() + sliceMs;
		}
	}

	/** An edit has changed these rows: of those that left the show long ago the results are let go of. */
	follow(changed: readonly RowDiff[], settings: Settings): void {
		this.#edits++;
		for (const { before, after } of changed) {
			if (after) this.#left.delete(after);
			if (before) this.#left.delete(before);
			if (before) this.#left.set(before, this.#edits);
		}
		const known = this.#knownFor(settings);
		for (const [row, edit] of this.#left) {
			if (edit > this.#edits - editsRemembered) break;
			this.#left.delete(row);
			known.delete(row);
		}
	}

	#knownFor(settings: Settings): WeakMap<Row, RowResult> {
		const known = this.#bySettings.get(settings) ?? new WeakMap<Row, RowResult>();
		this.#bySettings.set(settings, known);
		return known;
	}
}

function resultOf(row: Row, settings: Settings, known: WeakMap<Row, RowResult>): RowResult {
	const result = known.get(row) ?? judgeRow(row, settings);
	known.set(row, result);
	return result;
}
