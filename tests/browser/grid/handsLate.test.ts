import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { forgive } from '../offline/offline.ts';
import { SpoiltHost } from '../offline/spoiltHost.ts';
import { holdBack } from '../harness/holdBack.ts';
import { onStage, type Stage } from '../harness/stage.ts';

/** The file of the build in which lies what is done in the grid. */
const handsFile = 'assets/hands-';

/** A grid of the example whose hands are held back. @returns what lets them come */
async function withoutHands(stage: Stage): Promise<{ page: Page; letCome: () => void }> {
	const page = await stage.openShow();
	await page.getByRole('button', { name: 'Load the example' }).click();
	await page.getByRole('toolbar', { name: 'Prints' }).waitFor(); // the empty show was saved too
	await page.getByText('Saved', { exact: true }).waitFor();
	const letCome = await holdBack(page, handsFile);
	await page.reload();
	await page.getByRole('gridcell').nth(20).waitFor();
	return { page, letCome };
}

const cell = (page: Page, row: number, column: number) => page.locator(`[data-row="${row}"][data-column="${column}"]`);
const active = (page: Page) =>
	page.evaluate(() => {
		const { row, column } = document.activeElement!.closest<HTMLElement>('[data-row]')?.dataset ?? {};
		return `${row} ${column}`;
	});

test('keys that are pressed before what answers them is loaded are kept, and played in their order', () =>
	onStage({ isKept: false }, async (stage) => {
		const { page, letCome } = await withoutHands(stage);
		await cell(page, 0, 1).focus();
		await page.keyboard.press('ArrowDown');
		await page.keyboard.type('Quayz');
		await page.keyboard.press('Backspace');
		await page.keyboard.press('Tab');
		await page.keyboard.type('4:5');
		await page.keyboard.press('Enter');
		await page.keyboard.press('Home');
		expect(await active(page)).toBe('0 1'); // nothing was done, nor did Tab leave
		letCome();
		await page.getByRole('rowheader', { name: 'Quay', exact: true }).waitFor();
		await expect.poll(() => active(page)).toBe('2 0');
		expect(await cell(page, 1, 2).textContent()).toContain('4:5');
		await page.keyboard.press('Control+z');
		await page.keyboard.press('Control+z');
		await expect.poll(() => page.getByRole('rowheader', { name: 'Quay', exact: true }).count()).toBe(0);
	}));

test('so are taps, buttons, a paste and a copy, among keys; and the keys of the browser stay its own', () =>
	onStage({ isKept: false }, async (stage) => {
		const { page, letCome } = await withoutHands(stage);
		await cell(page, 2, 1).click();
		await page.keyboard.press('ArrowDown');
		await page.evaluate(() => {
			const clipboardData = new DataTransfer();
			clipboardData.setData('text/plain', 'Salt road\t5:7');
			document.activeElement!.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true }));
		});
		await page.evaluate(() => {
			const writeText = (text: string) => Promise.resolve(void Object.assign(window, { copied: text }));
			Object.assign(navigator.clipboard, { writeText });
			document.activeElement!.dispatchEvent(new ClipboardEvent('copy', { bubbles: true, cancelable: true }));
		});
		const before = await page.getByRole('grid').getAttribute('aria-rowcount');
		const isBrowsers = await page.evaluate(() => {
			const press = (init: KeyboardEventInit) =>
				document.activeElement!.dispatchEvent(
					new KeyboardEvent('keydown', { ...init, bubbles: true, cancelable: true }),
				);
			return [press({ key: 'F5' }), press({ key: 'l', ctrlKey: true }), press({ key: 'c', ctrlKey: true })];
		});
		expect(isBrowsers).toEqual([true, true, true]);
		await page.getByRole('searchbox', { name: 'Find prints' }).fill('Salt');
		await page.getByRole('button', { name: 'Add print' }).click();
		letCome();
		await page.getByRole('rowheader', { name: 'Salt road' }).waitFor();
		expect(await page.evaluate(() => (window as unknown as { copied: string }).copied)).toBe('Salt road\t5:7\n');
		await page.getByRole('button', { name: 'Show all prints' }).click();
		expect(await cell(page, 3, 1).textContent()).toContain('Salt road');
		expect(await cell(page, 3, 2).textContent()).toContain('5:7');
		expect(Number(await page.getByRole('grid').getAttribute('aria-rowcount'))).toBe(Number(before) + 1);
	}));

test('what answers keys does not come: the page says so, and tried again it plays them', async () => {
	const host = new SpoiltHost();
	await onStage({ serve: host.serve, isKept: false }, async (stage) => {
		const page = await stage.openShow();
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor(); // the empty show was saved too
		await page.getByText('Saved', { exact: true }).waitFor();
		host.spoil = (file) => (file.includes(handsFile) ? 'missing' : undefined);
		await page.reload();
		const note = page.getByRole('alert', { name: 'Not loaded' });
		await note.waitFor();
		expect(await note.count()).toBe(1);
		await cell(page, 0, 1).focus();
		await page.keyboard.type('Quay');
		await page.keyboard.press('Enter');
		host.mend();
		await note.getByRole('button', { name: 'Try again' }).click();
		await page.getByRole('rowheader', { name: 'Quay', exact: true }).waitFor();
		expect(await active(page)).toBe('1 1');
		forgive(stage);
	});
});
