import { appendFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { testInSoak } from '../soak.ts';
import { goBehindName } from './harness/behindName.ts';
import { onStage, type Stage } from './harness/stage.ts';
import { cell, press, seen, withPrints } from './screens/prints.ts';

const isSaved = (page: Page) => page.getByText('Saved', { exact: true }).first().waitFor();

async function type(page: Page, row: number, column: string, text: string): Promise<void> {
	await cell(page, row, column).click();
	await page.keyboard.type(text);
	await press(page, 'Enter');
	await isSaved(page);
}

/** Resolves once the second copies have all of these texts. */
const areCopied = (page: Page, ...texts: readonly string[]) =>
	expect
		.poll(async () => {
			const all = await page.evaluate(async () => {
				const cache = await caches.open('evenhang second copies');
				const kept = await Promise.all((await cache.keys()).map(async (key) => (await cache.match(key))!.text()));
				return kept.join('\n');
			});
			return texts.filter((text) => !all.includes(text));
		})
		.toEqual([]);

/**
 * The last entry of the database's log as a browser leaves it that is killed while it writes it: a head without its body.
 * At the next opening that is passed over, and more is written behind it. At the one after, it counts as damage, and the
 * browser begins an empty database.
 */
async function tearLog(stage: Stage): Promise<void> {
	const entries = await readdir(stage.profile, { recursive: true });
	const logs = entries.filter((entry) => /IndexedDB\/.*\.indexeddb\.leveldb\/\d+\.log$/.test(entry));
	expect(logs).toHaveLength(1);
	const head = [1, 2, 3, 4, 80, 0, 1]; // checksum, length, kind
	await appendFile(join(stage.profile, logs[0]!), Buffer.from(head));
}

/** Begins a show beside the one that is open, with one print. */
async function beginOther(page: Page, title: string): Promise<void> {
	await goBehindName(page, 'Shows');
	await page.locator('button.main', { hasText: 'New show' }).click();
	await withPrints(page, [[title, '300', '200']]);
	await isSaved(page);
}

// Without a browser: `unit/app/secondCopies` and `lostShows`; that it is said: the play below.
testInSoak(
	'a browser killed as it writes, whose database is empty two openings later: every show is put back, and it is said',
	() =>
		onStage({ hasProfile: true, isKept: false }, async (stage) => {
			let page = await stage.openShow();
			await withPrints(page, [
				['Low water', '376', '251'],
				['Kiln door', '376', '251'],
			]);
			await isSaved(page);
			await beginOther(page, 'Slipway');
			await areCopied(page, 'Low water', 'Kiln door', 'Slipway');
			await stage.killBrowser();
			await tearLog(stage);
			await stage.openBrowser();
			page = await stage.openShow();
			expect(await seen(page, 0, 'title')).toBe('Slipway typed'); // nothing can be seen yet
			await type(page, 0, 'note', 'after the kill');
			await areCopied(page, 'after the kill');
			await stage.killBrowser();
			await stage.openBrowser();
			page = await stage.openShow();
			const said = page.getByRole('alert').filter({ hasText: /(is|are) (missing from this device|restored)/ });
			await said.getByRole('heading', { name: '2 shows are restored' }).waitFor();
			await said
				.getByText(/^New show.* was restored as of .*Pictures may be missing\.$/)
				.nth(1)
				.waitFor();
			await cell(page, 0, 'title').waitFor();
			expect(await seen(page, 0, 'title')).toBe('Slipway typed');
			expect(await seen(page, 0, 'note')).toBe('after the kill typed');
			const saving = page.waitForEvent('download');
			await page.getByRole('button', { name: 'Back up all shows' }).click();
			await saving;
			// It is said until it has been read.
			await page.reload();
			await said.waitFor();
			await page.getByRole('link', { name: 'All shows' }).click();
			await page.getByText('2 prints').waitFor();
			await page.getByRole('button', { name: 'Close', exact: true }).click();
			await said.waitFor({ state: 'detached' });
			await page.reload();
			await page.getByText('2 prints').waitFor();
			expect(await said.count()).toBe(0);
			stage.problems.splice(0); // what a killed browser leaves in the console
		}),
);

test('where the copies are gone too, the shows that were here are named, with what to do', () =>
	onStage({ isKept: false }, async (stage) => {
		const page = await stage.openShow();
		await withPrints(page, [
			['Low water', '376', '251'],
			['Kiln door', '376', '251'],
		]);
		await isSaved(page);
		await areCopied(page, 'Kiln door');
		const { origin } = new URL(stage.address);
		await page.goto('about:blank');
		const debug = await page.context().newCDPSession(page);
		await debug.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb,cache_storage' });
		await page.goto(stage.address);
		const said = page.getByRole('alert').filter({ hasText: /(is|are) (missing from this device|restored)/ });
		await said.getByRole('heading', { name: '1 show is missing from this device' }).waitFor();
		await said.getByText(', 2 prints, in no backup.').waitFor();
		const under = (await page.getByRole('banner').boundingBox())!;
		expect([under.y, (await said.boundingBox())!.y >= under.height], 'under the header, which stays').toEqual([
			0,
			true,
		]);
		const main = await page.locator('.press').evaluateAll((all) => {
			const grounds = all.filter((each) => each.checkVisibility() && each.matches('.main'));
			const ground = getComputedStyle(grounds[0]!).backgroundColor;
			return grounds
				.filter((each) => getComputedStyle(each).backgroundColor === ground)
				.map((each) => each.textContent);
		});
		expect(main, 'one main thing').toEqual(['Open a backup']);
		// The way out is on the left, as everywhere.
		await expect.poll(() => page.locator('.notice .press').allTextContents()).toEqual(['Close', 'Open a backup']);
		await page.getByText('What happened?').click();
		await page.getByText('The browser lost what was stored on this device.').waitFor();
		await page.getByText('If a show is still open in another tab').waitFor();
		const choosing = page.waitForEvent('filechooser');
		await page.getByRole('button', { name: 'Open a backup' }).click();
		await choosing;
		await page.getByRole('heading', { name: 'No prints in this show yet' }).waitFor();
		await page.getByRole('button', { name: 'Close', exact: true }).click();
		await said.waitFor({ state: 'detached' });
		await page.reload();
		await page.getByRole('heading', { name: 'No prints in this show yet' }).waitFor();
		expect(await said.count()).toBe(0);
	}));
