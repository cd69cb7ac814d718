import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { isSoak } from './harness/soak.ts';
import { onStage } from './harness/stage.ts';
import { cell, paste, press, withPrints } from './screens/prints.ts';

/** How often the browser is killed; `npm run soak` does it often enough to mean something. */
const kills = isSoak ? 100 : 3;

/** What is on disk: each row as it was typed. */
const onDisk = (page: Page): Promise<readonly string[]> =>
	page.evaluate(async () => {
		const opening = indexedDB.open('evenhang');
		await new Promise((resolve) => (opening.onsuccess = resolve));
		const tx = opening.result.transaction('rows');
		const rows = tx.objectStore('rows').getAll();
		await new Promise((resolve) => (tx.oncomplete = resolve));
		opening.result.close();
		return rows.result.map((each) => JSON.stringify(each)).sort();
	});

const lastNote = (round: number) => `round ${round}, note 99`;

/** A row as it is with another note. */
function withNote(kept: string, note: string): string {
	const row = JSON.parse(kept) as { typed?: Record<string, string> };
	return JSON.stringify(row.typed ? { ...row, typed: { ...row.typed, note } } : row);
}

/** What is typed or imported in a round, over and over until the browser is killed. */
const deeds: readonly ((page: Page, round: number, at: number) => Promise<void>)[] = [
	async (page, round, at) => {
		await cell(page, 0, 'note').click();
		await page.keyboard.type(`round ${round}, note ${at}`);
		await press(page, 'Tab');
	},
	async (page, round, at) => {
		await page.evaluate(() => (location.hash = 'prints'));
		await cell(page, 0, 'title').click();
		await press(page, 'Control+End', 'Home');
		await paste(page, Array.from({ length: 50 }, (_, row) => `${round}.${at}.${row}\tPrint`).join('\n'));
	},
];

test(`of ${kills} browsers killed while typing or importing, each has everything that was called saved`, async () => {
	let held = 0;
	await onStage({ hasProfile: true }, async (stage) => {
		let page = await stage.openShow();
		await withPrints(page, [
			['Low water', '376', '251'],
			['Kiln door', '300', '200'],
		]);
		for (let round = 0; round < kills; round++) {
			const deed = deeds[round % deeds.length]!;
			let saved: readonly string[] = [];
			for (let at = 0; at <= round % 3; at++) {
				await deed(page, round, at);
				await page
					.getByText(/^Saved/)
					.first()
					.waitFor();
				saved = await onDisk(page);
			}
			await deed(page, round, 99); // this one may be there, or not: it was not called saved
			await stage.killBrowser();
			await stage.openBrowser();
			page = await stage.openShow();
			await page.getByRole('navigation').first().waitFor();
			const kept = await onDisk(page);
			const lost = saved.filter((each) => !kept.includes(each) && !kept.includes(withNote(each, lastNote(round))));
			expect(lost, `round ${round}`).toEqual([]);
			held++;
			await page.evaluate(() => (location.hash = 'prints'));
			await cell(page, 0, 'note').waitFor();
		}
		stage.problems.splice(0); // what a killed browser leaves in the console
	});
	expect(held).toBe(kills);
});
