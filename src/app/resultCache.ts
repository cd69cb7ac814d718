import { type RowResult, unjudged } from '../core/findings/rowResult.ts';
import { workOut } from '../core/row/workOut.ts';
import type { RowDiff } from '../core/show/edit.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/settings/settings.ts';
import { changedRange, withRange } from '../core/values/changedRange.ts';
import { otherWork, sliceMs } from './inSlices.ts';
import type { FindingsAcross } from '../core/findings/findingsAcross.ts';
import type { Judging } from './judging.ts';

/**
 * For how many edits the results of rows are kept that are no longer in the show. Undo of the latest steps then works
 * nothing out, however many rows they changed, and the steps before, which may be thousands, hold their rows alone.
 */
export const editsRemembered = 16;

/** What is known of rows under some settings. */
interface Known {
	readonly judged: WeakMap<Row, RowResult>;
	/** Worked out before judging was loaded; none of them is kept once it is judged. */
	readonly worked: WeakMap<Row, RowResult>;
	/** What was asked last: of rows that stand there too, nothing is looked up. */
	last?: Asked;
	across?: FindingsAcross;
}

interface Asked {
	readonly rows: readonly Row[];
	readonly judging: Judging | undefined;
	/** What each row gives by itself. */
	readonly alone: readonly RowResult[];
}

/**
 * What rows work out, kept for as long as row and settings are the same objects: an edit of one row works out that row
 * alone.
 */
export class ResultCache {
	readonly #bySettings = new WeakMap<Settings, Known>();
	/** The rows that edits have removed or replaced, each with the number of its edit; in the order of the edits. */
	readonly #left = new Map<Row, number>();
	#edits = 0;

	/** The result of each row, in order. @param judging undefined until it is loaded: nothing is found so far */
	resultsOf(rows: readonly Row[], settings: Settings, judging: Judging | undefined): readonly RowResult[] {
		const known = this.#knownFor(settings);
		const last = known.last?.judging === judging ? known.last : undefined;
		const range = changedRange(last?.rows ?? [], rows);
		const alone = withRange(last?.alone ?? [], range, (place) => resultOf(rows[place]!, settings, known, judging));
		known.last = { rows, judging, alone };
		if (!judging) return alone;
		known.across ??= new judging.FindingsAcross(settings);
		return known.across.of(rows, alone);
	}

	/** What a row works out by itself. */
	resultOf(row: Row, settings: Settings, judging: Judging | undefined): RowResult {
		return resultOf(row, settings, this.#knownFor(settings), judging);
	}

	/** Works rows out before they are asked for, a slice at a time. Gives how many are done after each slice. */
	async *ahead(rows: readonly Row[], settings: Settings, judging: Judging | undefined): AsyncGenerator<number, void> {
		const known = this.#knownFor(settings);
		let until = performance.now() + sliceMs;
		for (const [index, row] of rows.entries()) {
			resultOf(row, settings, known, judging);
			if (performance.now() < until) continue;
			yield index + 1;
			await otherWork();
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
			known.judged.delete(row);
		}
	}

	#knownFor(settings: Settings): Known {
		const known = this.#bySettings.get(settings) ?? { judged: new WeakMap(), worked: new WeakMap() };
		this.#bySettings.set(settings, known);
		return known;
	}
}

function resultOf(row: Row, settings: Settings, { judged, worked }: Known, judging: Judging | undefined): RowResult {
	const known = judged.get(row);
	if (known) return known;
	const result = worked.get(row) ?? unjudged(workOut(row, settings));
	if (!judging) {
		worked.set(row, result);
		return result;
	}
	worked.delete(row);
	const found = judging.judgeWorked(row, settings, result);
	judged.set(row, found);
	return found;
}
