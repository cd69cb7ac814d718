import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { columnIndexOf } from '../../../src/ui/grid/gridColumns.ts';
import { rowHeight } from '../../../src/ui/grid/slots.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { holdBack } from '../harness/holdBack.ts';
import { allOr, isSoak } from '../../soak.ts';
import { oneStage } from '../screens/oneStage.ts';
import { benchPrints, openBenchShow } from './benchShow.ts';
import { cell, press } from '../screens/prints.ts';

const play = oneStage();

const undo = (page: Page) => page.getByRole('button', { name: /^Undo tick/ });
const ticked = (page: Page) => page.locator('[aria-pressed=true]').count();

/** Opens prints that have boards, in the soak the whole example. */
async function openPrints(page: Page): Promise<void> {
	if (!isSoak) return openBenchShow(page, true);
	await page.getByRole('button', { name: 'Load the example' }).click();
	await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
}

/** Goes to where one cuts and on to the first step with something to tick off. */
async function goToWork(page: Page, at: 'cut' | 'knife'): Promise<void> {
	if (at === 'knife') {
		await goByAddress(page, 'boards');
		await expect
			.poll(() => page.getByText(/^No (cheaper plan exists|plan uses fewer sheets)/).count(), { timeout: 20_000 })
			.toBe(5);
	}
	await goByAddress(page, at);
	const next = page.getByRole('button', { name: 'Next', exact: true });
	await expect.poll(() => next.getAttribute('aria-disabled'), { timeout: 20_000 }).toBe('false');
	if ((await page.locator('[aria-pressed]').count()) === 0) await next.click();
	await page.locator('[aria-pressed]').first().waitFor();
}

/** While sheets are planned the bench says nothing of the plan as a fact, and nothing can be begun; then the plan comes. */
async function seePlanning(page: Page, letPlan: () => void): Promise<void> {
	await goByAddress(page, 'bench');
	await page.getByRole('button', { name: 'Start cutting sheets', disabled: true }).waitFor();
	expect(await page.getByText('Planning sheets…').count(), 'said once').toBe(1);
	expect(await page.getByRole('link', { name: /cutting (windows|sheets)$/ }).count()).toBe(0);
	expect(await page.getByText('cuts made').count()).toBe(0);
	// The steps of the windows have their head above them, for no measure of theirs to be read as one of the blanks.
	const windows = page.getByRole('region', { name: 'Then the windows' });
	expect(await windows.getByRole('button', { name: 'Start cutting windows', disabled: true }).count()).toBe(1);
	// What is said of windows stands with them, not over the sheets: how many steps, and what to mind.
	await windows.getByText(/^\d+ steps?\. /).waitFor();
	expect(await page.locator('section:has(#then) + section').innerText()).toMatch(/^Before you cut windows/);
	// Nor do the cuts look as if they could be made.
	await windows.getByText('Windows can be cut once sheets are planned.').waitFor();
	const isFaint = () =>
		page
			.locator('.steps .box')
			.first()
			.evaluate((box) => getComputedStyle(box).opacity !== '1');
	expect(await isFaint()).toBe(true);
	letPlan();
	await page.getByText(/0 of \d+ cuts made/).waitFor({ timeout: 20_000 });
	const start = page.getByRole('link', { name: 'Start cutting sheets' });
	await start.waitFor();
	expect(await isFaint()).toBe(false);
	// Nor is there on Boards, where the old plan stays in view: what the worker is asked is held back.
	await page.evaluate(() => {
		const ask = Reflect.get(Worker.prototype, 'postMessage') as (this: Worker, message: unknown) => void;
		const held: (() => void)[] = [];
		Object.assign(Worker.prototype, {
			postMessage(this: Worker, message: unknown) {
				held.push(() => ask.call(this, message));
			},
		});
		const letAsk = () => {
			Object.assign(Worker.prototype, { postMessage: ask });
			for (const each of held) each();
		};
		Object.assign(window, { letAsk });
	});
	await goByAddress(page, 'prints');
	await cell(page, 0, 'copies').click();
	await page.keyboard.type('2');
	await press(page, 'Enter');
	await goByAddress(page, 'boards');
	await page.getByText('This is the plan before your last change').waitFor();
	await page.getByRole('button', { name: 'Planning sheets…', disabled: true }).waitFor();
	expect(await start.count()).toBe(0);
	await page.evaluate(() => (window as unknown as { letAsk: () => void }).letAsk());
	await start.waitFor();
	await press(page, 'Control+z');
}

// Undo at the knife in part: `boards/boards.test.ts`, by keyboard.
test.each(allOr(['cut', 'knife'] as const, ['cut'] as const))(
	'undo at the %s takes ticks off, and never the show with them',
	(at) =>
		play(async (page) => {
			const letPlan = await holdBack(page, 'assets/packing.worker-');
			await openPrints(page);
			if (at === 'cut') await seePlanning(page, letPlan);
			else letPlan();
			await goToWork(page, at);
			const things = await page.locator('[aria-pressed]').count();
			expect([await undo(page).innerText(), await undo(page).getAttribute('aria-disabled')]).toEqual([
				'Undo tick',
				'true',
			]);
			await undo(page).click({ force: true });
			await press(page, 'Control+z');
			expect(await page.locator('[aria-pressed]').count(), 'all that is to be cut is there').toBe(things);
			await page.locator('[aria-pressed=false]').first().click();
			await expect.poll(() => ticked(page)).toBe(1);
			const shown = page.getByRole('button', { name: /^Show / });
			const isOne = at === 'cut'; // what a step of one has is drawn anyway
			if (!isOne) await shown.last().click();
			await undo(page).click();
			await expect.poll(() => ticked(page)).toBe(0);
			if (!isOne) expect(await shown.first().getAttribute('aria-current'), 'what was undone is drawn').toBe('true');
			await press(page, 'Control+y');
			await expect.poll(() => ticked(page)).toBe(1);
			for (let turn = 0; turn < 3; turn++) await press(page, 'Control+z');
			await expect.poll(() => ticked(page)).toBe(0);
			expect(await page.locator('[aria-pressed]').count()).toBe(things);
			await goByAddress(page, 'prints');
			await page.locator(`[role=grid][aria-rowcount="${(isSoak ? 30 : benchPrints) + 2}"]`).waitFor();
			await press(page, 'Control+z'); // elsewhere it is what one did that goes
			await page.getByRole('button', { name: 'Load the example', exact: true }).waitFor();
		}),
);

test('behind the question about a cut print no key does anything to the page', () =>
	play(async (page) => {
		await openBenchShow(page);
		await goToWork(page, 'cut');
		const name = await page.locator('.tick .name').first().innerText();
		await page.locator('[aria-pressed=false]').first().click();
		await expect.poll(() => ticked(page)).toBe(1);
		await goByAddress(page, 'settings/mount');
		const border = page.getByLabel('Mount size', { exact: true });
		await border.fill('720 x 560 mm');
		await press(page, 'Tab');
		const question = page.getByRole('dialog', { name: 'Already cut' });
		await question.waitFor();
		await press(page, 'Control+z');
		expect(await question.innerText(), 'it is asked still').toContain(name);
		// At the bench arrows go between steps. Not every browser lets the focus stay in what is asked.
		await goByAddress(page, 'cut');
		const step = page.locator('main.bench .work');
		const before = await step.innerText();
		await page.evaluate(() => (document.activeElement as HTMLElement).blur());
		await press(page, 'ArrowRight');
		expect(await step.innerText()).toBe(before);
		await question.getByRole('button', { name: 'Leave it as it was' }).click();
		await goByAddress(page, 'cut');
		await expect.poll(() => ticked(page)).toBe(1);

		// What asks is loaded after the grid is painted: what is typed before waits for it.
		await page.getByText('Saved', { exact: true }).first().waitFor();
		const letCome = await holdBack(page, 'assets/later-');
		await goByAddress(page, 'prints');
		await page.reload();
		const grid = page.getByRole('grid');
		await grid.evaluate((scroller, top) => scroller.scrollTo(0, top), (Number.parseInt(name) - 3) * rowHeight);
		await grid
			.getByRole('row')
			.filter({ hasText: name.replace(/^\d+ /, '') })
			.locator(`[data-column="${columnIndexOf('picture width')}"]`)
			.click();
		await page.keyboard.type('123');
		await press(page, 'Enter');
		await page.waitForFunction(() =>
			performance.getEntriesByType('resource').some((entry) => entry.name.includes('hands-')),
		);
		expect(await grid.getByRole('textbox').count(), 'nothing was done').toBe(0);
		letCome();
		await question.waitFor();
		expect(await question.innerText()).toContain(name);
	}));
