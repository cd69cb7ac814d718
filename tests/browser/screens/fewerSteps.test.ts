import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { testInSoak } from '../../soak.ts';
import { coverAllBut, tapUntil } from '../grid/fingers.ts';
import { oneStage } from './oneStage.ts';
import { cell, orderFound, press, seen, seenIn } from './prints.ts';

const play = oneStage({ isPlanned: false, hasTouch: true });

/**
 * Counts the taps of a finger that hit something. On a busy machine the browser may lose one, or take it for the second
 * of two, which nothing here answers: that one is made again, and counted once.
 */
const watchTaps = (page: Page): Promise<void> =>
	page.evaluate(() => {
		let taps = 0;
		const isTap = (event: Event) =>
			event instanceof PointerEvent && event.pointerType === 'touch' && event.detail === 1;
		addEventListener('click', (event) => (taps += isTap(event) ? 1 : 0), true);
		Object.assign(window, { tapsMade: () => taps });
	});
const tapsMade = (page: Page) => page.evaluate(() => (window as unknown as { tapsMade: () => number }).tapsMade());

const tap = (what: Locator) => what.tap();

/** Loads the example, and counts from there. @returns how many taps there were since it was asked last */
async function beginCounting(page: Page): Promise<() => Promise<number>> {
	await page.getByRole('button', { name: 'Load the example' }).tap();
	await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
	await page.getByRole('button', { name: 'Close', exact: true }).first().tap();
	await watchTaps(page);
	let before = 0;
	return async () => {
		const all = await tapsMade(page);
		const since = all - before;
		before = all;
		return since;
	};
}

test('the counted taps: a print with four values 1, a view 1, a board 2, a mend 2', () =>
	play(async (page) => {
		const counted = await beginCounting(page);
		await tap(page.getByRole('radio', { name: 'Sizing' }));
		await page.getByRole('columnheader', { name: 'Board' }).waitFor({ state: 'detached' });
		expect(await counted(), 'change the view').toBe(1);

		await tap(page.getByRole('button', { name: 'Add print' }));
		await page.getByRole('textbox', { name: 'Title, row 31' }).waitFor();
		await coverAllBut(page, 420);
		for (const text of ['Spring tide', '3:2', '456', '304']) {
			await page.keyboard.insertText(text); // as an on-screen keyboard does, and its key Next
			await press(page, 'Enter');
		}
		await coverAllBut(page, 820);
		expect(await counted(), 'add a print with four values').toBe(1);
		await press(page, 'Escape');
		expect(await seenIn(page, 30, 'title', 'shape', 'picture width', 'picture height')).toEqual([
			...['Spring tide typed', '3:2 typed', '456 typed', '304 typed'],
		]);
		await page.getByRole('button', { name: 'Undo' }).click(); // two lengths and a shape are one too many

		await tap(page.getByRole('radio', { name: 'Every column' }));
		await counted();
		await tap(cell(page, 0, 'board'));
		await tap(page.getByRole('option', { name: 'Chalk' }));
		await expect.poll(() => seen(page, 0, 'board')).toBe('Chalk typed');
		expect(await counted(), 'give a print its board').toBe(2);

		const undo = page.getByRole('button', { name: /^Undo/ });
		const undoBefore = await undo.getAttribute('aria-label');
		await tap(cell(page, 8, 'title'));
		await page.getByRole('heading', { name: '9 Salt pan III' }).waitFor();
		await tap(
			page
				.locator('#sentences button')
				.filter({ hasText: /^(Set|Type|Clear|Use|Remove)/ })
				.first(),
		);
		await expect.poll(() => undo.getAttribute('aria-label')).not.toBe(undoBefore);
		expect(await counted(), 'apply a mend').toBe(2);
	}));

// In parts in `bench/workedThrough.test.ts`: a step is ticked off by one tap, which goes on, and so is the whole example.
testInSoak('the counted taps at the bench: ten steps 10', () =>
	play(async (page) => {
		const counted = await beginCounting(page);
		await tap(page.getByRole('link', { name: 'Bench', exact: true }));
		await orderFound(page); // until then it may become another
		await tap(page.getByRole('link', { name: 'Start cutting windows' }));
		await tap(page.getByRole('button', { name: 'Next' }).first());
		await page.locator('.digits').first().waitFor();
		await counted();
		const stepAt = (number: number) => page.getByRole('heading', { name: new RegExp(`^Step ${number} of`) });
		const first = 12; // the first ones are of a single mount each
		while ((await stepAt(first).count()) === 0) await page.getByRole('button', { name: 'Next' }).first().click();
		const made = async () =>
			Number(/(\d+) of \d+ cuts made/.exec(await page.getByText(/of \d+ cuts made$/).innerText())![1]);
		const madeBefore = await made();
		await counted();
		for (let step = first; step < first + 10; step++) {
			const done = page.getByRole('button', {
				name: /^(All \d+ cut|Both cut|Cut made|The rest cut)$/,
			});
			await tapUntil(done, () => stepAt(step + 1).isVisible());
		}
		expect(await counted(), 'ten steps at the bench').toBe(10);
		expect((await made()) - madeBefore).toBeGreaterThanOrEqual(30);
	}),
);
