import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goByAddress } from '../harness/goByAddress.ts';
import { resize } from '../harness/resize.ts';
import { uprightTablet } from '../harness/stage.ts';
import { oneStage } from './oneStage.ts';
import { cell, press, seenIn, withPrints } from './prints.ts';
import { openSettings } from './settingsOf.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });
const touched = oneStage({ isPlanned: false, isInOnePage: true, viewport: uprightTablet, hasTouch: true });

/** Three prints, and frames of one size of which there are two. */
async function threePrints(page: Page, count = '2', mountSize = '') {
	await withPrints(page, [
		['Ebb', '200', '133'],
		['Flood', '200', '133'],
		['Slack water', '500', '333'],
	]);
	await openSettings(page, 'Mount and window');
	const fill = async (label: string, text: string) => {
		await page.getByLabel(label, { exact: true }).fill(text);
		await page.keyboard.press('Tab');
	};
	if (mountSize !== '') await fill('Mount size', mountSize);
	await openSettings(page, 'Frames');
	await fill('Name, new frame', 'Ash');
	await fill('Rebate width, new frame', '403');
	await fill('Rebate height, new frame', '303');
	await fill('In stock, new frame', count);
	await page.getByRole('button', { name: 'Add frame' }).click();
	await page.getByRole('button', { name: /^Ash/ }).waitFor();
	await page.getByRole('link', { name: 'Prints', exact: true }).click();
	await cell(page, 0, 'title').click();
}

const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent.trim());

test('by keyboard: from the menu of the prints to frames for all, applied in part, and undone in one step', () =>
	play(async (page) => {
		await threePrints(page);
		await page.getByRole('button', { name: 'More…' }).focus();
		await press(page, 'Enter', 'End', 'ArrowUp', 'Enter');
		await page.getByRole('heading', { name: 'Frames for all prints' }).waitFor();
		await page.getByText('3 prints have no frame of their own.').waitFor();
		await page.getByRole('button', { name: 'Find frames' }).focus();
		await press(page, 'Enter');
		await page.getByRole('table').waitFor();
		const said = await page.locator('main').getByRole('status').innerText();
		expect(said).toContain('2 of 3 prints get a frame.');
		expect(said).toContain('No other choice frames more prints or changes their pictures less.');
		const row = (name: string) => page.getByRole('row').filter({ hasText: name });
		expect(await row('Ebb').innerText()).toMatch(/No frame.*500 × 400 mm.*Ash.*400 × 300 mm.*Side, top, bottom/s);
		const left = page.getByRole('region', { name: 'Left as they are' });
		expect(await left.innerText()).toMatch(/Slack water\s+No frame in the list suits it\.$/);
		expect(await row('Slack water').count()).toBe(0);
		await row('Flood').getByRole('checkbox').focus();
		await press(page, 'Space');
		await page.getByRole('button', { name: 'Apply to 1 print' }).focus();
		await press(page, 'Enter');
		const note = page.getByRole('group', { name: 'What was applied' });
		expect(await note.innerText()).toContain('1 print changed.');
		expect(await note.evaluate((element) => element === document.activeElement)).toBe(true);
		await page.getByText('2 prints have no frame of their own. 1 print has one typed.').waitFor();
		await press(page, 'Control+z');
		await page.getByText('3 prints have no frame of their own.').waitFor();
		expect(await page.getByRole('button', { name: 'Redo: choose frames' }).count()).toBe(1);
	}));

test('by touch: too few frames are found at the print, and all of it is applied or left', () =>
	touched(async (page) => {
		await threePrints(page, '1', '400 x 300 mm');
		await page.getByText('You need 2 “Ash” and have 1.').first().waitFor();
		await page.getByRole('link', { name: 'Frames for all prints' }).tap();
		await page.getByRole('button', { name: 'Find frames' }).tap();
		await page.getByRole('heading', { name: 'Left as they are' }).waitFor();
		await page.getByRole('button', { name: 'Leave as it is' }).tap();
		await page.getByRole('table').waitFor({ state: 'detached' });
		await expect.poll(() => focused(page)).toBe('Find frames');
		await page.getByRole('button', { name: 'Find frames' }).tap();
		await page.getByRole('button', { name: 'Apply to 1 print' }).tap();
		await page.getByText('1 print changed.').waitFor();
		await page.getByRole('main').getByRole('link', { name: 'Prints' }).tap();
		await cell(page, 0, 'title').waitFor();
		const rows: string[][] = [];
		for (const place of [0, 1, 2]) rows.push(await seenIn(page, place, 'frame', 'mount'));
		expect(rows.filter(([frame]) => frame === 'Ash typed')).toEqual([['Ash typed', 'frame typed']]);
	}));

test('a show of blank rows alone has no prints yet', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Start typing' }).click();
		await goByAddress(page, 'frames');
		await page.getByRole('heading', { name: 'Frames for all prints' }).waitFor();
		const choice = page.getByRole('region', { name: 'Choice of frames' });
		expect(await choice.innerText()).toBe('There are no prints yet.');
		// Where boards have nothing but one thing to do, undo stands beside that, upright too.
		await resize(page, uprightTablet);
		await goByAddress(page, 'boards');
		const ways = page.locator('main .head');
		const boxes = await Promise.all(
			[ways.locator('.main'), ways.getByRole('button', { name: /^Undo/ })].map((each) => each.boundingBox()),
		);
		expect(boxes[0]!.y, 'in one line').toBe(boxes[1]!.y);
	}));
