import { expect, test } from 'vitest';
import { onStage } from '../harness/stage.ts';
import { paste, startTyping } from './prints.ts';

test('the findings of a long show are listed some at a time, and more are asked for with the focus on the first of them', () =>
	onStage({ isKept: false }, async (stage) => {
		const page = await stage.openShow();
		await startTyping(page);
		await page.keyboard.press('Home');
		const lines = Array.from({ length: 150 }, (_, place) => `${place + 1}\tPrint ${place + 1}\tno shape ${place + 1}`);
		await page.keyboard.press('Home');
		await paste(page, lines.join('\n'));
		await page.locator('#checks').click();
		const prints = page.locator('.list h3').filter({ hasText: /^\d+ Print|^Print/ });
		await page.getByText('The first 100 prints of each are listed.').waitFor();
		const before = await prints.count();
		expect(before).toBeGreaterThanOrEqual(100);
		expect(before).toBeLessThan(150);
		await page.getByRole('button', { name: 'Show more' }).press('Enter');
		expect(await prints.count()).toBe(before + 50);
		const ofFocus = await page.evaluate(() => document.activeElement!.closest('li:has(h3)')?.textContent);
		expect(ofFocus).toMatch(/101/);
		expect(await page.getByRole('button', { name: 'Show more' }).count()).toBe(0);
	}));
