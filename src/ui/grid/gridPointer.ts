import { isSingle } from '../../core/grid/selection.ts';
import { gridColumns } from './gridColumns.ts';
import type { GridState } from './gridState.svelte.ts';
import { headHeight, rowHeight } from './slots.ts';

/** What the pointer needs besides the state of the grid. */
export interface PointerContext {
	readonly grid: GridState;
	/** The element that is scrolled. */
	readonly scroller: () => HTMLElement;
	/** Gives the focus to the cell in hand, at once: later, no keyboard comes up. */
	readonly focus: () => void;
	/** Opens the cell in hand for typing. */
	readonly edit: () => void;
	/** Opens the row menu at a place in the window. */
	readonly openMenu: (x: number, y: number) => void;
}

/** What is under the pointer: a cell, the head of a column, the grip of a row or of all, or the selection's handle. */
interface Place {
	readonly kind: 'cell' | 'head' | 'grip' | 'all' | 'handle';
	readonly row: number;
	readonly column: number;
}

/** What a press drags: a corner of the selection, its columns or rows; rows to another place; the handle that fills. */
type Drag = 'cells' | 'columns' | 'rows' | 'rows away' | 'handle';

const longPressMs = 500;
const scrollEveryMs = 60;

/**
 * Presses, drags and taps on the grid. A mouse takes a cell when it goes down and can be dragged; a finger may be about
 * to scroll, and takes it by a tap. Grips and handles can be dragged by either.
 */
export class GridPointer {
	readonly #context: PointerContext;
	#pressTimer: ReturnType<typeof setTimeout> | undefined;
	#scrollTimer: ReturnType<typeof setInterval> | undefined;
	/** What a press did already, before it becomes a click. */
	#pressed: 'nothing' | 'took' | 'again' | 'dragged' | 'long' = 'nothing';
	#drag: Drag | undefined;
	#from: Place = { kind: 'cell', row: 0, column: 0 };
	#now = { x: 0, y: 0 };

	constructor(context: PointerContext) {
		this.#context = context;
	}

	down(event: PointerEvent): void {
		const { grid } = this.#context;
		this.#end();
		this.#pressed = 'nothing';
		const place = placeOf(event.target);
		if (place === undefined || event.target instanceof HTMLInputElement || event.button !== 0) return;
		const isMouse = event.pointerType === 'mouse';
		this.#from = place;
		if (place.kind === 'handle') {
			event.preventDefault();
			this.#drag = isMouse ? 'handle' : 'cells';
		} else if (place.kind === 'grip' && this.#isHeldWhole(place.row)) {
			grid.commit('stay', true);
			this.#drag = event.shiftKey ? undefined : 'rows away';
			if (event.shiftKey) this.#take(place, true);
		} else if (isMouse) this.#pressMouse(place, event.shiftKey);
		else if (place.kind === 'cell') {
			if (this.#isInHand(place)) this.#pressed = 'again';
			this.#pressTimer = setTimeout(() => {
				this.#pressed = 'long';
				this.#openMenu(place, event);
			}, longPressMs);
		}
	}

	/** Heard from the whole window: a drag may leave the grid. */
	move(event: PointerEvent): void {
		if (this.#drag === undefined || (event.pointerType === 'mouse' && event.buttons !== 1)) return;
		if (this.#context.grid.editing) return;
		this.#now = { x: event.clientX, y: event.clientY };
		this.#dragOn();
		const isOutside = this.#distance().some((pixels) => pixels !== 0);
		if (isOutside) this.#scrollTimer ??= setInterval(() => this.#scrollOn(), scrollEveryMs);
		else this.#stopScrolling();
	}

	up(): void {
		const { grid } = this.#context;
		const [drag, to] = [this.#drag, grid.dropAt];
		this.#end();
		if (drag === 'handle') grid.fillDrawn();
		if (drag === 'rows away' && to !== undefined) grid.moveRowsTo(to);
	}

	/** The press has become something else: the finger scrolls. */
	cancel(): void {
		this.#context.grid.drawnTo = undefined;
		this.#end();
	}

	click(event: MouseEvent): void {
		const { grid, focus, edit } = this.#context;
		clearTimeout(this.#pressTimer);
		const place = placeOf(event.target);
		if (place === undefined || place.kind === 'handle') return;
		if (this.#pressed === 'long' || this.#pressed === 'dragged') return;
		if (place.kind === 'cell' && grid.editing && place.row === grid.rowIndex && place.column === grid.column) return;
		grid.commit('stay', true);
		if (this.#pressed === 'again') return edit();
		if (this.#pressed === 'nothing') this.#take(place, event.shiftKey);
		focus();
	}

	contextMenu(event: MouseEvent): void {
		const place = placeOf(event.target);
		if (place === undefined || place.row < 0 || event.target instanceof HTMLInputElement) return;
		event.preventDefault();
		clearTimeout(this.#pressTimer);
		this.#openMenu(place, event);
	}

	#pressMouse(place: Place, isExtending: boolean): void {
		if (place.kind === 'cell' && this.#isInHand(place) && !isExtending) {
			this.#pressed = 'again';
			this.#drag = 'cells';
			return;
		}
		this.#context.grid.commit('stay', true);
		this.#take(place, isExtending);
		this.#pressed = 'took';
		this.#drag = ({ cell: 'cells', head: 'columns', grip: 'rows', all: undefined, handle: undefined } as const)[
			place.kind
		];
	}

	/** Takes what was pressed in hand, or extends what is in hand up to it. */
	#take({ kind, row, column }: Place, isExtending: boolean): void {
		const { grid } = this.#context;
		const anchor = grid.selection?.anchor ?? { row, column };
		if (kind === 'cell') {
			if (isExtending) grid.extend(row, column);
			else grid.select(row, column);
		} else if (kind === 'head') grid.selectColumns(isExtending ? anchor.column : column, column);
		else if (kind === 'grip') grid.selectRows(isExtending ? anchor.row : row, row);
		else grid.selectWhole('everything');
	}

	#dragOn(): void {
		const { grid } = this.#context;
		const place = this.#placeUnder();
		if (place === undefined) return;
		const isMoved = place.row !== this.#from.row || place.column !== this.#from.column;
		if (this.#pressed !== 'dragged' && !isMoved) return;
		this.#pressed = 'dragged';
		if (this.#drag === 'cells') grid.extend(place.row, place.column);
		else if (this.#drag === 'columns') grid.selectColumns(this.#from.column, place.column);
		else if (this.#drag === 'rows') grid.selectRows(this.#from.row, place.row);
		else if (this.#drag === 'handle') grid.drawTo(place.row, place.column);
		else grid.dropAt = this.#gapUnder(place.row);
	}

	/** The place before which a row would be dropped: above or below the middle of the one under the pointer. */
	#gapUnder(row: number): number {
		const scroller = this.#context.scroller();
		const y = this.#now.y - scroller.getBoundingClientRect().top - headHeight + scroller.scrollTop;
		return y > (row + 0.5) * rowHeight ? row + 1 : row;
	}

	/** How far the pointer is outside the cells, to each side. */
	#distance(): readonly [x: number, y: number] {
		const box = this.#context.scroller().getBoundingClientRect();
		const beyond = (at: number, least: number, most: number) => Math.min(0, at - least) + Math.max(0, at - most);
		return [beyond(this.#now.x, box.left, box.right), beyond(this.#now.y, box.top + headHeight, box.bottom)];
	}

	#scrollOn(): void {
		const [x, y] = this.#distance();
		this.#context.scroller().scrollBy(Math.sign(x) * rowHeight, Math.sign(y) * rowHeight);
		this.#dragOn();
	}

	/** The cell under the pointer, or the nearest to it that is seen. */
	#placeUnder(): Place | undefined {
		const scroller = this.#context.scroller();
		const box = scroller.getBoundingClientRect();
		const x = Math.max(box.left + 1, Math.min(this.#now.x, box.left + scroller.clientWidth - 2));
		const isHead = this.#drag === 'columns';
		const y = isHead
			? box.top + headHeight - 2
			: Math.max(box.top + headHeight + 1, Math.min(this.#now.y, box.top + scroller.clientHeight - 2));
		const place = placeOf(document.elementFromPoint(x, y));
		return place && (isHead || place.row >= 0) ? place : undefined;
	}

	/** Whether a cell is the only one selected and has the focus: pressed again, it is opened. */
	#isInHand({ row, column }: Place): boolean {
		const { grid, scroller } = this.#context;
		if (grid.selection === undefined || !isSingle(grid.selection)) return false;
		return row === grid.rowIndex && column === grid.column && scroller().contains(document.activeElement);
	}

	/** Whether a row is selected from end to end, so that its grip carries it. */
	#isHeldWhole(row: number): boolean {
		const { range } = this.#context.grid;
		if (range === undefined || row < range.top || row > range.bottom) return false;
		return range.left === 0 && range.right === gridColumns.length - 1;
	}

	#openMenu(place: Place, { clientX, clientY }: MouseEvent): void {
		const { grid, openMenu } = this.#context;
		grid.commit('stay', true);
		const { range } = grid;
		if (range === undefined || place.row < range.top || place.row > range.bottom) this.#take(place, false);
		openMenu(clientX, clientY);
	}

	#end(): void {
		clearTimeout(this.#pressTimer);
		this.#stopScrolling();
		this.#drag = undefined;
		this.#context.grid.dropAt = undefined;
	}

	#stopScrolling(): void {
		clearInterval(this.#scrollTimer);
		this.#scrollTimer = undefined;
	}
}

function placeOf(target: EventTarget | null): Place | undefined {
	const element =
		target instanceof Element ? target.closest<HTMLElement>('[data-handle], [data-grip], [data-row]') : null;
	if (element === null) return undefined;
	const { grip, handle } = element.dataset;
	if (grip !== undefined) return { kind: Number(grip) < 0 ? 'all' : 'grip', row: Number(grip), column: 0 };
	const cell = element.closest<HTMLElement>('[data-row]')!;
	const [row, column] = [Number(cell.dataset['row']), Number(cell.dataset['column'])];
	return { kind: handle !== undefined ? 'handle' : row < 0 ? 'head' : 'cell', row, column };
}
