import type { GridSource } from './gridBlocks.svelte.ts';
import type { GridState } from './gridState.svelte.ts';
import { columnsIn, keepRowViews, type RowView } from './rowViews.ts';
import { headHeight, rowHeight, rowsInPage, shareSlots, type Slot } from './slots.ts';

/** What is seen of the grid through its scrolled window: which rows are in the page, and where cells lie. */
export class GridWindow {
	readonly #grid: GridState;
	readonly #source: GridSource;
	/** The element that is scrolled. */
	scroller!: HTMLElement;
	/** Room of the window, in pixels. */
	width = $state(0);
	height = $state(0);
	scrollTop = $state(0);
	scrollLeft = $state(0);
	/** Width of the grips at the left, in pixels. */
	gripWidth = $state(24);

	/** Where each column begins, in pixels from the left of the grip, and where the last one ends. */
	readonly edges: readonly number[] = $derived.by(() => {
		const edges = [this.gripWidth];
		for (const { shownWidth } of this.#grid.columns.list) edges.push(edges.at(-1)! + shownWidth);
		return edges;
	});
	/** How much the grip and the columns that stay take, in pixels. */
	readonly frozenWidth = $derived.by(() => this.edges[this.#grid.columns.list.findIndex(({ isFrozen }) => !isFrozen)]!);

	#slots: readonly Slot[] = [];
	readonly #rowsInPage = $derived.by(() => {
		const rows = rowsInPage(this.scrollTop, this.height, this.#grid.rows.length, this.#grid.rowIndex);
		this.#slots = shareSlots(this.#slots, rows);
		return this.#slots;
	});
	#views: readonly RowView[] = [];
	/** The rows in the page. */
	readonly views: readonly RowView[] = $derived.by(() => {
		const { rowIndex, range, editing, rows } = this.#grid;
		const drawn = this.#grid.drawnTo?.target;
		const next = this.#rowsInPage.flatMap(({ slot, index }): RowView | readonly [] => {
			const [row, result] = [rows[index], this.#grid.resultAt(index)];
			if (row === undefined || result === undefined) return [];
			const [selected, filled] = [columnsIn(range, index), columnsIn(drawn, index)];
			const isShown = index === rowIndex;
			return {
				slot,
				index,
				row,
				result,
				steps: this.#source.lateBench.stepsOf(row),
				settings: this.#source.settings,
				activeColumn: isShown ? this.#grid.column : -1,
				selectedFrom: selected.from,
				selectedTo: selected.to,
				drawnFrom: filled.from,
				drawnTo: filled.to,
				isShown,
				isEditing: isShown && editing !== undefined,
			};
		});
		this.#views = keepRowViews(this.#views, next);
		return this.#views;
	});

	constructor(grid: GridState, source: GridSource) {
		this.#grid = grid;
		this.#source = source;
	}

	/** Rows that are wholly seen at a time, but one that is seen before and after a page is turned. */
	get pageRows(): number {
		return Math.max(1, Math.floor((this.height - headHeight) / rowHeight) - 1);
	}

	/** Takes in where the window has been scrolled to. */
	scrolled(): void {
		[this.scrollTop, this.scrollLeft] = [this.scroller.scrollTop, this.scroller.scrollLeft];
	}

	/** Whether a row is seen, in part at least; the head always is. */
	isRowInView(rowIndex: number): boolean {
		const top = rowIndex * rowHeight - this.scrollTop;
		return rowIndex < 0 || (top > -rowHeight && top < this.height - headHeight);
	}

	/**
	 * Scrolls no more than it takes to see a cell. Reads nothing of the page's layout, which would have to be made at
	 * once: only what scrolling has told.
	 * @param rowIndex -1 to look for the column alone
	 * @param more what the cell takes to the right of its column, in pixels
	 */
	bringIntoView(rowIndex: number, column: number, more = 0): void {
		if (rowIndex >= 0) {
			const top = rowIndex * rowHeight;
			const room = this.height - headHeight - rowHeight;
			if (top < this.scrollTop) this.#scrollTo(top, this.scrollLeft);
			else if (top > this.scrollTop + room) this.#scrollTo(Math.min(top, top - room), this.scrollLeft);
		}
		if (this.#grid.columns.list[column]?.isFrozen ?? true) return;
		const [left, right] = [this.edges[column]!, this.edges[column + 1]! + more];
		if (left - this.frozenWidth < this.scrollLeft || right - left > this.width - this.frozenWidth)
			this.#scrollTo(this.scrollTop, left - this.frozenWidth);
		else if (right > this.scrollLeft + this.width) this.#scrollTo(this.scrollTop, right - this.width);
	}

	#scrollTo(top: number, left: number): void {
		this.scroller.scrollTo(left, top);
		this.scrolled();
	}
}
