import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { isNewer } from '../harness/isNewer.ts';
import { newerBuild } from '../harness/newerBuild.ts';
import { openFirstShow } from '../harness/openShow.ts';
import { allOr, testInSoak } from '../../soak.ts';
import { onStage } from '../harness/stage.ts';
import {
	expectEveryCopy,
	builtFile,
	builtFiles,
	everyPartWorks,
	expectNothingOfThePortal,
	forgive,
	isPlanned,
	isReady,
	notKept,
	smallShow,
	worksOffline,
} from './offline.ts';
import { type Fault, portalPage, SpoiltHost } from './spoiltHost.ts';

/** Puts the portal's page, or nothing, in the place of the kept copies of files. */
const spoilCopies = (page: Page, files: readonly string[], content: string | undefined) =>
	page.evaluate(
		async ({ files, content }) => {
			for (const name of await caches.keys()) {
				const cache = await caches.open(name);
				for (const request of await cache.keys()) {
					if (!files.some((file) => request.url.endsWith(`/${file}`))) continue;
					const { headers } = (await cache.match(request))!;
					if (content === undefined) await cache.delete(request);
					else await cache.put(request, new Response(content, { headers }));
				}
			}
		},
		{ files, content },
	);

test.each(allOr<Fault>(['portal', 'portal of that type'], ['portal of that type']))(
	'a first visit in which the network answers with its own page (%s) keeps nothing of it',
	async (fault) => {
		const host = new SpoiltHost();
		await onStage({ serve: host.serve }, async (stage) => {
			// The page itself has come; from then on the network wants one to sign in.
			host.spoil = (_file, isForPage) => (isForPage ? undefined : fault);
			const page = await stage.openShow();
			await notKept(page).waitFor();
			expect(await page.getByText('Ready offline', { exact: true }).count()).toBe(0);
			expect(await page.evaluate(() => navigator.serviceWorker.controller), 'nothing is in charge').toBe(null);
			await expectNothingOfThePortal(page);
			host.mend();
			await notKept(page).click();
			await isReady(page);
			await expectNothingOfThePortal(page);
			await worksOffline(stage, page);
			forgive(stage);
		});
	},
);

/** Which files the network answers for. */
const selections: readonly ((file: string) => boolean)[] = [
	() => true,
	(file) => /\.(js|css|wasm)$/.test(file) && file !== 'sw.js',
	(file) => file !== 'sw.js',
	(file) => file.endsWith('.html') || file === '',
];

// In parts: a first visit through such a network, above, and an update of which a part does not come, in `update.test.ts`.
for (const fault of ['portal', 'portal of that type'] as const)
	testInSoak(
		`an update through such a network (${fault}): the page is there at every opening, and keeps nothing of it`,
		async () => {
			const host = new SpoiltHost();
			await onStage({ serve: host.serve }, async (stage) => {
				const page = await stage.openShow();
				await isReady(page);
				await stage.startHost(await newerBuild());
				for (const isSpoilt of selections) {
					host.spoil = (file) => (isSpoilt(file) ? fault : undefined);
					for (let opening = 0; opening < 2; opening++) {
						await page.goto('about:blank');
						await page.goto(stage.address);
						await page.getByRole('navigation', { name: 'Places' }).waitFor();
					}
					await expectNothingOfThePortal(page);
				}
				await worksOffline(stage, page);
				host.mend();
				await stage.startHost(await newerBuild());
				await page.reload();
				await page.getByRole('button', { name: 'Start the new version' }).click();
				await isNewer(page);
				await isReady(page);
				await worksOffline(stage, page);
				forgive(stage);
			});
		},
		180_000,
	);

test('copies that are bad, empty or gone are found and fetched again', () =>
	onStage({}, async (stage) => {
		const page = await stage.openShow();
		await isReady(page);
		const files = ['index.html', ...(await builtFiles())];
		for (const content of allOr([portalPage, '', undefined], [portalPage])) {
			await spoilCopies(page, files, content);
			await page.reload();
			await isReady(page);
			await expectEveryCopy(page);
		}
		await worksOffline(stage, page);
	}));

// In parts: the play above, and `start.test.ts` of a part that does not come.
testInSoak(
	'a copy that is bad while the host is off is not used: it says so, and mends itself once the host is back',
	() =>
		onStage({}, async (stage) => {
			const page = await stage.openShow();
			await isReady(page);
			await spoilCopies(
				page,
				(await builtFiles()).filter((file) => file.includes('packing.worker')),
				portalPage,
			);
			await stage.stopHost();
			await page.reload();
			await notKept(page).waitFor();
			await openFirstShow(page, smallShow);
			await page.getByRole('link', { name: 'Boards' }).click();
			await page.getByText('for planning boards could not be loaded').waitFor();
			await stage.startHost();
			await notKept(page).click();
			await isReady(page);
			await page.getByRole('button', { name: 'Search again' }).click();
			await isPlanned(page);
			await everyPartWorks(page);
			forgive(stage);
		}),
);

// In parts: the play of copies that are gone, and the unit tests of a device without room.
testInSoak('no room to fetch a copy again: what else is kept stays', () =>
	onStage({}, async (stage) => {
		const page = await stage.openShow();
		await isReady(page);
		const kept = () =>
			page.evaluate(async () => {
				const [name] = (await caches.keys()).filter((each) => each.includes('files'));
				return (await (await caches.open(name!)).keys()).length;
			});
		const all = await kept();
		await spoilCopies(page, [await builtFile('packing.worker')], undefined);
		const debug = await stage.context.newCDPSession(page);
		const { origin } = new URL(stage.address);
		await debug.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
		await page.reload();
		await notKept(page).waitFor();
		expect(await kept()).toBe(all - 1);
		await debug.send('Storage.overrideQuotaForOrigin', { origin });
		await notKept(page).click();
		await isReady(page);
		await worksOffline(stage, page);
		forgive(stage);
	}),
);
