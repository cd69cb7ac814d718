import { move, type Move, runColumn, step } from '../../core/grid/move.ts';
import { headRow, isSamePosition } from '../../core/grid/selection.ts';
import type { GridColumn } from './gridColumns.ts';
import type { GridSelection } from './gridSelection.svelte.ts';
import type { SeenCells } from './seenCells.ts';

/** Where keys move the selection: arrows and what is like them, Tab and Enter. */
export class SelectionMoves {
	readonly #selection: GridSelection;
	readonly #cells: SeenCells;

	constructor(selection: GridSelection, cells: SeenCells) {
		this.#selection = selection;
		this.#cells = cells;
	}

	/** The column to which Enter goes in the next row: where a run of Tab began, else the active one. */
	get runColumn(): GridColumn {
		const { now, columnIndex, column } = this.#selection;
		return this.#cells.columns.list[now ? runColumn(now) : columnIndex] ?? column;
	}

	/** Goes a way, or extends the selection that way. */
	go(way: Move, isExtending: boolean): void {
		const { now, rowIndex, pageRows } = this.#selection;
		if (!now || (isExtending && rowIndex === headRow)) return;
		const { extent, isFilled } = this.#cells;
		const shape = { ...extent, pageRows, hasHead: true, isFilled };
		// The first columns never scroll away: to go to them shows what begins beside them.
		const look = way === 'row start' || way === 'grid start' ? 'start' : isExtending ? 'head' : 'active';
		this.#selection.set(move(now, way, shape, isExtending), look);
	}

	/** Goes on as Tab and Enter do. @returns false if that leads nowhere */
	step(key: 'tab' | 'enter', isBack: boolean): boolean {
		const { now } = this.#selection;
		if (!now) return false;
		const next = step(now, key, isBack, this.#cells.extent);
		if (isSamePosition(next.active, now.active)) return false;
		this.#selection.set(next);
		return true;
	}
}
