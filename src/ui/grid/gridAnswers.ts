import { flushSync, tick } from 'svelte';
import type { CellFocus } from './cellFocus.ts';
import { copyByButton, copyCells, pasteCells } from './gridClipboard.ts';
import type { After } from './gridEditor.svelte.ts';
import { GridKeyboard } from './gridKeyboard.ts';
import type { GridAround } from './gridKeys.ts';
import { GridPointer } from './gridPointer.ts';
import type { GridSource } from './gridSource.ts';
import type { GridState } from './gridState.svelte.ts';
import type { GridWindow } from './gridWindow.svelte.ts';

/** What answers keys, fingers and the clipboard in the grid. */
export class GridAnswers {
	readonly grid: GridState;
	readonly pointer: GridPointer;
	readonly #keyboard: GridKeyboard;
	readonly #focus: CellFocus;
	readonly #around: GridAround;

	constructor(grid: GridState, source: GridSource, view: GridWindow, focus: CellFocus, around: GridAround) {
		this.grid = grid;
		this.#focus = focus;
		this.#around = around;
		this.#keyboard = new GridKeyboard({
			...around,
			grid,
			edit: () => this.edit(false),
			typeOver: () => this.edit(true),
			openMenu: (of) => this.#openMenu(of),
		});
		this.pointer = new GridPointer({
			grid,
			view,
			focus: this.focusNow,
			edit: () => this.edit(false),
			choicesOf: ({ words }) => words?.choices(source.settings) ?? [],
			openMenu: around.onmenu,
		});
	}

	/** Draws what has changed and gives the focus to the active cell. */
	readonly focusNow = (): void => {
		flushSync();
		this.#focus.give();
	};

	/** Opens the active cell for typing. @param isReplacing whether what it holds is typed over */
	edit(isReplacing: boolean): void {
		if (this.grid.editor.open(isReplacing)) this.focusNow();
		else if (this.grid.selection.column.key === 'findings') this.#around.onsentences();
	}

	/** Keeps what was typed and goes on into the next cell, the keyboard still up. */
	readonly goOn = (after: After): void => {
		if (!this.grid.editor.commit(after)) return;
		this.focusNow();
		if (this.grid.selection.column.column !== undefined) this.edit(false);
	};

	/** Does something from beside the editor, whose buttons may go from the page then. */
	async fromEditor(act: () => void): Promise<void> {
		act();
		await tick();
		this.#focus.give();
	}

	/** @param isFinger whether a finger was what touched the grid last */
	keydown(event: KeyboardEvent, isFinger: boolean): void {
		if (isFinger && this.#isNext(event)) {
			event.preventDefault();
			this.goOn('right');
			return;
		}
		if (!this.#keyboard.down(event)) return;
		event.preventDefault();
		this.#focus.giveAhead();
	}

	/** The focus has left a cell. */
	left(): void {
		this.#keyboard.left();
	}

	/** Copies, or cuts. */
	copy(event: ClipboardEvent): void {
		if (copyCells(this.grid, event)) event.preventDefault();
	}

	/** Copies, or cuts, once the event for it has passed. */
	copyLater(what: 'copy' | 'cut'): void {
		void copyByButton(this.grid, what);
	}

	/** @param pasted what the event holds, which can be read only while it comes */
	paste(event: ClipboardEvent, pasted: Pick<ClipboardEvent, 'clipboardData'> = event): void {
		if (pasteCells(this.grid, pasted)) event.preventDefault();
	}

	/** A press, a click, or what asks for a menu. */
	point(event: PointerEvent | MouseEvent): void {
		if (event.type === 'click') this.pointer.click(event);
		else if (event.type === 'contextmenu') this.pointer.contextMenu(event);
		else this.pointer.down(event as PointerEvent);
	}

	/** On an on-screen keyboard, which covers part of the page, the key that says Next goes along the row. */
	#isNext(event: KeyboardEvent): boolean {
		return (
			event.key === 'Enter' &&
			!event.isComposing &&
			!(event.ctrlKey || event.shiftKey || event.altKey || event.metaKey) &&
			this.grid.editor.editing !== undefined &&
			event.target instanceof HTMLInputElement &&
			document.documentElement.classList.contains('covered')
		);
	}

	#openMenu(of: 'row' | 'column'): void {
		const box = this.#focus.cell?.getBoundingClientRect();
		if (box !== undefined && (of === 'column' || this.grid.selection.row !== undefined))
			this.#around.onmenu(of, box.left, box.bottom);
	}
}
