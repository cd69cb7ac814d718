import { expect, test } from 'vitest';
import { isNewer } from '../harness/isNewer.ts';
import { newerBuild } from '../harness/newerBuild.ts';
import { allOr, testInSoak } from '../../soak.ts';
import { onStage } from '../harness/stage.ts';
import {
	builtFile,
	builtFiles,
	endOfUpdate,
	everyPartWorks,
	forgetApp,
	forgive,
	isReady,
	notKept,
	worksOffline,
} from './offline.ts';
import { type Fault, faults, SpoiltHost } from './spoiltHost.ts';

test('faults that come once, in the first visit: all of it is kept in the end', async () => {
	const host = new SpoiltHost();
	await onStage({ serve: host.serve }, async (stage) => {
		const spoilt = new Map<string, Fault>();
		for (const [part, fault] of [
			['packing.worker', 'failed'],
			['reading.worker', 'dropped'],
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

// As `portal.test.ts` of a first visit in which every file but the page is the network's own.
testInSoak(
	'a part that never comes, in the first visit: it says so, nothing is in charge, and trying again keeps all',
	async () => {
		const host = new SpoiltHost();
		const files = await builtFiles();
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
					expect(await page.getByText('Ready offline', { exact: true }).count(), `${file} ${fault}`).toBe(0);
					expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBe(null);
					host.mend();
					await notKept(page).click();
					await isReady(page);
				}
			await worksOffline(stage, page);
			forgive(stage);
		});
	},
	1_200_000,
);

// As the play above, of the file without which nothing is kept.
testInSoak(
	'the service worker itself does not come, in the first visit: it says so, and trying again keeps all of it',
	async () => {
		const host = new SpoiltHost();
		await onStage({ serve: host.serve }, async (stage) => {
			const page = await stage.openShow();
			await isReady(page);
			for (const fault of allOr<Fault>(faults, ['portal of that type'])) {
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
	},
);

// Of one fault: `update.test.ts`.
testInSoak(
	'an update of which a part never comes leaves the version that is there in charge; the page hears of the one that does',
	async () => {
		const host = new SpoiltHost();
		await onStage({ serve: host.serve }, async (stage) => {
			const page = await stage.openShow();
			await isReady(page);
			const version = page.locator('meta[name=version]');
			const older = await version.getAttribute('content');
			await stage.startHost(await newerBuild());
			// A page that is open for days hears of more than one.
			for (const fault of faults) {
				host.spoil = (asked) => (asked === 'index.html' || asked === '' ? fault : undefined);
				expect(await endOfUpdate(page), fault).toBe('redundant');
			}
			expect(await page.getByText('A new version of Evenhang').count()).toBe(0);

			await stage.stopHost();
			const other = await stage.openShow();
			expect(await other.locator('meta[name=version]').getAttribute('content')).toBe(older);
			await everyPartWorks(other);
			await other.close();

			host.mend();
			await stage.startHost(await newerBuild());
			await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
			await page.getByRole('button', { name: 'Start the new version' }).click();
			await isNewer(page);
			await isReady(page);
			forgive(stage);
		});
	},
);
