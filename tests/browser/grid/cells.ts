import type { Locator, Page } from 'playwright-core';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import { paste, startTyping } from '../screens/prints.ts';

/** A cell as it is seen and heard. */
interface SeenCell {
	readonly row: number;
	readonly column: number;
	readonly text: string;
	readonly isSelected: boolean;
}

/**
 * All cells of the grid, by rows from the left: it is scrolled from end to end, and back, for only what can be seen of it
 * is in the page. With `isSelectedOnly` it is scrolled only if cells are selected beside some that are not in the page.
 */
async function everyCell(page: Page, isSelectedOnly = false): Promise<readonly SeenCell[]> {
	const cells = await page.evaluate(async (isOnly) => {
		const grid = document.querySelector<HTMLElement>('[role=grid]')!;
		const { scrollLeft, scrollTop } = grid;
		const found = new Map<string, SeenCell>();
		const gather = async (left: number, top: number) => {
			grid.scrollTo(left, top);
			grid.dispatchEvent(new Event('scroll'));
			await new Promise((resolve) => setTimeout(resolve));
			for (const cell of grid.querySelectorAll<HTMLElement>('.body [data-row]')) {
				const [row, column] = [Number(cell.dataset['row']), Number(cell.dataset['column'])];
				const isSelected = cell.ariaSelected === 'true';
				found.set(`${row} ${column}`, { row, column, text: cell.textContent.trim(), isSelected });
			}
		};
		await gather(scrollLeft, scrollTop);
		const lastRow = Number(grid.ariaRowCount) - 3;
		const lastColumn = grid.style.getPropertyValue('--columns').split(' ').length - 1;
		const isCutOff = [...found.values()].some(({ row, column, isSelected }) => {
			const above = row === 0 || found.has(`${row - 1} ${column}`);
			const below = row === lastRow || found.has(`${row + 1} ${column}`);
			const left = column === 0 || found.has(`${row} ${column - 1}`);
			const right = column === lastColumn || found.has(`${row} ${column + 1}`);
			return isSelected && !(above && below && left && right);
		});
		const [down, right] = [
			grid.clientHeight / 2,
			grid.clientWidth - parseFloat(grid.style.getPropertyValue('--frozen-width')),
		];
		if (isCutOff || !isOnly)
			for (let top = 0; top < grid.scrollHeight; top += down)
				for (let left = 0; left < grid.scrollWidth; left += right) await gather(left, top);
		await gather(scrollLeft, scrollTop);
		return [...found.values()];
	}, isSelectedOnly);
	return cells.sort((a, b) => a.row - b.row || a.column - b.column);
}

/** Everything that the grid shows, row by row and cell by cell, as it is seen and heard. */
export async function allCells(page: Page): Promise<string[][]> {
	const rows: string[][] = [];
	for (const { row, text } of await everyCell(page)) (rows[row] ??= []).push(text);
	return rows;
}

/** The cells that are selected, as `row key` of their first and their last. @param keys of the columns in view. Default: all */
export async function selected(page: Page, keys = gridColumns.map(({ key }) => key)): Promise<string> {
	const cells = (await everyCell(page, true)).filter(({ isSelected }) => isSelected);
	const [rows, columns] = [cells.map(({ row }) => row), cells.map(({ column }) => column)];
	if (cells.length === 0) return 'none';
	const [top, bottom] = [Math.min(...rows), Math.max(...rows)];
	const [left, right] = [Math.min(...columns), Math.max(...columns)];
	const isRectangle = cells.length === (bottom - top + 1) * (right - left + 1);
	const name = (row: number, column: number) => `${row} ${keys[column]!}`;
	return `${name(top, left)} to ${name(bottom, right)}${isRectangle ? '' : ', with gaps'}`;
}

/** What has been said aloud last. */
export const said = (page: Page): Promise<string> => page.locator('#said').innerText();

/** The grip of a row, from 0; -1 for the corner that selects everything. */
export const grip = (page: Page, row: number): Locator => page.locator(`[data-grip="${row}"]`).first();

/** The texts that Ctrl+C puts on the clipboard, by their types. */
export const copied = (page: Page, type: 'copy' | 'cut' = 'copy'): Promise<Record<string, string>> =>
	page.evaluate((name) => {
		const clipboardData = new DataTransfer();
		const event = new ClipboardEvent(name, { clipboardData, bubbles: true, cancelable: true });
		document.activeElement?.dispatchEvent(event);
		return Object.fromEntries(clipboardData.types.map((each) => [each, clipboardData.getData(each)]));
	}, type);

/** Presses the mouse on one thing, draws it to another and lets it go there. */
export async function drag(page: Page, from: Locator, to: Locator, place = { x: 0.5, y: 0.5 }): Promise<void> {
	const [start, end] = [(await from.boundingBox())!, (await to.boundingBox())!];
	await page.mouse.move(start.x + start.width / 2, start.y + start.height / 2);
	await page.mouse.down();
	const [x, y] = [end.x + end.width * place.x, end.y + end.height * place.y];
	await page.mouse.move((start.x + x) / 2, (start.y + y) / 2);
	await page.mouse.move(x, y, { steps: 3 });
	await page.mouse.up();
}

/** Begins a show with numbered prints: `1`, `Print 1` and so on. */
export async function withNumbered(page: Page, count: number): Promise<void> {
	await startTyping(page);
	await page.keyboard.press('Home');
	await paste(page, Array.from({ length: count }, (_, index) => `${index + 1}\tPrint ${index + 1}`).join('\n'));
	await page.locator(`[role=grid][aria-rowcount="${count + 2}"]`).waitFor();
	// A grid opens a few rows at a time, and draws prints beside the titles once all of them are in the page.
	await page.locator('[role=grid] .mount').first().waitFor({ state: 'attached' });
	await page.keyboard.press('Control+Home');
}
