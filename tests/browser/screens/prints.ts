import type { Locator, Page } from 'playwright-core';
import { columnIndexOf } from '../../../src/ui/grid/gridColumns.ts';
import { cellInPage } from './cellInPage.ts';

/** Begins a show of one blank print. */
export async function startTyping(page: Page): Promise<void> {
	await page.getByRole('button', { name: 'Start typing' }).click();
	await page.getByRole('grid').waitFor();
}

/** Resolves when the grid of a page that was just opened answers keys and taps: those that come before wait for it. */
export const isAnswering = (page: Page): Promise<void> =>
	page.locator('[data-handle]').first().waitFor({ state: 'attached' });

/** A cell of the grid, by its row from 0 (-1: the head) and the key of its column; the grid is scrolled to it. */
export const cell = (page: Page, row: number, key: string): Locator =>
	page.locator(cellInPage(row, columnIndexOf(key)));

/** What a cell shows, and where that comes from. */
export const seen = (page: Page, row: number, key: string): Promise<string> => seenAt(cell(page, row, key));

/** The same of a cell that was found by other means. */
export async function seenAt(found: Locator): Promise<string> {
	const [text, state] = await found.evaluate((element) => {
		const shown = element.querySelector('.typed, .worked-out, .inherited, .blank');
		return [shown?.textContent ?? '', shown?.className.split(' ').find((name) => !name.startsWith('_')) ?? ''];
	});
	return state === 'blank' ? '' : `${text} ${state}`;
}

/** What several cells of a row show: one after the other, for they may not be in view together. */
export async function seenIn(page: Page, row: number, ...keys: string[]): Promise<string[]> {
	const shown: string[] = [];
	for (const key of keys) shown.push(await seen(page, row, key));
	return shown;
}

/** Longer than the pause in typing after which the grid has its steps made again, in milliseconds. */
const stepsFollowMs = 200;

/** Resolves when the steps that the grid shows have followed the last change. The page's own clock counts, however busy it is. */
export const stepsFollowed = (page: Page): Promise<void> =>
	page.evaluate((ms) => new Promise((resolve) => setTimeout(resolve, ms)), stepsFollowMs);

/** Resolves when the bench shows the order of its cuts that stays: a search beside the screen may still bring another. */
export const orderFound = (page: Page): Promise<void> =>
	page.getByText(/the fewest possible|No order can have fewer/).waitFor();

/** The cell that has the focus, as `row key`; empty where none has. */
export const activeCell = (page: Page): Promise<string> =>
	page.evaluate(() => {
		const element = document.activeElement?.closest<HTMLElement>('[data-row]');
		return element ? `${element.dataset['row']} ${element.dataset['column']}` : '';
	});

/** A row and a column as `activeCell` says them. */
export const at = (row: number, key: string): string => `${row} ${columnIndexOf(key)}`;

/** Pastes a text as a person does who has copied it elsewhere. */
export const paste = (page: Page, text: string): Promise<void> =>
	page.evaluate((pasted) => {
		const clipboardData = new DataTransfer();
		clipboardData.setData('text/plain', pasted);
		const event = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
		document.activeElement?.dispatchEvent(event);
	}, text);

/** Begins a show with prints whose titles and picture sizes are these. */
export async function withPrints(
	page: Page,
	prints: readonly (readonly [title: string, width: string, height: string])[],
) {
	await startTyping(page);
	await paste(page, prints.map(([title, width, height]) => [title, '', width, height].join('\t')).join('\n'));
	await cell(page, prints.length - 1, 'title').waitFor();
}

/** Presses keys one after the other. */
export async function press(page: Page, ...keys: readonly string[]): Promise<void> {
	for (const key of keys) await page.keyboard.press(key);
}
