import type { MenuItem } from './columnMenu.ts';
import type { GridState } from './gridState.svelte.ts';

/**
 * What can be done with the active row, or with all rows that are selected.
 * @param first place of the first of them in the grid, from 0
 * @param last place of the last
 * @param others what else can be done from here: it stands before what deletes
 */
export function rowMenu(
	{ cells, rowEdits }: GridState,
	first: number,
	last: number,
	others: readonly MenuItem[] = [],
): readonly MenuItem[] {
	const count = last - first + 1;
	const move = (way: 'up' | 'down') => (count === 1 ? `Move ${way}` : `Move ${count} prints ${way}`);
	return [
		{ label: 'Insert above', run: () => rowEdits.add(first) },
		{ label: 'Insert below', run: () => rowEdits.add(last + 1) },
		{ label: count === 1 ? 'Duplicate' : `Duplicate ${count} prints`, run: () => rowEdits.duplicate() },
		{ label: move('up'), isOff: first === 0, run: () => rowEdits.move(-1) },
		{ label: move('down'), isOff: last === cells.rows.length - 1, run: () => rowEdits.move(1) },
		...others,
		{ label: count === 1 ? 'Delete print' : `Delete ${count} prints`, isApart: true, run: () => rowEdits.remove() },
	];
}
