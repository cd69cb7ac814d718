import type { GridSeen } from './gridSeen.svelte.ts';
import type { GridWindow } from './gridWindow.svelte.ts';

/** The focus of the grid, which is on the active cell or its editor. */
export class CellFocus {
	readonly #grid: GridSeen;
	readonly #view: GridWindow;
	#hadFocus = false;

	constructor(grid: GridSeen, view: GridWindow) {
		this.#grid = grid;
		this.#view = view;
	}

	/** The element of the active cell; undefined while it is not in the page. */
	get cell(): HTMLElement | undefined {
		const { rowIndex, columnIndex } = this.#grid.selection;
		const selector = `[data-row="${rowIndex}"][data-column="${columnIndex}"]`;
		return this.#view.scroller.querySelector<HTMLElement>(selector) ?? undefined;
	}

	/** Gives the focus to the active cell or its editor. In a tap, at once, or no keyboard comes up. */
	give(): void {
		const { cell } = this;
		const wanted = cell?.querySelector('input') ?? cell;
		const { activeElement } = document;
		if (activeElement === wanted || (cell?.contains(activeElement) && activeElement !== cell)) return;
		wanted?.focus({ preventScroll: true });
	}

	/**
	 * Gives the focus to the cell that has just become active, before anything of it is drawn: afterwards the browser
	 * would have to lay out the page for it, and a second time to paint it.
	 */
	giveAhead(): void {
		const { cell } = this;
		if (!cell || this.#grid.whole?.editor.editing || !this.#isInGrid()) return;
		// The caret of an editor would stay behind among cells that have no place for one, and the browser look for a place
		// through all of them before each frame that it draws.
		getSelection()?.removeAllRanges();
		cell.tabIndex = 0; // once it has the focus, the browser would lay out the page to see whether it can keep it
		cell.focus({ preventScroll: true });
	}

	/** Gives the focus to the active cell if the grid has it, or had it and its element has gone from the page. */
	keep(): void {
		const isLost = document.activeElement === document.body && this.#hadFocus;
		if (this.#isInGrid() || isLost) this.give();
	}

	/** Removes the focus from the grid, so that further keys are typed into no other cell. */
	letGo(): void {
		if (this.#isInGrid()) (document.activeElement as HTMLElement).blur();
		this.#hadFocus = false;
	}

	/** The focus has come to a cell. */
	entered(): void {
		this.#hadFocus = true;
	}

	/** The focus has left a cell. @param to what has it now; null where nothing has */
	left(to: EventTarget | null): void {
		this.#hadFocus = to === null;
	}

	#isInGrid(): boolean {
		return this.#view.scroller.contains(document.activeElement);
	}
}
