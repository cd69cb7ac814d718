import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goBehindName } from '../harness/behindName.ts';
import { coverAllBut } from '../grid/fingers.ts';
import { goTo } from '../harness/screens.ts';
import { landscapeTablet } from '../harness/stage.ts';
import { heard } from './hands.ts';
import { oneStage } from './oneStage.ts';
import { at, activeCell, cell, press, seen } from './prints.ts';

const play = oneStage({ isInOnePage: true, hasTouch: true, reducedMotion: 'reduce' });

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const grid = (page: Page) => page.getByRole('grid');
const scrolled = (page: Page) => grid(page).evaluate((each) => [each.scrollTop, each.scrollLeft]);
const rowCount = async (page: Page) => Number(await grid(page).getAttribute('aria-rowcount'));

/** How many rows are wholly seen above this height of the page. */
const rowsAbove = (page: Page, height: number) =>
	grid(page).evaluate((each, limit) => {
		const head = each.querySelector('.head')!.getBoundingClientRect().bottom;
		const foot = Math.min(limit, each.getBoundingClientRect().bottom);
		return [...each.querySelectorAll('[role=row]:has([data-row])')]
			.map((row) => row.getBoundingClientRect())
			.filter(({ top, bottom }) => top >= head - 1 && bottom <= foot + 1).length;
	}, height);

test('what one comes back to is as it was left: rows, panel, lists, shows; and what was done can be undone where it is said', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await button(page, 'Close').first().click();

		// The panel of another print begins at its top.
		await cell(page, 8, 'title').click();
		await page.getByRole('heading', { name: /Salt pan III/ }).waitFor();
		const panel = page.locator('#sentences');
		await panel.evaluate((each) => each.scrollTo(0, 300));
		expect(await panel.evaluate((each) => each.scrollTop)).toBeGreaterThan(100);
		await cell(page, 7, 'title').click();
		await page.getByRole('heading', { name: /Salt pan II$/ }).waitFor();
		expect(await panel.evaluate((each) => each.scrollTop), 'read from its top').toBe(0);

		// Rows and columns stay where they were scrolled to.
		await cell(page, 7, 'picture width').click();
		await grid(page).evaluate((each) => each.scrollTo(300, 700));
		await expect.poll(() => scrolled(page)).toEqual([700, 300]);
		await grid(page).evaluate((each) => Object.assign(globalThis, { left: each }));
		await goTo(page, 'Bench');
		await page.evaluate('left.dispatchEvent(new Event("scroll"))'); // comes when the grid has gone: no error
		await goTo(page, 'Prints');
		await expect.poll(() => scrolled(page)).toEqual([700, 300]);
		expect(await page.locator('[role=grid] [tabindex="0"]').getAttribute('data-column')).toBe(
			at(7, 'picture width').split(' ')[1],
		);

		// Files open over the grid.
		const place = () => grid(page).boundingBox();
		const before = await place();
		await button(page, 'Files').click();
		await page.getByRole('region', { name: 'Files' }).waitFor();
		expect(await place()).toEqual(before);

		// The example opens beside a show that has prints.
		await page.getByRole('region', { name: 'Files' }).getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('heading', { name: '“Salt and slate, Kiln Lane Rooms (2)” opened' }).waitFor();
		await goBehindName(page, 'Shows');
		await button(page, 'Salt and slate, Kiln Lane Rooms').waitFor();
		await goTo(page, 'Prints');

		// Several prints are deleted by their menu, which says how many; so does the message, with Undo in it.
		await cell(page, 0, 'title').click();
		await press(page, 'Shift+ArrowDown', 'Shift+ArrowDown', 'Shift+F10');
		const rows = await rowCount(page);
		await page.getByRole('menuitem', { name: 'Delete 3 prints' }).click();
		const note = page.getByRole('group', { name: 'What was done' });
		expect(await note.innerText()).toMatch(/^3 prints deleted/);
		expect(await rowCount(page)).toBe(rows - 3);
		await note.getByRole('button', { name: 'Undo' }).click();
		expect([await rowCount(page), await note.count()]).toEqual([rows, 0]);
		expect(await heard(page)).toMatch(/^Undone: delete 3 prints/);

		// List leads back to where one came from.
		await goTo(page, 'Boards');
		await page.getByRole('link', { name: 'Start cutting sheets' }).click();
		await page.getByRole('link', { name: 'List', exact: true }).click();
		await page.getByRole('heading', { name: 'Boards', level: 1 }).waitFor();
		await goTo(page, 'Bench');
		await page.getByRole('link', { name: 'Start cutting sheets' }).click();
		await page.getByRole('link', { name: 'List', exact: true }).click();
		await page.getByRole('heading', { name: 'Bench', level: 1 }).waitFor();
	}));

test('a keyboard over half a tablet held level leaves six rows', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await cell(page, 3, 'picture width').tap();
		await cell(page, 3, 'picture width').tap();
		await coverAllBut(page, landscapeTablet.height / 2);
		await expect.poll(() => rowsAbove(page, landscapeTablet.height / 2)).toBeGreaterThanOrEqual(6);
		expect(await activeCell(page)).toBe(at(3, 'picture width'));
		expect(await seen(page, 0, 'title')).toMatch(/Ebb/);
	}));
