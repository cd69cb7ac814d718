import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goBehindName, showName } from '../harness/behindName.ts';
import { phone } from '../harness/stage.ts';
import { focused } from './hands.ts';
import { oneStage } from './oneStage.ts';
import { press } from './prints.ts';

const play = oneStage({ isPlanned: false, reducedMotion: 'reduce' });
const phonePlay = oneStage({ isPlanned: false, viewport: phone, hasTouch: true, reducedMotion: 'reduce' });

const steps = (page: Page) => page.getByRole('region', { name: 'First steps' });
const atStep = (page: Page) => page.locator('[aria-current=step]').innerText();

/** Presses Tab until this has the focus. */
async function tabTo(page: Page, name: string): Promise<void> {
	for (let turn = 0; turn < 60; turn++) {
		if ((await focused(page)) === name) return;
		await press(page, 'Tab');
	}
	throw new Error(`Tab does not lead to ${name}`);
}

test('a newcomer goes through the first steps by finger, leaves them, comes back, and skips them for good', () =>
	phonePlay(async (page) => {
		const button = (name: string) => page.getByRole('button', { name, exact: true });
		await steps(page).getByRole('radio', { name: 'cm' }).tap();
		await button('Next').tap();
		await expect.poll(() => atStep(page)).toMatch(/Mount/);
		await page.getByRole('textbox', { name: 'Mount size' }).fill('60 x 50 cm');
		await page.getByRole('textbox', { name: 'Border' }).tap();
		await button('Next').tap();
		await page.getByRole('link', { name: 'Enter boards' }).tap();
		await page.getByRole('heading', { name: 'Boards' }).waitFor();
		await page.getByRole('link', { name: 'Back to Prints' }).tap();
		await steps(page).waitFor();
		expect(await atStep(page), 'they stand where they were left').toMatch(/Boards/);
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await steps(page).waitFor();
		expect(await atStep(page), 'also when the app is opened again').toMatch(/Boards/);
		await button('Skip the first steps').tap();
		await expect.poll(async () => [await steps(page).count(), await focused(page)]).toEqual([0, 'Start typing']);
		await page.reload();
		await button('Load the example').waitFor();
		expect(await steps(page).count(), 'never again').toBe(0);

		await goBehindName(page, 'Help', (what) => what.tap());
		await steps(page).getByRole('button', { name: /Mount/ }).tap();
		const size = page.getByRole('textbox', { name: 'Mount size' });
		expect(await size.inputValue(), 'what was typed is in the settings').toBe('60 x 50 cm');
		await steps(page)
			.getByRole('button', { name: /Prints/ })
			.tap();
		await button('Go to the prints').tap();
		await button('Start typing').waitFor();
	}));

test('by keyboard alone the first steps end at the first print, and Help shows them beside drawings and keys', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).waitFor();
		expect(await focused(page), 'nothing has the focus unasked').toBe('BODY');
		for (let turn = 0; turn < 30 && (await focused(page)) !== 'Next'; turn++) await page.keyboard.press('Tab');
		expect(await focused(page)).toBe('Next');
		await press(page, 'Enter');
		expect(await focused(page)).toBe('Step 2 of 4: Mount');
		await press(page, 'Tab');
		await page.keyboard.type('700 x 550');
		await press(page, 'Tab');
		await page.getByRole('img', { name: /^Front Mount 700 × 550 mm/ }).waitFor();
		for (const step of ['Step 3 of 4: Boards', 'Step 4 of 4: Prints']) {
			await tabTo(page, 'Next');
			await press(page, 'Enter');
			expect(await focused(page)).toBe(step);
		}
		await press(page, 'Tab', 'Enter');
		await page.getByRole('grid').waitFor();

		await showName(page).focus();
		await press(page, 'Enter');
		await tabTo(page, 'Help');
		await press(page, 'Enter');
		await page.getByRole('heading', { name: 'Help', level: 1 }).waitFor();
		const drawings = page.getByRole('img', { name: /^(Overlap|Reveal|Bottom weight|Signing space): / });
		expect(await drawings.count()).toBe(4);
		await tabTo(page, 'All keys');
		await press(page, 'Enter');
		await page.getByRole('dialog').waitFor();
		expect(await page.getByRole('dialog').evaluate((sheet) => sheet.scrollTop), 'it opens at its top').toBe(0);
		await press(page, 'Escape');
		expect(await focused(page)).toBe('All keys');
	}));
