import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goByAddress } from '../harness/goByAddress.ts';
import { atBench, atSheets, besideGrid, inList, inSettings, openHands, wrongHands } from './hands.ts';
import { oneStage } from './oneStage.ts';

const play = oneStage({ isInOnePage: true });

async function begin(page: Page): Promise<void> {
	await openHands(page);
	await page.getByRole('button', { name: 'Close', exact: true }).first().click();
}

test('keys in Find, at the sentences, in menus, a sorted list and the list of findings do what their tables say', () =>
	play(async (page) => {
		await begin(page);
		expect(await wrongHands(page, besideGrid)).toEqual([]);
		await page.locator('#checks').click();
		expect(await wrongHands(page, inList)).toEqual([]);
	}));

test('keys at the bench, at the sheets and in the settings do what their tables say', () =>
	play(async (page) => {
		await begin(page);
		await goByAddress(page, 'settings/mount');
		await page.getByLabel('Name, new size').click();
		expect(await wrongHands(page, inSettings)).toEqual([]);
		await goByAddress(page, 'cut');
		expect(await wrongHands(page, atBench)).toEqual([]);
		await goByAddress(page, 'boards');
		const marks = page.getByRole('button', { name: 'Mark as cut: sheet 1 of Chalk', exact: true });
		await marks.waitFor({ timeout: 20_000 }); // the sheets are planned beside the screen
		await goByAddress(page, 'knife');
		expect(await wrongHands(page, atSheets)).toEqual([]);
	}));
