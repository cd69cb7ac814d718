import { sortWords } from '../../core/grid/sortWords.ts';
import type { GridState } from './gridState.svelte.ts';

/** Something that a menu offers. */
export interface MenuItem {
	readonly label: string;
	readonly isOff?: boolean;
	/** Whether a rule parts it from what stands before. */
	readonly isApart?: boolean;
	readonly run: () => void;
}

/** What can be done with the active column, or the columns that are selected from end to end. */
export function columnMenu(grid: GridState): readonly MenuItem[] {
	const { columns, columnEdits, order, selection } = grid;
	const { key, isFrozen } = selection.column;
	const { sort } = columns;
	const words = sortWords(key);
	const isSorted = (way: 'up' | 'down') => sort?.column === key && sort.way === way;
	const [first, last] = selection.wholeColumns;
	const count = last - first + 1;
	const these = count === 1 ? '' : ` ${count} columns`;
	const firstFree = columns.list.findIndex((column) => !column.isFrozen);
	return [
		{ label: `Sort, ${words.up}`, isOff: isSorted('up'), run: () => order.sortBy({ column: key, way: 'up' }) },
		{ label: `Sort, ${words.down}`, isOff: isSorted('down'), run: () => order.sortBy({ column: key, way: 'down' }) },
		{ label: 'Hanging order', isOff: sort === undefined, run: () => order.sortBy(undefined) },
		{ label: count === 1 ? 'Select the column' : `Select${these}`, run: () => selection.selectColumns(first, last) },
		{ label: 'Wider', run: () => columnEdits.size(1) },
		{ label: 'Narrower', run: () => columnEdits.size(-1) },
		{ label: `Move${these} left`, isOff: isFrozen || first <= firstFree, run: () => columnEdits.move(-1) },
		{ label: `Move${these} right`, isOff: isFrozen || last >= columns.list.length - 1, run: () => columnEdits.move(1) },
		{ label: `Hide${these}`, isOff: isFrozen, run: () => columnEdits.hide() },
	];
}
