import { CellElement } from './cellElement.ts';
import { type CellView, cellViews } from './cellView.ts';
import { type RowCell, rowCells } from './rowCells.ts';
import type { RowView } from './rowViews.ts';
import type { ShownColumn } from './shownColumns.svelte.ts';

/** What the texts of a row are made from. */
const madeFrom = ['places', 'row', 'result', 'steps', 'cost', 'isCostPartial', 'settings', 'moneySettings'] as const;

/** The cells of a row in the page. What a row shows is made in one pass, and only what differs is written. */
export class RowElements {
	readonly #wordsId: string;
	readonly #elements = new Map<string, CellElement>();
	/** The element that holds the cells that scroll, and its first, which holds those that stay. */
	#row: HTMLElement | undefined;
	#editor: Element | undefined;
	#view: RowView | undefined;
	#columns: readonly ShownColumn[] | undefined;
	#texts: readonly CellView[] = [];
	#cells: readonly RowCell[] = [];

	/** @param wordsId names the words that describe the active cell */
	constructor(wordsId: string) {
		this.#wordsId = wordsId;
	}

	/** Puts the cells into the row. */
	begin(row: HTMLElement): void {
		this.#row = row;
		this.#put();
	}

	draw(view: RowView, columns: readonly ShownColumn[]): void {
		const former = this.#view;
		// A moving selection formats nothing again.
		const isKept = this.#columns === columns && madeFrom.every((part) => former?.[part] === view[part]);
		if (!isKept)
			this.#texts = cellViews(
				view,
				view.places.map((place) => columns[place]!),
			);
		this.#cells = rowCells(this.#cells, view, columns, this.#texts);
		this.#view = view;
		this.#columns = columns;
		if (!view.isEditing) this.#editor?.remove();
		for (const cell of this.#cells) {
			let element = this.#elements.get(cell.column.key);
			if (!element) this.#elements.set(cell.column.key, (element = new CellElement()));
			element.draw(cell, this.#wordsId);
		}
		if (!isKept) this.#put();
	}

	/** Puts an editor into the active cell, until that is typed into no more. */
	hold(editor: Element): void {
		this.#editor = editor;
		const active = this.#cells.find(({ isActive }) => isActive);
		if (active) this.#elements.get(active.column.key)!.element.append(editor);
	}

	/** Has the cells stand in their order; those that are there stay, for one of them may have the focus. */
	#put(): void {
		if (!this.#row) return;
		for (const [key, { element }] of this.#elements)
			if (!this.#cells.some(({ column }) => column.key === key)) {
				element.remove();
				this.#elements.delete(key);
			}
		const stay = this.#row.firstElementChild!;
		let [lastThatStays, last] = [stay.firstElementChild!, stay];
		for (const { column } of this.#cells) {
			const { element } = this.#elements.get(column.key)!;
			const before = column.isFrozen ? lastThatStays : last;
			if (before.nextElementSibling !== element) before.after(element);
			if (column.isFrozen) lastThatStays = element;
			else last = element;
		}
	}
}
