import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { oneStage } from '../screens/oneStage.ts';
import { cell, press } from '../screens/prints.ts';
import { grip, selected, withNumbered } from './cells.ts';
import { goByAddress } from '../harness/goByAddress.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });

const scrollTop = (page: Page): Promise<number> => page.getByRole('grid').evaluate((grid) => grid.scrollTop);

test('a drag ends with its grid: gone from the page and come back to, nothing is being dragged', () =>
	play(async (page) => {
		await withNumbered(page, 6);
		await grip(page, 1).click();
		const [from, to] = [(await grip(page, 1).boundingBox())!, (await grip(page, 4).boundingBox())!];
		await page.mouse.move(from.x + 8, from.y + 8);
		await page.mouse.down();
		await page.mouse.move(to.x + 8, to.y + 4, { steps: 4 });
		await page.locator('.drop').waitFor();
		await goByAddress(page, 'settings');
		await page.getByRole('heading', { name: 'Settings' }).waitFor();
		await page.mouse.up();
		await goByAddress(page, 'prints');
		await page.getByRole('grid').waitFor();
		expect(await page.locator('.drop').count()).toBe(0);
	}));

test('the menu of three rows speaks of three prints', () =>
	play(async (page) => {
		await withNumbered(page, 6);
		await grip(page, 1).click();
		await grip(page, 3).click({ modifiers: ['Shift'] });
		await page.getByRole('button', { name: '3 prints…' }).click();
		const menu = page.getByRole('menu', { name: '3 prints' });
		await menu.getByRole('menuitem', { name: 'Insert above' }).waitFor();
		await menu.getByRole('menuitem', { name: 'Delete 3 prints' }).click();
		await page.locator('[role=grid][aria-rowcount="5"]').waitFor();
		await press(page, 'Control+z');
		await page.locator('[role=grid][aria-rowcount="8"]').waitFor();
		expect(await selected(page)).toMatch(/^1 .* to 3 /);
	}));

test('an edit of another tab leaves this tab scrolled to where one is reading', () =>
	play(async (page, stage) => {
		await withNumbered(page, 200);
		await page.getByText('Saved', { exact: true }).waitFor();
		const other = await page.context().newPage();
		try {
			await other.goto(stage.address);
			await other.getByRole('grid').waitFor();
			await page.getByRole('grid').evaluate((grid) => grid.scrollTo(0, 3000));
			await expect.poll(() => scrollTop(page)).toBe(3000);
			await cell(other, 0, 'title').click();
			await press(other, 'H', 'u', 'n', 'g', 'Enter');
			await page.locator('[data-row="0"]').getByText('Hung').waitFor({ state: 'attached' });
			expect(await scrollTop(page)).toBe(3000);
		} finally {
			await other.close();
		}
	}));
