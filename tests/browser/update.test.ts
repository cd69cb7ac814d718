import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { testInSoak } from '../soak.ts';
import { isNewer } from './harness/isNewer.ts';
import { newerBuild, newerVersion } from './harness/newerBuild.ts';
import { onStage } from './harness/stage.ts';
import { endOfUpdate, forgive } from './offline/offline.ts';
import { SpoiltHost } from './offline/spoiltHost.ts';
import { cell, press, seen, withPrints } from './screens/prints.ts';

const versionOf = (page: Page) => page.locator('meta[name=version]').getAttribute('content');
const question = (page: Page) => page.getByRole('status').filter({ hasText: 'A new version of Evenhang' });

test('a newer version of which a part never comes is left; a whole one waits for the word, and only then takes over', async () => {
	const host = new SpoiltHost();
	await onStage({ serve: host.serve }, async (stage) => {
		const page = await stage.openShow();
		await stage.isKept(page);
		const older = await versionOf(page);
		expect(older).not.toBe(newerVersion);

		host.spoil = (asked) => (asked === 'index.html' || asked === '' ? 'cut short' : undefined);
		await stage.startHost(await newerBuild());
		expect(await endOfUpdate(page)).toBe('redundant');
		expect(await question(page).count()).toBe(0);
		await stage.stopHost();
		const other = await stage.openShow();
		expect(await versionOf(other), 'the older one is in charge').toBe(older);
		await other.close();

		host.mend();
		await stage.startHost(await newerBuild());
		await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
		await question(page).waitFor();
		expect(await versionOf(page), 'the older version goes on').toBe(older);

		await page.getByRole('button', { name: 'Not now' }).click();
		await question(page).waitFor({ state: 'hidden' });
		await page.reload();
		await question(page).waitFor();
		expect(await versionOf(page), 'put off, it is asked again').toBe(older);

		// One title is on disk, the other still in its cell when the word is given.
		await page.getByRole('button', { name: 'Start typing' }).click();
		await page.keyboard.type('Harbour');
		await page.keyboard.press('Enter');
		await page.getByRole('rowheader', { name: 'Harbour' }).click();
		await page.keyboard.type('Harbour at dusk');
		// Pressed as by a finger in Safari, where a button does not take the focus from the cell.
		await page
			.getByRole('button', { name: 'Start the new version' })
			.evaluate((button) => (button as HTMLElement).click());
		await isNewer(page);
		await page.getByRole('rowheader', { name: 'Harbour at dusk' }).waitFor();
		expect(await question(page).count()).toBe(0);
		forgive(stage);
	});
});

// In parts: the test above, and `unit/app/update` for what another window asked for.
testInSoak('in the very first visit too; a second window is not reloaded under the hands that type in it', () =>
	onStage({}, async (stage) => {
		const first = await stage.openShow();
		await withPrints(first, [['Harbour', '376', '251']]);
		await first.getByText('Saved', { exact: true }).waitFor();
		await stage.isKept(first);
		const older = await versionOf(first);
		const second = await stage.openShow();
		await cell(second, 0, 'title').click();
		await second.keyboard.type('Harbour at');
		await stage.startHost(await newerBuild());
		await first.evaluate(async () => (await navigator.serviceWorker.ready).update());
		await question(first).waitFor();
		await first.getByRole('button', { name: 'Start the new version' }).click();
		await isNewer(first);

		await second.getByText('this page still shows the older one').waitFor();
		expect(await versionOf(second)).toBe(older);
		await second.keyboard.type(' night');
		await press(second, 'Enter');
		expect(await seen(second, 0, 'title')).toBe('Harbour at night typed');
		await expect
			.poll(() => seen(first, 0, 'title'), { message: 'the newer one hears of it' })
			.toBe('Harbour at night typed');
		await cell(first, 0, 'note').click();
		await first.keyboard.type('typed in the newer one');
		await press(first, 'Enter');
		await expect.poll(() => seen(second, 0, 'note')).toBe('typed in the newer one typed');
		await second.getByRole('button', { name: 'Start the new version' }).click();
		await isNewer(second);
	}),
);
