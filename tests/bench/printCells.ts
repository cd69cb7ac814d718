import type { CellTexts } from '../../src/core/show/row.ts';

/** What is typed into the cells of a print of the benches, by its place from 0: a picture's size, as one measures it. */
export const printCells = (place: number): CellTexts => ({
	number: `${place + 1}`,
	title: `Print ${place + 1}`,
	'picture width': `${300 + (place % 97)}`,
	'picture height': `${200 + (place % 61)}`,
});
