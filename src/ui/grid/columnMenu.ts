import { sortWords } from '../../core/grid/sortWords.ts';
import type { GridState } from './gridState.svelte.ts';

/** Something that a menu offers. */
export interface MenuItem {
	readonly label: string;
	readonly isOff?: boolean;
	readonly run: () => void;
}

/** What can be done with the column in hand, or the columns that are selected from end to end. */
export function columnMenu(grid: GridState): readonly MenuItem[] {
	const { columns } = grid;
	const { key, isFrozen } = grid.gridColumn;
	const { sort } = columns;
	const words = sortWords(key);
	const isSorted = (way: 'up' | 'down') => sort?.column === key && sort.way === way;
	const [first, last] = grid.columnsInHand;
	const firstFree = columns.list.findIndex((column) => !column.isFrozen);
	return [
		{ label: `Sort, ${words.up}`, isOff: isSorted('up'), run: () => grid.sortBy({ column: key, way: 'up' }) },
		{ label: `Sort, ${words.down}`, isOff: isSorted('down'), run: () => grid.sortBy({ column: key, way: 'down' }) },
		{ label: 'The show’s own order', isOff: sort === undefined, run: () => grid.sortBy(undefined) },
		{ label: 'Select the column', run: () => grid.selectColumns(first, last) },
		{ label: 'Wider', run: () => grid.sizeColumn(1) },
		{ label: 'Narrower', run: () => grid.sizeColumn(-1) },
		{ label: 'Move left', isOff: isFrozen || first <= firstFree, run: () => grid.moveColumns(-1) },
		{ label: 'Move right', isOff: isFrozen || last >= columns.list.length - 1, run: () => grid.moveColumns(1) },
		{ label: 'Hide', isOff: isFrozen, run: () => grid.hideColumns() },
	];
}
