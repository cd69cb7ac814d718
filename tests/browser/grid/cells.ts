import type { Locator, Page } from 'playwright-core';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import { paste, startTyping } from '../screens/prints.ts';

/** The cells that are selected, as `row key` of their first and their last, and how many there are. */
export async function selected(page: Page): Promise<string> {
	const cells = await page
		.locator('[role=grid] [aria-selected=true]')
		.evaluateAll((all) =>
			all.map((each) => [(each as HTMLElement).dataset['row'], (each as HTMLElement).dataset['column']]),
		);
	const rows = cells.map(([row]) => Number(row));
	const columns = cells.map(([, column]) => Number(column));
	if (cells.length === 0) return 'none';
	const [top, bottom] = [Math.min(...rows), Math.max(...rows)];
	const [left, right] = [Math.min(...columns), Math.max(...columns)];
	const isRectangle = cells.length === (bottom - top + 1) * (right - left + 1);
	const name = (row: number, column: number) => `${row} ${gridColumns[column]!.key}`;
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
	await page.keyboard.press('Control+Home');
}
