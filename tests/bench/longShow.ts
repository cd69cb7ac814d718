import type { Page } from 'playwright-core';
import { chooseFile } from '../browser/harness/chooseFile.ts';
import type { Stage } from '../browser/harness/stage.ts';
import { cell, paste } from '../browser/screens/prints.ts';
import { printCells } from './printCells.ts';

/** A list of prints, as it is imported. */
const csvOf = (count: number): string =>
	[
		'number,title,maker,picture width,picture height',
		...Array.from({ length: count }, (_, place) => {
			const cells = printCells(place);
			return [cells.number, cells.title, `Maker ${place % 40}`, cells['picture width'], cells['picture height']].join(
				',',
			);
		}),
	].join('\n');

const saved = (page: Page) => page.getByText('Saved', { exact: true }).waitFor();
const choose = async (page: Page, item: string) => {
	await cell(page, -1, 'title').click();
	await page.keyboard.press('F7');
	await page.getByRole('menuitem', { name: item }).click();
};

/** What is done in it, and until when it lasts. */
export const deeds: readonly (readonly [what: string, act: (page: Page) => Promise<unknown>])[] = [
	[
		'opened: judged and ordered',
		async (page) => {
			await page.reload();
			await page.locator('#checks, #looks').first().waitFor();
			await page.waitForTimeout(6000);
		},
	],
	[
		'a size typed, its order after it',
		async (page) => {
			await cell(page, 3, 'picture width').click();
			await page.keyboard.type('301');
			await page.keyboard.press('Enter');
			await page.waitForTimeout(5000);
		},
	],
	[
		'five arrow keys',
		async (page) => {
			await cell(page, 3, 'picture width').click();
			for (let times = 0; times < 5; times++) await page.keyboard.press('ArrowDown');
			await page.waitForTimeout(1000);
		},
	],
	[
		'a paste of 30 × 5',
		async (page) => {
			await cell(page, 0, 'number').click();
			const lines = Array.from({ length: 30 }, (_, row) => [row, `Pasted ${row}`, '', 410 + row, 310 + row].join('\t'));
			await paste(page, lines.join('\n'));
			await page.waitForTimeout(5000);
		},
	],
	[
		'that paste undone',
		async (page) => {
			await page.keyboard.press('Control+z');
			await page.waitForTimeout(5000);
		},
	],
	['sorted by title', async (page) => (await choose(page, 'Sort, Z to A'), page.waitForTimeout(2000))],
	[
		'filtered by words',
		async (page) => {
			await page.getByRole('searchbox', { name: 'Find prints' }).fill('12');
			await page.waitForTimeout(2000);
		},
	],
	[
		'all shown again, in the hanging order',
		async (page) => {
			await page.getByRole('button', { name: 'Show all prints' }).click();
			await page.getByRole('button', { name: 'Hanging order' }).click();
			await page.waitForTimeout(2000);
		},
	],
	...(['Export CSV', 'Back up this show', 'Back up all shows'] as const).map(
		(name) =>
			[
				name,
				async (page: Page) => {
					const files = page.getByRole('button', { name: 'Files', exact: true });
					if (name === 'Back up all shows') await page.evaluate(() => void (location.hash = 'shows'));
					else if ((await files.getAttribute('aria-expanded')) === 'false') await files.click();
					const given = page.waitForEvent('download');
					await page.getByRole('button', { name }).first().click();
					await given;
					await page.waitForTimeout(3000);
				},
			] as const,
	),
	[
		'the list of findings',
		async (page) => {
			await page.evaluate(() => void (location.hash = 'prints'));
			await page.locator('#looks, #checks').first().click();
			await page.waitForTimeout(3000);
		},
	],
];

/** A show of many prints, saved, with its grid open. */
export async function openLongShow(stage: Stage, count: number): Promise<Page> {
	const page = await stage.openShow();
	page.setDefaultTimeout(300_000);
	await page.getByRole('button', { name: 'Start typing' }).waitFor();
	await chooseFile(page, 'Import a file', 'many.csv', csvOf(count));
	await page.getByText(/rows read$/).waitFor();
	await page.getByRole('grid').waitFor();
	await saved(page);
	return page;
}
