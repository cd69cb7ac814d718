import { widthBounds } from '../../core/grid/columnView.ts';
import type { GridState } from './gridState.svelte.ts';
import type { GridWindow } from './gridWindow.svelte.ts';
import { placeBelow, type PointerPlace } from './pointerPlaces.ts';
import { headHeight, rowHeight } from './slots.ts';

/** What is dragged: a corner of the selection, its columns; those or rows to another place; what fills; a width. */
export type Dragged = 'cells' | 'columns' | 'rows away' | 'columns away' | 'fill' | 'width';

/** How often the grid scrolls on while a drag is held past its edge, in milliseconds: quick, and still easy to stop. */
const scrollEveryMs = 60;

/** A drag over the grid, which may leave it: then the grid is scrolled. */
export class GridDrag {
	readonly #grid: GridState;
	readonly #view: GridWindow;
	#scrollTimer: ReturnType<typeof setInterval> | undefined;
	#what: Dragged | undefined;
	#onfirst: (() => void) | undefined;
	#from: PointerPlace = { kind: 'cell', row: 0, column: 0 };
	#begun = { x: 0, y: 0 };
	#widthBefore = 0;
	#now = { x: 0, y: 0 };
	#hasMoved = false;
	/** The place before which rows that are being dragged would go; undefined while none are. */
	dropAt = $state.raw<number>();
	/** The place before which columns that are being dragged would go; undefined while none are. */
	dropBefore = $state.raw<number>();

	constructor(grid: GridState, view: GridWindow) {
		this.#grid = grid;
		this.#view = view;
	}

	/** Whether the last press became a drag, even if that has ended. */
	get hasMoved(): boolean {
		return this.#hasMoved;
	}

	/** A press, which a drag may begin from. */
	press(place: PointerPlace, { clientX, clientY }: PointerEvent): void {
		this.#from = place;
		this.#begun = { x: clientX, y: clientY };
	}

	/** How far the pointer is from where it was pressed, in pixels. */
	strayed({ clientX, clientY }: PointerEvent): number {
		return Math.hypot(clientX - this.#begun.x, clientY - this.#begun.y);
	}

	/**
	 * From now on the pointer drags.
	 * @param onfirst done when it has moved off what it was pressed on
	 */
	begin(what: Dragged, onfirst?: () => void): void {
		this.#what = what;
		this.#onfirst = onfirst;
		if (what === 'width') this.#widthBefore = this.#grid.columns.list[this.#from.column]!.shownWidth;
	}

	/** Heard from the whole window: a drag may leave the grid. */
	move(event: PointerEvent): void {
		if (this.#what === undefined || (event.pointerType === 'mouse' && event.buttons !== 1)) return;
		if (this.#grid.editor.editing) return;
		this.#now = { x: event.clientX, y: event.clientY };
		if (this.#what === 'width') return this.#drawWidth();
		this.#dragOn();
		const isOutside = this.#distance().some((pixels) => pixels !== 0);
		if (isOutside) this.#scrollTimer ??= setInterval(() => this.#scrollOn(), scrollEveryMs);
		else this.#stopScrolling();
	}

	/** Lets go: what was dragged goes where it was dragged to. */
	finish(): void {
		const { rowEdits, columnEdits, blocks, columns } = this.#grid;
		const [what, to, before, drawn] = [this.#what, this.dropAt, this.dropBefore, columns.drawn];
		this.stop();
		if (what === 'fill') blocks.fillDrawn();
		if (what === 'rows away' && to !== undefined) rowEdits.moveTo(to);
		if (what === 'columns away' && before !== undefined) columnEdits.moveTo(before);
		if (what === 'width' && drawn !== undefined) columns.size(drawn.key, drawn.width);
	}

	/** Lets go, and everything stays where it was. */
	cancel(): void {
		this.#grid.blocks.drawnTo = undefined;
		this.#grid.columns.drawn = undefined;
		this.stop();
	}

	/** Forgets the last press. */
	reset(): void {
		this.stop();
		this.#hasMoved = false;
	}

	/** The pointer drags no more. */
	stop(): void {
		this.#stopScrolling();
		this.#what = undefined;
		this.dropAt = undefined;
		this.dropBefore = undefined;
	}

	#dragOn(): void {
		const { selection, blocks } = this.#grid;
		const place = this.#placeUnder();
		if (place === undefined) return;
		const isElsewhere = place.row !== this.#from.row || place.column !== this.#from.column;
		if (!this.#hasMoved && !isElsewhere) return;
		if (!this.#hasMoved) this.#onfirst?.();
		this.#hasMoved = true;
		if (this.#what === 'cells') selection.extend(place.row, place.column);
		else if (this.#what === 'columns') selection.selectColumns(this.#from.column, place.column);
		else if (this.#what === 'fill') blocks.drawTo(place.row, place.column);
		else if (this.#what === 'columns away') this.dropBefore = this.#columnGapUnder(place.column);
		else this.dropAt = this.#gapUnder(place.row);
	}

	/** Draws the edge of a column to where the pointer is. */
	#drawWidth(): void {
		const { columns } = this.#grid;
		const { key } = columns.list[this.#from.column]!;
		const { least, greatest } = widthBounds;
		const width = Math.max(least, Math.min(greatest, this.#widthBefore + this.#now.x - this.#begun.x));
		this.#hasMoved = true;
		columns.drawn = { key, width: Math.round(width) };
	}

	/** The place before which a column would be dropped: left or right of the middle of the one under the pointer. */
	#columnGapUnder(column: number): number {
		const { edges, scroller, scrollLeft } = this.#view;
		const { isFrozen } = this.#grid.columns.list[column]!;
		const x = this.#now.x - scroller.getBoundingClientRect().left + (isFrozen ? 0 : scrollLeft);
		return x > (edges[column]! + edges[column + 1]!) / 2 ? column + 1 : column;
	}

	/** The place before which a row would be dropped: above or below the middle of the one under the pointer. */
	#gapUnder(row: number): number {
		const { scroller } = this.#view;
		const y = this.#now.y - scroller.getBoundingClientRect().top - headHeight + scroller.scrollTop;
		return y > (row + 0.5) * rowHeight ? row + 1 : row;
	}

	/** How far the pointer is outside the cells, to each side. */
	#distance(): readonly [x: number, y: number] {
		const box = this.#view.scroller.getBoundingClientRect();
		const beyond = (at: number, least: number, most: number) => Math.min(0, at - least) + Math.max(0, at - most);
		return [beyond(this.#now.x, box.left, box.right), beyond(this.#now.y, box.top + headHeight, box.bottom)];
	}

	#scrollOn(): void {
		const [x, y] = this.#distance();
		this.#view.scroller.scrollBy(Math.sign(x) * rowHeight, Math.sign(y) * rowHeight);
		this.#dragOn();
	}

	/** The cell under the pointer, or the nearest to it that is seen. */
	#placeUnder(): PointerPlace | undefined {
		const { scroller } = this.#view;
		const box = scroller.getBoundingClientRect();
		const x = Math.max(box.left + 1, Math.min(this.#now.x, box.left + scroller.clientWidth - 2));
		const isHead = this.#what === 'columns' || this.#what === 'columns away';
		const y = isHead
			? box.top + headHeight - 2
			: Math.max(box.top + headHeight + 1, Math.min(this.#now.y, box.top + scroller.clientHeight - 2));
		const place = placeBelow({ clientX: x, clientY: y }); // the handle that is drawn may lie over it
		return place && (isHead || place.row >= 0) ? place : undefined;
	}

	#stopScrolling(): void {
		clearInterval(this.#scrollTimer);
		this.#scrollTimer = undefined;
	}
}
