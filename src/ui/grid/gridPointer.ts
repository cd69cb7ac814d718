import { widthBounds } from '../../core/grid/columnView.ts';
import { isSingle } from '../../core/grid/selection.ts';
import type { GridState } from './gridState.svelte.ts';
import type { GridWindow } from './gridWindow.svelte.ts';
import { headHeight, rowHeight } from './slots.ts';

/** What the pointer needs besides the state of the grid. */
export interface PointerContext {
	readonly grid: GridState;
	readonly view: GridWindow;
	/** Gives the focus to the cell in hand, at once: later, no keyboard comes up. */
	readonly focus: () => void;
	/** Opens the cell in hand for typing. */
	readonly edit: () => void;
	/** Opens the menu of the rows or of the columns in hand at a place in the window. */
	readonly openMenu: (of: 'row' | 'column', x: number, y: number) => void;
}

/** What is under the pointer: a cell, a column's head or its edge, the grip of a row or of all, a selection's handle. */
interface Place {
	readonly kind: 'cell' | 'head' | 'edge' | 'grip' | 'all' | 'start' | 'end' | 'fill';
	readonly row: number;
	readonly column: number;
}

/** What a press drags: a corner of the selection, its columns or rows; those to another place; what fills; a width. */
type Drag = 'cells' | 'columns' | 'rows' | 'rows away' | 'columns away' | 'fill' | 'width';

const longPressMs = 500;
/** How far a finger may stray and still be said to press, in pixels. */
const stillWithin = 10;
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
	#begun = { x: 0, y: 0, width: 0 };
	#now = { x: 0, y: 0 };

	constructor(context: PointerContext) {
		this.#context = context;
	}

	down(event: PointerEvent): void {
		this.#end();
		this.#pressed = 'nothing';
		if (!event.isPrimary) return; // two fingers pinch, which is the browser's
		const place = placeOf(event.target);
		if (place === undefined || event.target instanceof HTMLInputElement || event.button !== 0) return;
		this.#from = place;
		this.#begun = { x: event.clientX, y: event.clientY, width: 0 };
		if (this.#takeHold(place, event)) return;
		if (event.pointerType === 'mouse') this.#pressMouse(place, event.shiftKey);
		else this.#pressFinger(place, event);
	}

	/** Takes hold of what is there to be dragged, whatever it is dragged by. @returns whether that was it */
	#takeHold(place: Place, event: PointerEvent): boolean {
		const { grid } = this.#context;
		if (place.kind === 'start' || place.kind === 'end' || place.kind === 'fill') {
			event.preventDefault();
			grid.holdBy(place.kind === 'start' ? 'start' : 'end');
			this.#drag = place.kind === 'fill' ? 'fill' : 'cells';
		} else if (place.kind === 'edge') {
			event.preventDefault();
			grid.commit('stay', true);
			this.#begun.width = grid.columns.list[place.column]!.shownWidth;
			this.#drag = 'width';
		} else if (this.#isHeldWhole(place)) {
			grid.commit('stay', true);
			if (event.shiftKey) this.#take(place, true);
			else {
				this.#pressed = place.kind === 'head' ? 'again' : 'nothing';
				this.#drag = place.kind === 'head' ? 'columns away' : 'rows away';
			}
			if (event.pointerType !== 'mouse') this.#waitForLong(place, event);
		} else return false;
		return true;
	}

	/** Heard from the whole window: a drag may leave the grid. */
	move(event: PointerEvent): void {
		const [x, y] = [event.clientX - this.#begun.x, event.clientY - this.#begun.y];
		if (Math.hypot(x, y) > stillWithin) clearTimeout(this.#pressTimer);
		if (this.#drag === undefined || (event.pointerType === 'mouse' && event.buttons !== 1)) return;
		if (this.#context.grid.editing) return;
		this.#now = { x: event.clientX, y: event.clientY };
		if (this.#drag === 'width') return this.#drawWidth();
		this.#dragOn();
		const isOutside = this.#distance().some((pixels) => pixels !== 0);
		if (isOutside) this.#scrollTimer ??= setInterval(() => this.#scrollOn(), scrollEveryMs);
		else this.#stopScrolling();
	}

	up(): void {
		const { grid } = this.#context;
		const [drag, to, before, drawn] = [this.#drag, grid.dropAt, grid.dropBefore, grid.columns.drawn];
		this.#end();
		if (drag === 'fill') grid.fillDrawn();
		if (drag === 'rows away' && to !== undefined) grid.moveRowsTo(to);
		if (drag === 'columns away' && before !== undefined) grid.moveColumnsTo(before);
		if (drag === 'width' && drawn !== undefined) grid.columns.size(drawn.key, drawn.width);
	}

	/** The press has become something else: the finger scrolls, or pinches. */
	cancel(): void {
		const { grid } = this.#context;
		grid.drawnTo = undefined;
		grid.columns.drawn = undefined;
		this.#end();
	}

	click(event: MouseEvent): void {
		const { grid, focus, edit } = this.#context;
		clearTimeout(this.#pressTimer);
		const touched = placeOf(event.target);
		if (touched === undefined || touched.kind === 'edge') return;
		if (this.#pressed === 'long' || this.#pressed === 'dragged') return;
		// A handle that was not drawn lets the touch through to the cell that it lies over.
		const place = isHandle(touched) ? placeBelow(event) : touched;
		if (place === undefined) return;
		if (place.kind === 'cell' && grid.editing && place.row === grid.rowIndex && place.column === grid.column) return;
		const isAgain = this.#pressed === 'again' || (place !== touched && this.#isInHand(place));
		grid.commit('stay', true);
		if (isAgain && place.kind === 'head') return this.#openMenu(place, event);
		if (isAgain) return edit();
		if (this.#pressed === 'nothing') this.#take(place, event.shiftKey);
		focus();
	}

	contextMenu(event: MouseEvent): void {
		const place = placeOf(event.target);
		if (place === undefined || place.kind === 'all' || event.target instanceof HTMLInputElement) return;
		event.preventDefault();
		clearTimeout(this.#pressTimer);
		this.#openMenu(isHandle(place) ? (placeBelow(event) ?? place) : place, event);
	}

	#pressFinger(place: Place, event: PointerEvent): void {
		if (place.kind === 'all') return;
		if (place.kind === 'cell' && this.#isInHand(place)) this.#pressed = 'again';
		this.#waitForLong(place, event);
	}

	#waitForLong(place: Place, event: PointerEvent): void {
		this.#pressTimer = setTimeout(() => {
			this.#pressed = 'long';
			this.#drag = undefined;
			this.#openMenu(place, event);
		}, longPressMs);
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
		const drags: Partial<Record<Place['kind'], Drag>> = { cell: 'cells', head: 'columns', grip: 'rows' };
		this.#drag = drags[place.kind];
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
		clearTimeout(this.#pressTimer);
		if (this.#drag === 'cells') grid.extend(place.row, place.column);
		else if (this.#drag === 'columns') grid.selectColumns(this.#from.column, place.column);
		else if (this.#drag === 'rows') grid.selectRows(this.#from.row, place.row);
		else if (this.#drag === 'fill') grid.drawTo(place.row, place.column);
		else if (this.#drag === 'columns away') grid.dropBefore = this.#columnGapUnder(place.column);
		else grid.dropAt = this.#gapUnder(place.row);
	}

	/** Draws the edge of a column to where the pointer is. */
	#drawWidth(): void {
		const { columns } = this.#context.grid;
		const { key } = columns.list[this.#from.column]!;
		const { least, greatest } = widthBounds;
		const width = Math.max(least, Math.min(greatest, this.#begun.width + this.#now.x - this.#begun.x));
		this.#pressed = 'dragged';
		columns.drawn = { key, width: Math.round(width) };
	}

	/** The place before which a column would be dropped: left or right of the middle of the one under the pointer. */
	#columnGapUnder(column: number): number {
		const { edges, scroller, scrollLeft } = this.#context.view;
		const { isFrozen } = this.#context.grid.columns.list[column]!;
		const x = this.#now.x - scroller.getBoundingClientRect().left + (isFrozen ? 0 : scrollLeft);
		return x > (edges[column]! + edges[column + 1]!) / 2 ? column + 1 : column;
	}

	/** The place before which a row would be dropped: above or below the middle of the one under the pointer. */
	#gapUnder(row: number): number {
		const scroller = this.#context.view.scroller;
		const y = this.#now.y - scroller.getBoundingClientRect().top - headHeight + scroller.scrollTop;
		return y > (row + 0.5) * rowHeight ? row + 1 : row;
	}

	/** How far the pointer is outside the cells, to each side. */
	#distance(): readonly [x: number, y: number] {
		const box = this.#context.view.scroller.getBoundingClientRect();
		const beyond = (at: number, least: number, most: number) => Math.min(0, at - least) + Math.max(0, at - most);
		return [beyond(this.#now.x, box.left, box.right), beyond(this.#now.y, box.top + headHeight, box.bottom)];
	}

	#scrollOn(): void {
		const [x, y] = this.#distance();
		this.#context.view.scroller.scrollBy(Math.sign(x) * rowHeight, Math.sign(y) * rowHeight);
		this.#dragOn();
	}

	/** The cell under the pointer, or the nearest to it that is seen. */
	#placeUnder(): Place | undefined {
		const scroller = this.#context.view.scroller;
		const box = scroller.getBoundingClientRect();
		const x = Math.max(box.left + 1, Math.min(this.#now.x, box.left + scroller.clientWidth - 2));
		const isHead = this.#drag === 'columns' || this.#drag === 'columns away';
		const y = isHead
			? box.top + headHeight - 2
			: Math.max(box.top + headHeight + 1, Math.min(this.#now.y, box.top + scroller.clientHeight - 2));
		const place = placeOf(document.elementFromPoint(x, y));
		return place && (isHead || place.row >= 0) ? place : undefined;
	}

	/** Whether a cell is the only one selected and has the focus: pressed again, it is opened. */
	#isInHand({ row, column }: Place): boolean {
		const { grid, view } = this.#context;
		if (grid.selection === undefined || !isSingle(grid.selection)) return false;
		return row === grid.rowIndex && column === grid.column && view.scroller.contains(document.activeElement);
	}

	/** Whether a row or column is selected from end to end, so that its grip or head carries it. */
	#isHeldWhole({ kind, row, column }: Place): boolean {
		const { range, columns, rows } = this.#context.grid;
		if (range === undefined) return false;
		if (kind === 'head') {
			const isWhole = range.top === 0 && range.bottom === rows.length - 1 && rows.length > 1;
			return (
				isWhole && column >= range.left && column <= range.right && range.right - range.left < columns.list.length - 1
			);
		}
		if (kind !== 'grip' || row < range.top || row > range.bottom) return false;
		return range.left === 0 && range.right === columns.list.length - 1;
	}

	#openMenu(place: Place, { clientX, clientY }: MouseEvent): void {
		const { grid, openMenu } = this.#context;
		grid.commit('stay', true);
		const { range } = grid;
		if (place.kind === 'head' || place.kind === 'edge') {
			if (!this.#isHeldWhole({ ...place, kind: 'head' })) grid.selectColumns(place.column);
			openMenu('column', clientX, clientY);
			return;
		}
		if (range === undefined || place.row < range.top || place.row > range.bottom) this.#take(place, false);
		openMenu('row', clientX, clientY);
	}

	#end(): void {
		clearTimeout(this.#pressTimer);
		this.#stopScrolling();
		this.#drag = undefined;
		this.#context.grid.dropAt = undefined;
		this.#context.grid.dropBefore = undefined;
	}

	#stopScrolling(): void {
		clearInterval(this.#scrollTimer);
		this.#scrollTimer = undefined;
	}
}

const isHandle = ({ kind }: Place): boolean => kind === 'start' || kind === 'end' || kind === 'fill';

/** The cell under a point, below the handles that lie over it. */
const placeBelow = ({ clientX, clientY }: MouseEvent): Place | undefined =>
	document
		.elementsFromPoint(clientX, clientY)
		.map(placeOf)
		.find((place) => place !== undefined && !isHandle(place));

function placeOf(target: EventTarget | null): Place | undefined {
	const element =
		target instanceof Element
			? target.closest<HTMLElement>('[data-handle], [data-edge], [data-grip], [data-row]')
			: null;
	if (element === null) return undefined;
	const { grip, handle, edge } = element.dataset;
	if (handle !== undefined) return { kind: handle as 'start' | 'end' | 'fill', row: -1, column: -1 };
	if (grip !== undefined) return { kind: Number(grip) < 0 ? 'all' : 'grip', row: Number(grip), column: 0 };
	const cell = element.closest<HTMLElement>('[data-row]')!;
	const [row, column] = [Number(cell.dataset['row']), Number(cell.dataset['column'])];
	return { kind: edge !== undefined ? 'edge' : row < 0 ? 'head' : 'cell', row, column };
}
