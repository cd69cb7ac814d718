import { selectors } from 'playwright-core';

/** How wide a grid's columns are, and how far it is scrolled to show one of them first beside those that stay. */
const engine = `({
	query: (root, place) => find(place),
	queryAll: (root, place) => [find(place)].filter((element) => element !== null),
})`;

/**
 * Finds a cell by its places among the rows and columns. Only what can be seen of the grid is in the page: one that is
 * not there is scrolled to, and found the next time that it is looked for.
 */
const find = `function find(place) {
	const [row, column] = place.split(' ').map(Number);
	const cell = document.querySelector('[data-row="' + row + '"][data-column="' + column + '"]');
	const grid = document.querySelector('[role=grid]');
	if (cell !== null || grid === null || row >= Number(grid.ariaRowCount) - 2) return cell;
	const pixels = (name) => parseFloat(grid.style.getPropertyValue(name));
	const widths = grid.style.getPropertyValue('--columns').split(' ').map(parseFloat);
	const inRow = document.querySelector('[data-row="' + row + '"]');
	if (inRow === null) grid.scrollTop = row * pixels('--row-height');
	if (document.querySelector('[data-column="' + column + '"]:not([tabindex="0"])') === null)
		grid.scrollLeft = widths.slice(0, column).reduce((sum, width) => sum + width, pixels('--grip-width')) - pixels('--frozen-width');
	grid.dispatchEvent(new Event('scroll'));
	return null;
}`;

await selectors.register('cell', { content: `(() => { ${find} return ${engine}; })()` });

/** Selects a cell of the grid, by its row from 0 (-1: the head) and the place of its column. */
export const cellInPage = (row: number, column: number): string => `cell=${row} ${column}`;
