import { rm } from 'node:fs/promises';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildVersion } from '../harness/buildVersion.ts';
import { onStage } from '../harness/stage.ts';
import { builtFile, builtFiles, forgetApp, forgive, isReady, notKept, worksOffline } from './offline.ts';
import { type Fault, faults, SpoiltHost } from './spoiltHost.ts';

const isLong = process.env.EVENHANG_SOAK === '1';

let newer: string;

beforeAll(async () => {
	newer = await buildVersion('99.0.0');
});

afterAll(() => rm(newer, { recursive: true, force: true }));

test('faults that come once, in the first visit: all of it is kept in the end', async () => {
	const host = new SpoiltHost();
	await onStage({ serve: host.serve }, async (stage) => {
		const spoilt = new Map<string, Fault>();
		for (const [part, fault] of [
			['packing.worker', 'failed'],
			['readRows.worker', 'dropped'],
			['highs', 'cut short'],
			['harmonise.worker', 'portal'],
			['ordering.worker', 'portal of that type'],
			['icon-512', 'missing'],
		] as const)
			spoilt.set(await builtFile(part), fault);
		host.spoil = (file) => {
			const fault = spoilt.get(file);
			spoilt.delete(file);
			return fault;
		};
		const page = await stage.openShow();
		await isReady(page);
		expect(spoilt.size, 'each was asked for').toBe(0);
		await worksOffline(stage, page);
		forgive(stage);
	});
});

test('a part that never comes, in the first visit: it says so, nothing is in charge, and trying again keeps all', async () => {
	const host = new SpoiltHost();
	const files = isLong ? await builtFiles() : [await builtFile('packing.worker')];
	await onStage({ serve: host.serve }, async (stage) => {
		const page = await stage.openShow();
		await isReady(page);
		for (const file of files)
			for (const fault of faults) {
				await forgetApp(page);
				// What the page itself needs is spoilt for the service worker only.
				host.spoil = (asked, isForPage) => (asked === file && !isForPage ? fault : undefined);
				await page.goto(stage.address);
				await notKept(page).waitFor();
				expect(await page.getByText('Ready offline').count(), `${file} ${fault}`).toBe(0);
				expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBe(null);
				host.mend();
				await notKept(page).click();
				await isReady(page);
			}
		await worksOffline(stage, page);
		forgive(stage);
	});
}, 1_200_000);

test('the service worker itself does not come, in the first visit: it says so, and trying again keeps all of it', async () => {
	const host = new SpoiltHost();
	await onStage({ serve: host.serve }, async (stage) => {
		const page = await stage.openShow();
		await isReady(page);
		for (const fault of faults) {
			await forgetApp(page);
			host.spoil = (asked) => (asked === 'sw.js' ? fault : undefined);
			await page.goto(stage.address);
			await notKept(page).waitFor();
			host.mend();
			await notKept(page).click();
			await isReady(page);
		}
		await worksOffline(stage, page);
		forgive(stage);
	});
});

test('an update of which a part never comes leaves the version that is there in charge, whole', async () => {
	const host = new SpoiltHost();
	await onStage({ serve: host.serve }, async (stage) => {
		const page = await stage.openShow();
		await isReady(page);
		const version = page.locator('meta[name=version]');
		const older = await version.getAttribute('content');
		for (const fault of faults) {
			// The two builds differ in their page alone.
			host.spoil = (asked) => (asked === 'index.html' || asked === '' ? fault : undefined);
			await stage.startHost(newer);
			await page.evaluate(async () => {
				const registration = await navigator.serviceWorker.ready;
				await registration.update();
				await new Promise<void>((resolve) => {
					const { installing } = registration;
					if (!installing) resolve();
					installing?.addEventListener('statechange', () => resolve());
				});
			});
			await page.reload();
			await isReady(page);
			expect(await version.getAttribute('content'), fault).toBe(older);
			expect(await page.getByText('A new version of Evenhang').count()).toBe(0);
		}
		await worksOffline(stage, page);
		host.mend();
		await stage.startHost(newer);
		await page.reload();
		await page.getByRole('button', { name: 'Start the new version' }).click();
		await page.locator('meta[name=version][content="99.0.0"]').waitFor({ state: 'attached' });
		await isReady(page);
		forgive(stage);
	});
});
