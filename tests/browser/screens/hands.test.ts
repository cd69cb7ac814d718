import { expect, test } from 'vitest';
import { atBench, atSheets, besideGrid, goToPlace, inList, inSettings, openHands, wrongHands } from './hands.ts';
import { oneStage } from './oneStage.ts';

const play = oneStage();

test('keys beside the cells do what their tables say: search, findings, bench, sheets, settings', () =>
	play(async (page) => {
		await openHands(page);
		await page.getByRole('button', { name: 'Close', exact: true }).first().click();
		expect(await wrongHands(page, besideGrid)).toEqual([]);
		await page.locator('#told').click();
		expect(await wrongHands(page, inList)).toEqual([]);
		await goToPlace(page, 'boards');
		const marks = page.getByRole('button', { name: 'Mark as cut: sheet 1 of Chalk', exact: true });
		await marks.waitFor({ timeout: 20_000 }); // the sheets are planned beside the screen
		await goToPlace(page, 'cut');
		expect(await wrongHands(page, atBench)).toEqual([]);
		await goToPlace(page, 'knife');
		expect(await wrongHands(page, atSheets)).toEqual([]);
		await goToPlace(page, 'settings');
		await page.getByLabel('Name, new size').click();
		expect(await wrongHands(page, inSettings)).toEqual([]);
	}));
