import { type FillWay, planFill, planSpread, spreadTo } from '../../core/grid/planFill.ts';
import { cannotFill } from '../../core/grid/saidOfPaste.ts';
import { asTyped } from '../../core/show/asTyped.ts';
import type { CellPlace } from '../../core/show/cellPlace.ts';
import type { CellTexts } from '../../core/show/row.ts';
import { typeCells } from '../../core/commands/typeCells.ts';
import type { CellPlans } from './cellPlans.ts';
import { exactText } from './cellView.ts';
import type { GridEdits } from './gridEdits.ts';
import type { GridNotices } from './gridNotices.svelte.ts';
import type { GridSelection } from './gridSelection.svelte.ts';
import { columnNamed, type SeenCells } from './seenCells.ts';

/** What is done to the selected cells as a block: copied, filled, cleared. */
export class GridBlocks {
	readonly #cells: SeenCells;
	readonly #selection: GridSelection;
	readonly #edits: GridEdits;
	readonly #plans: CellPlans;
	readonly #notices: GridNotices;
	/** Where the handle of the selection has been drawn to, to fill it from there. */
	drawnTo = $state.raw<ReturnType<typeof spreadTo>>();

	constructor(cells: SeenCells, selection: GridSelection, edits: GridEdits, plans: CellPlans, notices: GridNotices) {
		this.#cells = cells;
		this.#selection = selection;
		this.#edits = edits;
		this.#plans = plans;
		this.#notices = notices;
	}

	/** The selected cells as texts: all that they show, in full, and what of it was typed. */
	copied(): { readonly shown: readonly string[][]; readonly typed: readonly string[][] } | undefined {
		const { range, rowIds } = this.#selection;
		if (range === undefined) return undefined;
		const columns = this.#cells.columns.list.slice(range.left, range.right + 1);
		const sources = rowIds.map((_, place) => this.#cells.sourceOf(range.top + place));
		return {
			shown: sources.map((source) => columns.map((column) => exactText(column, source))),
			typed: sources.map(({ row }) => columns.map(({ column }) => (column ? asTyped(row, column) : ''))),
		};
	}

	/** Hands the selected cells back to be worked out. */
	clear(label = 'Clear'): void {
		const { range, rowIds, column } = this.#selection;
		if (range === undefined) return;
		const { rows } = this.#cells;
		const columns = this.#cells.columns.list.slice(range.left, range.right + 1).flatMap(({ column }) => column ?? []);
		const cells: CellTexts = Object.fromEntries(columns.map((column) => [column, '']));
		const words = columns.length === 1 ? `${label} ${column.label.toLowerCase()}` : `${label} cells`;
		const cleared = rowIds.flatMap((id, place) =>
			columns.flatMap((column): CellPlace | readonly [] =>
				rows[range.top + place]?.typed[column] === undefined ? [] : { id, column },
			),
		);
		const changes = rowIds.map((id) => ({ id, cells }));
		if (cleared.length === 0) this.#notices.say('Nothing was typed there');
		else if (this.#edits.do((show, settings) => typeCells(show, changes, settings, words)))
			this.#notices.say(this.#saidOfCleared(cleared));
	}

	/** Fills the selection from its first row or column. */
	fill(way: FillWay): void {
		const { now, rowIndex, focus } = this.#selection;
		if (now === undefined || rowIndex < 0) return this.#notices.show(cannotFill(way, 'head'));
		const plan = planFill(way, now, this.#plans.plannedFor, this.#cells.typedAt);
		if (plan === undefined) this.#notices.show(cannotFill(way, 'cell'));
		else this.#plans.carryOut(plan, fillLabels[way], focus);
	}

	/** Draws the handle of the selection to a cell; what would be filled is shown. */
	drawTo(row: number, column: number): void {
		const { range } = this.#selection;
		this.drawnTo = range && spreadTo(range, row, column);
	}

	/** Lets the handle go: the selection is filled on to where it was drawn. */
	fillDrawn(): void {
		const { drawnTo } = this;
		const { range, focus } = this.#selection;
		this.drawnTo = undefined;
		if (range === undefined || drawnTo === undefined) return;
		const { way, target } = drawnTo;
		const plan = planSpread(way, range, target, this.#plans.plannedFor, this.#cells.typedAt);
		this.#plans.carryOut(plan, fillLabels[way], focus);
	}

	#saidOfCleared(cleared: readonly CellPlace[]): string {
		if (cleared.length > 1) return `${cleared.length} cells cleared`;
		const first = cleared[0]!;
		const { text, state } = this.#cells.viewOf(first) ?? { text: '', state: 'blank' };
		const words = { typed: '', blank: 'blank', 'worked out': 'worked out', inherited: 'from the show' }[state];
		return [columnNamed(first.column).label, text, words].filter((word) => word !== '').join(', ');
	}
}

const fillLabels: Readonly<Record<FillWay, string>> = { down: 'Fill down', right: 'Fill right' };
