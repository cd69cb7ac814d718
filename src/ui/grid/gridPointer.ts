import { isSingle } from '../../core/grid/selection.ts';
import { type Dragged, GridDrag } from './gridDrag.svelte.ts';
import type { GridColumn } from './gridColumns.ts';
import type { GridState } from './gridState.svelte.ts';
import type { GridWindow } from './gridWindow.svelte.ts';
import { isHandle, placeBelow, placeOf, type PointerPlace } from './pointerPlaces.ts';

/** What the pointer needs besides the state of the grid. */
export interface PointerContext {
	readonly grid: GridState;
	readonly view: GridWindow;
	/** Gives the focus to the active cell, at once: later, no keyboard comes up. */
	readonly focus: () => void;
	/** Opens the active cell for typing. */
	readonly edit: () => void;
	/** The words that a column offers; none where anything may be typed. */
	readonly choicesOf: (column: GridColumn) => readonly string[];
	/** Opens the menu of the selected rows or columns at a place in the window. */
	readonly openMenu: (of: 'row' | 'column', x: number, y: number) => void;
}

/** How long a finger rests until it is a long press, in milliseconds: clearly longer than a tap. */
const longPressMs = 500;

/** How far a finger may stray and still be said to press, in pixels. */
const stillWithin = 10;

/** What a mouse drags on from where it was pressed. */
const dragsFrom: Partial<Record<PointerPlace['kind'], Dragged>> = { cell: 'cells', head: 'columns' };

/**
 * Presses and taps on the grid. A mouse selects a cell when it goes down and can be dragged; a finger may be about to
 * scroll, and selects it by a tap. Grips and handles can be dragged by either.
 */
export class GridPointer {
	readonly #context: PointerContext;
	readonly drag: GridDrag;
	#pressTimer: ReturnType<typeof setTimeout> | undefined;
	/** What a press did already, before it becomes a click. */
	#pressed: 'nothing' | 'selected' | 'again' | 'long' = 'nothing';
	#isFinger = false;

	constructor(context: PointerContext) {
		this.#context = context;
		this.drag = new GridDrag(context.grid, context.view);
	}

	/** A press, a click, or what asks for a menu. */
	heard(event: PointerEvent): void {
		if (event.type === 'click') this.#click(event);
		else if (event.type === 'contextmenu') this.#contextMenu(event);
		else this.#down(event);
	}

	#down(event: PointerEvent): void {
		clearTimeout(this.#pressTimer);
		this.drag.reset();
		this.#pressed = 'nothing';
		this.#isFinger = event.pointerType !== 'mouse';
		if (!event.isPrimary) return; // two fingers pinch, which is the browser's
		const place = placeOf(event.target);
		if (place === undefined || event.target instanceof HTMLInputElement || event.button !== 0) return;
		this.drag.press(place, event);
		if (this.#hold(place, event)) return;
		if (event.pointerType === 'mouse') this.#pressMouse(place, event.shiftKey);
		else this.#pressFinger(place, event);
	}

	/** Heard from the whole window: a drag may leave the grid. */
	move(event: PointerEvent): void {
		if (this.drag.strayed(event) > stillWithin) clearTimeout(this.#pressTimer);
		this.drag.move(event);
	}

	up(): void {
		clearTimeout(this.#pressTimer);
		this.drag.finish();
	}

	/** The press has become something else: the finger scrolls, or pinches. */
	cancel(): void {
		clearTimeout(this.#pressTimer);
		this.drag.cancel();
	}

	#click(event: MouseEvent): void {
		const { grid, focus, edit } = this.#context;
		clearTimeout(this.#pressTimer);
		const touched = placeOf(event.target);
		if (touched === undefined || touched.kind === 'edge') return;
		if (this.#pressed === 'long' || this.drag.hasMoved) return;
		// A handle that was not drawn lets the touch through to the cell that it lies over.
		const place = isHandle(touched) ? placeBelow(event) : touched;
		if (place === undefined) return;
		if (place.kind === 'cell' && grid.editor.editing && this.#isActive(place)) return;
		const isAgain = this.#pressed === 'again' || (place !== touched && this.#isAlone(place));
		grid.editor.commit('stay', true);
		if (isAgain && place.kind === 'head') return this.#openMenu(place, event);
		if (isAgain) return edit();
		if (this.#pressed === 'nothing') this.#select(place, event.shiftKey);
		if (place.kind === 'cell' && this.#isFinger && this.#hasList) return edit();
		focus();
	}

	#contextMenu(event: MouseEvent): void {
		const place = placeOf(event.target);
		if (place === undefined || place.kind === 'all' || event.target instanceof HTMLInputElement) return;
		event.preventDefault();
		clearTimeout(this.#pressTimer);
		this.#openMenu(isHandle(place) ? (placeBelow(event) ?? place) : place, event);
	}

	/** Whether the active cell takes words of the show: a finger gets their list at once, to choose by the next tap. */
	get #hasList(): boolean {
		const { grid, choicesOf } = this.#context;
		return !grid.selection.isRange && choicesOf(grid.selection.column).length > 0;
	}

	/** Holds what is there to be dragged, whatever it is dragged by. @returns whether that was it */
	#hold(place: PointerPlace, event: PointerEvent): boolean {
		const { selection, editor } = this.#context.grid;
		if (isHandle(place)) {
			event.preventDefault();
			selection.holdBy(place.kind === 'start' ? 'start' : 'end');
			this.drag.begin(place.kind === 'fill' ? 'fill' : 'cells');
		} else if (place.kind === 'edge') {
			event.preventDefault();
			editor.commit('stay', true);
			this.drag.begin('width');
		} else if (this.#isHeldWhole(place)) {
			editor.commit('stay', true);
			if (event.shiftKey) this.#select(place, true);
			else {
				this.#pressed = place.kind === 'head' ? 'again' : 'nothing';
				this.drag.begin(place.kind === 'head' ? 'columns away' : 'rows away');
			}
			if (event.pointerType !== 'mouse') this.#waitForLong(place, event);
		} else if (place.kind === 'grip' && !event.shiftKey) {
			// A grip carries its row whether or not that is selected; a finger that only taps it selects it when it is lifted.
			const select = () => this.#select(place, false);
			editor.commit('stay', true);
			this.drag.begin('rows away', select);
			if (event.pointerType === 'mouse') {
				this.#pressed = 'selected';
				select();
			} else this.#waitForLong(place, event);
		} else return false;
		return true;
	}

	#pressFinger(place: PointerPlace, event: PointerEvent): void {
		if (place.kind === 'all') return;
		if (place.kind === 'cell' && this.#isAlone(place)) this.#pressed = 'again';
		this.#waitForLong(place, event);
	}

	#waitForLong(place: PointerPlace, event: PointerEvent): void {
		this.#pressTimer = setTimeout(() => {
			if (this.drag.hasMoved) return;
			this.#pressed = 'long';
			this.drag.stop();
			this.#openMenu(place, event);
		}, longPressMs);
	}

	#pressMouse(place: PointerPlace, isExtending: boolean): void {
		const isAgain = place.kind === 'cell' && this.#isAlone(place) && !isExtending;
		this.#pressed = isAgain ? 'again' : 'selected';
		if (!isAgain) {
			this.#context.grid.editor.commit('stay', true);
			this.#select(place, isExtending);
		}
		const dragged = dragsFrom[place.kind];
		if (dragged !== undefined) this.drag.begin(dragged);
	}

	/** Selects what was pressed, or extends the selection up to it. */
	#select({ kind, row, column }: PointerPlace, isExtending: boolean): void {
		const { selection } = this.#context.grid;
		const anchor = selection.now?.anchor ?? { row, column };
		if (kind === 'cell') {
			if (isExtending) selection.extend(row, column);
			else selection.select(row, column);
		} else if (kind === 'head') selection.selectColumns(isExtending ? anchor.column : column, column);
		else if (kind === 'grip') selection.selectRows(isExtending ? anchor.row : row, row);
		else selection.selectWhole('everything');
	}

	#isActive({ row, column }: PointerPlace): boolean {
		const { selection } = this.#context.grid;
		return row === selection.rowIndex && column === selection.columnIndex;
	}

	/** Whether a cell is the only one selected and has the focus: pressed again, it is opened. */
	#isAlone(place: PointerPlace): boolean {
		const { grid, view } = this.#context;
		const { now } = grid.selection;
		if (now === undefined || !isSingle(now)) return false;
		return this.#isActive(place) && view.scroller.contains(document.activeElement);
	}

	/** Whether a row or column is selected from end to end, so that its grip or head carries it. */
	#isHeldWhole({ kind, row, column }: PointerPlace): boolean {
		const { selection, cells } = this.#context.grid;
		const { range } = selection;
		const { rows, columns } = cells.extent;
		if (range === undefined) return false;
		if (kind === 'head') {
			const isWhole = range.top === 0 && range.bottom === rows - 1 && rows > 1;
			return isWhole && column >= range.left && column <= range.right && range.right - range.left < columns - 1;
		}
		if (kind !== 'grip' || row < range.top || row > range.bottom) return false;
		return range.left === 0 && range.right === columns - 1;
	}

	#openMenu(place: PointerPlace, { clientX, clientY }: MouseEvent): void {
		const { grid, openMenu } = this.#context;
		const { selection } = grid;
		grid.editor.commit('stay', true);
		const { range } = selection;
		if (place.kind === 'head' || place.kind === 'edge') {
			if (!this.#isHeldWhole({ ...place, kind: 'head' })) selection.selectColumns(place.column);
			openMenu('column', clientX, clientY);
			return;
		}
		if (range === undefined || place.row < range.top || place.row > range.bottom) this.#select(place, false);
		openMenu('row', clientX, clientY);
	}
}
