import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { oneStage } from '../screens/oneStage.ts';
import { cell } from '../screens/prints.ts';

const inWindow = oneStage({ isPlanned: false });

/** What is noted of a grid as it opens. */
interface Opening {
	/** How many rows come into the page at a time. */
	readonly batches: number[];
	/** Where the focus is once the first of them are there. */
	focus?: string | undefined;
}

/** Notes in the page how the next grid opens. @returns gives what was noted so far */
async function watchOpening(page: Page): Promise<() => Promise<Opening>> {
	await page.evaluate(() => {
		const opening: Opening = { batches: [] };
		const rows = '[role=row]:has([data-grip])';
		new MutationObserver((changes) => {
			const added = changes.flatMap(({ addedNodes }) => [...addedNodes]).filter((node) => node instanceof Element);
			const count = added.flatMap((node) => [...(node.matches(rows) ? [node] : []), ...node.querySelectorAll(rows)]);
			if (count.length === 0) return;
			opening.batches.push(new Set(count).size);
			opening.focus ??= document.activeElement?.role ?? undefined;
		}).observe(document.body, { childList: true, subtree: true });
		Object.assign(window, { opening });
	});
	return () => page.evaluate(() => (window as unknown as { opening: Opening }).opening);
}

test('a grid opens a few rows at a time, with the focus in it from the first on, and the first key is typed', () =>
	inWindow(async (page) => {
		const opening = await watchOpening(page);
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('gridcell').first().waitFor();
		await page.keyboard.press('7');
		await page.getByRole('grid').getByRole('textbox').waitFor();
		expect(await page.getByRole('grid').getByRole('textbox').inputValue()).toBe('7');
		await page.keyboard.press('Escape');
		// As many rows as fit, with their drawings, and the active print beside them.
		const rows = page.locator('[role=row]:has([data-grip])');
		await expect.poll(() => rows.count()).toBeGreaterThan(10);
		await expect.poll(() => rows.locator('.mount svg').count()).toBeGreaterThan(10);
		await page.locator('#print-name').waitFor();
		const { batches, focus } = await opening();
		expect(Math.max(...batches)).toBeLessThanOrEqual(4);
		expect(focus).toMatch(/^(gridcell|rowheader)$/);

		// One scale for all drawings: beside a much larger mount the others are drawn smaller.
		const drawn = () =>
			rows
				.nth(3)
				.locator('.mount svg')
				.evaluate((svg) => svg.getBoundingClientRect().width);
		const before = await drawn();
		await cell(page, 0, 'mount').click();
		await page.keyboard.type('1900 x 1500 mm');
		await page.keyboard.press('Enter');
		await expect.poll(drawn).toBeLessThan(before * 0.6);
		await page.keyboard.press('Control+z');
		await expect.poll(drawn).toBe(before);
	}));
