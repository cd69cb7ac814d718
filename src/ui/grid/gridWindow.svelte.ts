import { costIn } from './arrangedRows.svelte.ts';
import type { RowsSource } from './gridSource.ts';
import type { GridSeen } from './gridSeen.svelte.ts';
import { columnsIn, keepRowViews, type RowView } from './rowViews.ts';
import {
	columnsInPage,
	headHeight,
	isSamePlaces,
	rowHeight,
	rowsInPage,
	shareSlots,
	type Slot,
	withPlace,
} from './slots.ts';

/** How wide an editor is at least, in pixels. */
const editorWidth = 144;

/** As the grid opens, so many more rows come into the page at a time: in between, the page may do something else. */
const rowsAtATime = 4;

/** Widths of the grips at the left, in pixels: for a finger, and for a mouse, as small as a target may be (WCAG 2.5.8). */
export const gripWidths = { finger: 44, mouse: 24 } as const;

/** What is seen of the grid through its scrolled window: which rows and columns are in the page, and where cells lie. */
export class GridWindow {
	readonly #grid: GridSeen;
	readonly #source: RowsSource;
	/** The element that is scrolled: also when it has left the page, for a scroll or an answer that comes later still. */
	scroller!: HTMLElement;
	/** Room of the window, in pixels. */
	width = $state(0);
	height = $state(0);
	scrollTop = $state(0);
	scrollLeft = $state(0);
	/** Width of the grips at the left, in pixels. */
	gripWidth = $state<number>(gripWidths.mouse);

	/** Where each column begins, in pixels from the left of the grip, and where the last one ends. */
	readonly edges: readonly number[] = $derived.by(() => {
		const edges = [this.gripWidth];
		for (const { shownWidth } of this.#grid.columns.list) edges.push(edges.at(-1)! + shownWidth);
		return edges;
	});
	/** How many columns stay where they are while the others are scrolled. */
	readonly #frozen = $derived.by(() => this.#grid.columns.list.filter(({ isFrozen }) => isFrozen).length);
	/** The width of the grip and of the columns that stay, in pixels. */
	readonly frozenWidth = $derived.by(() => this.edges[this.#frozen]!);

	#placesNow: readonly number[] = [];
	/** The columns in the page, from the left, by their places; the same object while they are the same. */
	readonly #places: readonly number[] = $derived.by(() => {
		const places = columnsInPage(this.edges, this.#frozen, this.scrollLeft, this.width);
		return (this.#placesNow = isSamePlaces(this.#placesNow, places) ? this.#placesNow : places);
	});
	readonly #frozenPlaces: readonly number[] = $derived.by(() =>
		Array.from({ length: this.#frozen }, (_, place) => place),
	);
	/** The columns in the page of the active row while it is not seen: those that stay, and the active one. */
	readonly #unseenPlaces: readonly number[] = $derived.by(() =>
		withPlace(this.#frozenPlaces, this.#grid.selection.columnIndex),
	);
	/** The columns in the page of the active row, and of the head while that is active: the active one is always there. */
	readonly activePlaces: readonly number[] = $derived.by(() =>
		withPlace(this.#places, this.#grid.selection.columnIndex),
	);

	/** What was selected when it was last followed, and whether it was typed into. */
	#followed: { readonly choice: object; readonly isEditing: boolean } | undefined;
	/** Whether what is looked at is in view, and so stays there. */
	#isFollowing = true;
	#slots: readonly Slot[] = [];
	/** How many rows may be in the page so far, but for the active one, which always is. */
	#most = $state(1);
	readonly #rowsInPage = $derived.by(() => {
		const { cells, selection } = this.#grid;
		const height = this.height - headHeight;
		const rows = rowsInPage(this.scrollTop, height, cells.rows.length, selection.rowIndex, this.#most);
		this.#slots = shareSlots(this.#slots, rows);
		return this.#slots;
	});
	#views: readonly RowView[] = [];
	/** The rows in the page. */
	readonly views: readonly RowView[] = $derived.by(() => {
		const { rowIndex, columnIndex, range } = this.#grid.selection;
		const { cells, whole } = this.#grid;
		const { rows } = cells;
		const edited = whole?.editor.editing?.id;
		const drawn = whole?.blocks.drawnTo?.target;
		const next = this.#rowsInPage.flatMap(({ slot, index }): RowView | readonly [] => {
			const [row, result] = [rows[index], cells.resultAt(index)];
			if (row === undefined || result === undefined) return [];
			const [selected, filled] = [columnsIn(range, index), columnsIn(drawn, index)];
			const isShown = index === rowIndex;
			return {
				slot,
				index,
				row,
				result,
				steps: this.#source.lateBench.stepsOf(row),
				...costIn(this.#source, row),
				settings: this.#source.settings,
				places: !isShown ? this.#places : this.#isRowInView(index) ? this.activePlaces : this.#unseenPlaces,
				activeColumn: isShown ? columnIndex : -1,
				selectedFrom: selected.from,
				selectedTo: selected.to,
				drawnFrom: filled.from,
				drawnTo: filled.to,
				isShown,
				address: this.#source.pictures?.addressOf(row, 'small'),
				isEditing: isShown && row.id === edited,
			};
		});
		this.#views = keepRowViews(this.#views, next);
		return this.#views;
	});

	constructor(grid: GridSeen, source: RowsSource) {
		this.#grid = grid;
		this.#source = source;
	}

	/** The columns of which the heads are in the page. */
	get headPlaces(): readonly number[] {
		return this.#grid.selection.rowIndex < 0 ? this.activePlaces : this.#places;
	}

	/** Rows that are wholly seen at a time, but one that is seen before and after a page is turned. */
	get pageRows(): number {
		return Math.max(1, Math.floor((this.height - headHeight) / rowHeight) - 1);
	}

	/** Whether rows that are in view may not be in the page yet. */
	get isOpening(): boolean {
		return this.#most !== Infinity;
	}

	/** Lets more rows into the page as the grid opens. */
	openOn(): void {
		this.#most = this.#rowsInPage.length < this.#most ? Infinity : this.#most + rowsAtATime;
	}

	/** The window has been scrolled. */
	scrolled(): void {
		this.#readScroll();
		// With another size the browser has scrolled, not the person: what was in view is brought back.
		if (this.#isMeasured()) this.#isFollowing = this.#isRowInView(this.#grid.selection.lookedAt.row);
	}

	/**
	 * Brings what is looked at into view when something is selected or typed into. When the show or the window changes,
	 * only what was in view stays so: an edit in another tab does not scroll the page back.
	 */
	follow(): void {
		const { selection, whole, columns } = this.#grid;
		const { choice, lookedAt } = selection;
		const isEditing = whole?.editor.editing !== undefined;
		if (this.#followed === undefined && this.#grid.leftAt?.choice === choice) {
			const { top, left } = this.#grid.leftAt;
			this.#followed = { choice, isEditing };
			this.#scrollTo(top, left);
			this.#isFollowing = this.#isRowInView(lookedAt.row);
			return;
		}
		const isChosen = choice !== this.#followed?.choice || isEditing !== this.#followed.isEditing;
		this.#followed = { choice, isEditing };
		if (!isChosen && !this.#isFollowing) return;
		const more = isEditing ? Math.max(0, editorWidth - (columns.list[lookedAt.column]?.shownWidth ?? 0)) : 0;
		this.bringIntoView(lookedAt.row, lookedAt.column, more);
		this.#isFollowing = true;
	}

	/**
	 * Scrolls no more than needed to see a cell. Reads nothing of the page's layout, which would have to be made at
	 * once: only what scroll events have reported.
	 * @param rowIndex -1 to look for the column alone
	 * @param more the room that the cell needs to the right of its column, in pixels
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

	/** The grid goes from the page: it will be seen again as it is. */
	leave(): void {
		this.#grid.leftAt = { choice: this.#grid.selection.choice, top: this.scrollTop, left: this.scrollLeft };
	}

	/** Whether the window has the size that is known of it. */
	#isMeasured(): boolean {
		return this.scroller.clientWidth === this.width && this.scroller.clientHeight === this.height;
	}

	/** Whether a row is seen, in part at least; the head always is. */
	#isRowInView(rowIndex: number): boolean {
		const top = rowIndex * rowHeight - this.scrollTop;
		return rowIndex < 0 || (top > -rowHeight && top < this.height - headHeight);
	}

	#scrollTo(top: number, left: number): void {
		this.scroller.scrollTo(left, top);
		this.#readScroll();
	}

	#readScroll(): void {
		[this.scrollTop, this.scrollLeft] = [this.scroller.scrollTop, this.scroller.scrollLeft];
	}
}
