import { ownCellsType, readOwnCells, writeOwnCells } from '../../core/grid/ownCells.ts';
import { readTable, writeTable } from '../../core/grid/tableText.ts';
import type { GridState } from './gridState.svelte.ts';

/**
 * Copies or cuts the cells in hand: what they show, for other programs, and what of it was typed, for this one.
 * @returns whether the grid has dealt with it
 */
export function copyCells(grid: GridState, { clipboardData, type }: ClipboardEvent): boolean {
	const copied = grid.editing ? undefined : grid.copied();
	if (copied === undefined || clipboardData === null) return false;
	clipboardData.setData('text/plain', writeTable(copied.shown));
	clipboardData.setData(ownCellsType, writeOwnCells(copied.typed));
	const count = copied.shown.length * copied.shown[0]!.length;
	if (type === 'cut') grid.clear('Cut');
	grid.announcement = `${type === 'cut' ? 'Cut' : 'Copied'}: ${count} cell${count === 1 ? '' : 's'}`;
	return true;
}

/**
 * Pastes into the cells in hand. Cells copied here stay what they are: typed where they were typed, else handed back.
 * @returns whether the grid has dealt with it
 */
export function pasteCells(grid: GridState, { clipboardData }: ClipboardEvent): boolean {
	if (grid.editing || clipboardData === null) return false;
	const own = readOwnCells(clipboardData.getData(ownCellsType));
	const text = clipboardData.getData('text/plain');
	if (own) grid.paste(own);
	else if (text !== '') grid.paste(readTable(text));
	return true;
}
