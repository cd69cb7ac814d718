import { flushSync } from 'svelte';
import type { CellFocus } from './cellFocus.ts';
import { copyByButton, copyCells, pasteCells } from './gridClipboard.ts';
import type { After } from './gridEditor.svelte.ts';
import { GridKeyboard } from './gridKeyboard.ts';
import type { GridAround } from './gridKeys.ts';
import { GridPointer } from './gridPointer.ts';
import type { GridSource } from './gridSource.ts';
import type { GridState } from './gridState.svelte.ts';
import type { GridWindow } from './gridWindow.svelte.ts';
import type { Pasted } from './heldEvents.ts';
import { playAgain, pressAgain } from './playAgain.ts';

/** What answers keys, fingers and the clipboard in the grid. */
export function gridAnswers(
	grid: GridState,
	source: GridSource,
	view: GridWindow,
	focus: CellFocus,
	around: GridAround,
) {
	/** Draws what has changed and gives the focus to the active cell. */
	function focusNow(): void {
		flushSync();
		focus.give();
	}

	/** Opens the active cell to edit what it holds. @param isReplacing whether it is typed over */
	function edit(isReplacing = false): void {
		if (grid.editor.open(isReplacing)) focusNow();
		else if (grid.selection.column.key === 'findings') around.onsentences();
	}

	/** Keeps what was typed and goes on into the next cell, the keyboard still up. */
	function goOn(after: After): void {
		if (!grid.editor.commit(after)) return;
		focusNow();
		if (grid.selection.column.column !== undefined) edit();
	}

	const keyboard = new GridKeyboard({
		...around,
		grid,
		edit,
		typeOver: () => edit(true),
		openMenu(of) {
			const box = focus.cell?.getBoundingClientRect();
			if (box !== undefined && (of === 'column' || grid.selection.row !== undefined))
				around.onmenu(of, box.left, box.bottom);
		},
	});
	const pointer = new GridPointer({
		grid,
		view,
		focus: focusNow,
		edit,
		choicesOf: ({ words }) => words?.choices(source.settings) ?? [],
		openMenu: around.onmenu,
	});

	/** On an on-screen keyboard, which covers part of the page, the key that says Next goes along the row. */
	const isNext = (event: KeyboardEvent) =>
		event.key === 'Enter' &&
		!event.isComposing &&
		!(event.ctrlKey || event.shiftKey || event.altKey || event.metaKey) &&
		grid.editor.editing !== undefined &&
		event.target instanceof HTMLInputElement &&
		document.documentElement.classList.contains('covered');

	return {
		grid,
		keyboard,
		pointer,
		focusNow,
		goOn,
		edit,

		/** @param isFinger whether a finger was what touched the grid last */
		answer(event: Event, isFinger: boolean): void {
			if (event instanceof KeyboardEvent) {
				if (isFinger && isNext(event)) goOn('right');
				else if (!keyboard.down(event)) return;
				else focus.giveAhead();
				event.preventDefault();
			} else if (event instanceof ClipboardEvent) {
				const isDone = event.type === 'paste' ? pasteCells(grid, event) : copyCells(grid, event);
				if (isDone) event.preventDefault();
			} else pointer.heard(event as PointerEvent);
		},

		/** Answers what came before this was loaded. @param held what a paste held */
		answerLater(event: Event, held: Pasted | undefined): void {
			if (!view.scroller.isConnected) return;
			if (event instanceof KeyboardEvent) {
				focus.give(); // what had it may have gone from the page
				pressAgain(event);
			} else if (held) pasteCells(grid, held);
			// Later than the event itself, only a button's way to the clipboard is open.
			else if (event instanceof ClipboardEvent) void copyByButton(grid, event.type as 'copy' | 'cut');
			else playAgain(event);
		},
	};
}

/** See `gridAnswers`. */
export type GridAnswers = ReturnType<typeof gridAnswers>;
