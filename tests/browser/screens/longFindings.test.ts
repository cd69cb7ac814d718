import { expect, test } from 'vitest';
import { onStage } from '../harness/stage.ts';
import { cell, paste, startTyping } from './prints.ts';
import { openSettings } from './settingsOf.ts';

test('the findings of a long show are listed some at a time, and the names of prints; more are asked for with the focus on the first', () =>
	onStage({ isKept: false }, async (stage) => {
		const page = await stage.openShow();
		await startTyping(page);
		await page.keyboard.press('Home');
		const lines = Array.from({ length: 150 }, (_, place) => `${place + 1}\tPrint ${place + 1}\tno shape ${place + 1}`);
		await page.keyboard.press('Home');
		await paste(page, lines.join('\n'));
		await page.locator('#checks').click();
		const prints = page.locator('.list h3');
		await page.getByText('The first 100 are listed.').waitFor();
		expect(await prints.count()).toBe(100);
		await page.getByRole('button', { name: 'Show more' }).press('Enter');
		await expect.poll(() => prints.count()).toBe(151);
		const ofFocus = await page.evaluate(() => document.activeElement!.closest('li:has(h3)')?.textContent);
		expect(ofFocus).toMatch(/101/);
		expect(await page.getByRole('button', { name: 'Show more' }).count()).toBe(0);
		const names = page.locator('.names > .bare');
		expect(await names.count(), 'names that are folded away').toBe(0);
		await page.getByText('Which prints?').click();
		await expect.poll(() => names.count()).toBe(100);
		await page.getByRole('button', { name: 'More names' }).click();
		await expect.poll(() => names.count()).toBe(150);

		// Of more prints than are worked out at once the counts say that they are not all counted yet.
		await cell(page, 1, 'number').click();
		await page.keyboard.press('Control+End');
		await page.keyboard.press('Home');
		await paste(page, lines.slice(0, 80).join('\n'));
		await openSettings(page, 'Mount and window');
		await page.getByRole('textbox', { name: /^Overlap/ }).fill('4');
		await page.keyboard.press('Tab');
		await page.getByRole('link', { name: 'Prints', exact: true }).click();
		const counts = page.locator('.checks');
		await expect.poll(() => counts.textContent()).toMatch(/^229\b/);
		const noted = await counts.evaluateHandle((checks) => {
			const words: string[] = [];
			new MutationObserver(() => words.push(`${checks.ariaBusy} ${checks.textContent}`)).observe(checks, {
				...{ attributes: true, characterData: true, childList: true, subtree: true },
			});
			return words;
		});
		const debug = await stage.context.newCDPSession(page);
		await debug.send('Emulation.setCPUThrottlingRate', { rate: 8 });
		await page.keyboard.press('Control+z');
		await expect.poll(async () => (await noted.jsonValue()).join(', ')).toMatch(/^true 229….*false 229\b/);
	}));
