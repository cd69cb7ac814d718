import { rm } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, test } from 'vitest';
import { buildVersion } from '../harness/buildVersion.ts';
import { onStage } from '../harness/stage.ts';
import {
	builtFiles,
	everyPartWorks,
	expectNothingOfThePortal,
	forgive,
	isReady,
	notKept,
	worksOffline,
} from './offline.ts';
import { portalPage, SpoiltHost } from './spoiltHost.ts';

let newer: string;

beforeAll(async () => {
	newer = await buildVersion('99.0.0');
});

afterAll(() => rm(newer, { recursive: true, force: true }));

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

test.each(['portal', 'portal of that type'] as const)(
	'a first visit in which the network answers with its own page (%s) keeps nothing of it',
	async (fault) => {
		const host = new SpoiltHost();
		await onStage({ serve: host.serve }, async (stage) => {
			// The page itself has come; from then on the network wants one to sign in.
			host.spoil = (_file, isForPage) => (isForPage ? undefined : fault);
			const page = await stage.openShow();
			await notKept(page).waitFor();
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

test.each(['portal', 'portal of that type'] as const)(
	'an update through such a network (%s): the page is there at every opening, and keeps nothing of it',
	async (fault) => {
		const host = new SpoiltHost();
		await onStage({ serve: host.serve }, async (stage) => {
			const page = await stage.openShow();
			await isReady(page);
			await stage.startHost(newer);
			for (const isSpoilt of [
				() => true,
				(file: string) => file !== 'sw.js',
				(file: string) => file.endsWith('.html') || file === '',
				(file: string) => /\.(js|css|wasm)$/.test(file) && file !== 'sw.js',
			]) {
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
			await stage.startHost(newer);
			await page.reload();
			await page.getByRole('button', { name: 'Start the new version' }).click({ timeout: 60_000 });
			await page.locator('meta[name=version][content="99.0.0"]').waitFor({ state: 'attached' });
			await isReady(page);
			await worksOffline(stage, page);
			forgive(stage);
		});
	},
	180_000,
);

test.each([
	['bad', portalPage],
	['empty', ''],
	['gone', undefined],
] as const)('copies that are %s are found and fetched again', (_what, content) =>
	onStage({}, async (stage) => {
		const page = await stage.openShow();
		await isReady(page);
		const files = ['index.html', ...(await builtFiles())];
		await spoilCopies(page, files, content);
		await page.reload();
		await isReady(page);
		await expectNothingOfThePortal(page);
		await worksOffline(stage, page);
	}),
);

test('a copy that is bad while the host is off is not used: it says so, and mends itself once the host is back', () =>
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
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('link', { name: 'Boards' }).click();
		await page.getByText('for planning boards could not be loaded').waitFor();
		await stage.startHost();
		await notKept(page).click();
		await isReady(page);
		await page.getByRole('button', { name: /again/ }).click();
		await page
			.getByText(/^Proven least/)
			.nth(1)
			.waitFor();
		await everyPartWorks(page);
		forgive(stage);
	}));
