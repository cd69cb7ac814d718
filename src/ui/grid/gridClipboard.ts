import { ownCellsType, readOwnCells, writeOwnCells } from '../../core/grid/ownCells.ts';
import { clipboardRefused, nothingToPaste } from '../../core/grid/saidOfClipboard.ts';
import { readClipboard, writeClipboard } from '../../core/grid/clipboardText.ts';
import type { GridState } from './gridState.svelte.ts';

/** What was copied here last by a button, which puts no more than a text on the clipboard: what of it was typed. */
let lastCopied: { readonly text: string; readonly typed: readonly (readonly string[])[] } | undefined;

/**
 * Copies or cuts the selected cells: what they show, for other programs, and what of it was typed, for this one.
 * @returns whether the grid has dealt with it
 */
export function copyCells(grid: GridState, { clipboardData, type }: ClipboardEvent): boolean {
	const copied = grid.editor.editing ? undefined : grid.blocks.copied();
	if (copied === undefined || clipboardData === null) return false;
	clipboardData.setData('text/plain', writeClipboard(copied.shown));
	clipboardData.setData(ownCellsType, writeOwnCells(copied.typed));
	sayCopied(grid, type === 'cut' ? 'cut' : 'copy', copied.shown);
	return true;
}

/**
 * Pastes into the selected cells. Cells copied here stay what they are: typed where they were typed, else handed back.
 * @returns whether the grid has dealt with it
 */
export function pasteCells(grid: GridState, { clipboardData }: Pick<ClipboardEvent, 'clipboardData'>): boolean {
	if (grid.editor.editing || clipboardData === null) return false;
	const own = readOwnCells(clipboardData.getData(ownCellsType));
	const text = clipboardData.getData('text/plain');
	if (own) grid.pasting.paste(own);
	else if (text !== '') pasteText(grid, text);
	else grid.notices.show(nothingToPaste);
	return true;
}

/** Copies or cuts the selected cells, asked by a button. Nothing is cut that the browser did not accept. */
export async function copyByButton(grid: GridState, what: 'copy' | 'cut'): Promise<void> {
	grid.editor.commit('stay', true);
	const copied = grid.blocks.copied();
	if (copied === undefined) return;
	const text = writeClipboard(copied.shown);
	try {
		await navigator.clipboard.writeText(text);
	} catch {
		return grid.notices.show(clipboardRefused('copy'));
	}
	lastCopied = { text, typed: copied.typed };
	sayCopied(grid, what, copied.shown);
}

/** Pastes a text into the selected cells. */
export function pasteText(grid: GridState, text: string): void {
	// A clipboard may return other line ends than were written to it.
	const own = lastCopied?.text === text.replaceAll('\r\n', '\n') ? lastCopied.typed : undefined;
	grid.pasting.paste(own ?? readClipboard(text));
}

function sayCopied(grid: GridState, what: 'copy' | 'cut', shown: readonly string[][]): void {
	const count = shown.length * shown[0]!.length;
	if (what === 'cut') grid.blocks.clear('Cut');
	grid.notices.say(`${what === 'cut' ? 'Cut' : 'Copied'}: ${count} cell${count === 1 ? '' : 's'}`);
}
