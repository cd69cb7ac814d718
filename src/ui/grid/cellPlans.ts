import type { CellPlan, GridCells } from '../../core/grid/planPaste.ts';
import { saidOfNoChange, saidOfPaste } from '../../core/grid/saidOfPaste.ts';
import { at, type Range } from '../../core/grid/selection.ts';
import { countPrints } from '../../core/show/blankRow.ts';
import type { Command, Edit } from '../../core/show/edit.ts';
import type { RowId } from '../../core/show/row.ts';
import { typeAndAdd } from '../../core/commands/typeAndAdd.ts';
import type { GridEdits } from './gridEdits.ts';
import type { GridFocus } from './gridFocus.ts';
import type { GridNotices } from './gridNotices.svelte.ts';
import type { GridSelection } from './gridSelection.svelte.ts';
import type { RowsSource } from './gridSource.ts';
import type { SeenCells } from './seenCells.ts';

/** What came of a plan that was carried out. */
interface Done {
	readonly step: Edit;
	/** In a sentence, which was also said aloud. */
	readonly said: string;
	/** How many of the cells could not be read. */
	readonly unread: number;
}

/** Carries out what a paste or a fill comes to, selects it and says what was done. */
export class CellPlans {
	readonly #source: RowsSource;
	readonly #cells: SeenCells;
	readonly #selection: GridSelection;
	readonly #edits: GridEdits;
	readonly #notices: GridNotices;

	constructor(source: RowsSource, cells: SeenCells, selection: GridSelection, edits: GridEdits, notices: GridNotices) {
		this.#source = source;
		this.#cells = cells;
		this.#selection = selection;
		this.#edits = edits;
		this.#notices = notices;
	}

	/** The cells that are seen, as plans are made for them. */
	get plannedFor(): GridCells {
		const { rows, columns } = this.#cells;
		return { rows: rows.map(({ id }) => id), columns: columns.list.map(({ column }) => column) };
	}

	/**
	 * Carries out a plan, as one step of undo.
	 * @param before what was selected before it
	 * @param former the step in whose place it is done
	 * @returns undefined where nothing was done, or not yet
	 */
	carryOut(plan: CellPlan, label: string, before: GridFocus | undefined, former?: Edit): Done | undefined {
		// In place of a step, the rows that it added are not there: its rows go, and those of this one come.
		const gone = new Set(former?.rows.flatMap((diff) => (diff.before || !diff.after ? [] : [diff.after.id])));
		const rows = this.#cells.rows.filter(({ id }) => !gone.has(id));
		const ids = this.#edits.newIds(plan.added.length);
		const after = this.#selection.focusOn(selectionOf(plan.range), [...rows, ...ids.map((id) => ({ id }))]);
		const above = rows.at(-1)?.id;
		const command: Command = (show, settings) => {
			const at = show.rows.findIndex(({ id }) => id === above) + 1;
			return typeAndAdd(show, plan.changes, { rows: plan.added, at, ids }, settings, label);
		};
		const focus = { before, after };
		const step = former ? this.#edits.doInstead(former, command, focus) : this.#edits.do(command, focus);
		if (step === undefined) {
			// Nothing is done while an answer is waited for, either; then there is more to come.
			if (former === undefined && !this.#edits.wouldChange(command)) this.#notices.show(saidOfNoChange(label, plan));
			return undefined;
		}
		this.#selection.selectRange(plan.range);
		const unread = this.#unreadOf(plan, ids);
		const leftOut = countPrints(this.#source.show.rows) - countPrints(this.#cells.rows);
		const said = saidOfPaste(label, plan, unread, leftOut);
		this.#notices.close(); // what could not be done before is past
		this.#notices.say(said);
		return { step, said, unread };
	}

	/** How many of the cells that a plan has typed could not be read. */
	#unreadOf(plan: CellPlan, added: readonly RowId[]): number {
		const typed = [...plan.changes, ...plan.added.map(({ cells }, place) => ({ id: added[place]!, cells }))];
		const columns = new Map(typed.map(({ id, cells }) => [id, new Set(Object.keys(cells))]));
		const unread = this.#cells.rows.flatMap(({ id }, index) => {
			const own = columns.get(id);
			if (own === undefined) return [];
			const { findings } = this.#cells.sourceOf(index).result;
			return findings.filter(({ code, cells }) => code === 'not-read' && cells.some((cell) => own.has(cell)));
		});
		return unread.length;
	}
}

const selectionOf = ({ top, bottom, left, right }: Range) => ({
	...at(top, left),
	head: { row: bottom, column: right },
});
