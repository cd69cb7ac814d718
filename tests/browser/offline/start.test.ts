import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goBehindName } from '../harness/behindName.ts';
import { isNewer } from '../harness/isNewer.ts';
import { newerBuild } from '../harness/newerBuild.ts';
import { openFirstShow } from '../harness/openShow.ts';
import { chooseFile } from '../harness/chooseFile.ts';
import { allOr, isSoak, testInSoak } from '../../soak.ts';
import { onStage, type Stage } from '../harness/stage.ts';
import { everyPartWorks, forgetApp, forgive, isReady, smallShow } from './offline.ts';
import { type Fault, faults, SpoiltHost } from './spoiltHost.ts';

/** What the page says in itself. */
const said = (page: Page) => page.getByRole('region', { name: 'Opening' }).getByRole('alert');

const saveButton = (page: Page) => page.getByRole('button', { name: 'Save what is stored as a file' });

/** Opens a show from a file, so that there is something to lose. */
async function withSomethingStored(stage: Stage): Promise<Page> {
	const page = await stage.openShow();
	await openFirstShow(page, smallShow); // the empty show was saved too
	await page.getByText('Saved', { exact: true }).waitFor();
	return page;
}

/** Saves what is stored without the app. @returns the file */
async function savedFile(page: Page, shows = '1 show'): Promise<{ name: string; text: string }> {
	const asked = page.waitForEvent('download');
	await saveButton(page).click();
	const given = await asked;
	await page.getByText(new RegExp(`^${shows} saved as`)).waitFor();
	return { name: given.suggestedFilename(), text: await readFile(await given.path(), 'utf8') };
}

test('the script of the app does not come: a sentence, and what is stored is saved as a file that opens again', async () => {
	const host = new SpoiltHost();
	await onStage({ serve: host.serve }, async (stage) => {
		const page = await withSomethingStored(stage);
		let saved = { name: '', text: '' };
		for (const fault of allOr<Fault>(faults, ['portal of that type'])) {
			await forgetApp(page);
			host.spoil = (file) => (/^assets\/index-.*js$/.test(file) || file === 'sw.js' ? fault : undefined);
			await page.goto(stage.address);
			await said(page).waitFor();
			expect(await said(page).textContent(), fault).toMatch(
				/^(A part of Evenhang could not be loaded|Evenhang has stopped)/,
			);
			await page.getByRole('link', { name: 'Load the page again' }).waitFor();
			saved = await savedFile(page);
		}
		expect(saved.name).toMatch(/^All shows \d{4}-\d\d-\d\d\.evenhang\.json$/);
		host.mend();
		await page.getByRole('link', { name: 'Load the page again' }).click();
		await goBehindName(page, 'Shows');
		await chooseFile(page, 'Open a file or a backup', saved.name, saved.text);
		await page.getByRole('heading', { name: 'A backup of 1 show' }).waitFor();
		expect(await page.getByText('on this device, the same').count()).toBe(1);
		stage.problems.splice(0); // scripts that were none
	});
});

/** A style sheet that is spoilt, and how. */
type SpoiltSheet = readonly [what: string, isSpoilt: RegExp, fault: Fault];
const portalSheet: SpoiltSheet = ['the style sheet', /^assets\/style-.*css$/, 'portal of that type'];
const noStartSheet: SpoiltSheet = ['the style sheet of the page before the app', /^start\.css$/, 'missing'];

test.each(
	allOr<SpoiltSheet>(
		[
			['the style sheet', /^assets\/style-.*css$/, 'missing'],
			['the style sheet', /^assets\/style-.*css$/, 'portal'],
			portalSheet,
			noStartSheet,
		],
		[portalSheet, noStartSheet],
	),
)('%s does not come: a sentence above the app, which works', async (_what, isSpoilt, fault) => {
	const host = new SpoiltHost();
	await onStage({ serve: host.serve, isKept: false }, async (stage) => {
		host.spoil = (file, isForPage) => (isForPage && isSpoilt.test(file) ? fault : undefined);
		const page = await stage.openShow();
		await said(page).filter({ hasText: 'could not be loaded' }).waitFor();
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		forgive(stage);
	});
});

test.each(allOr<Fault>(['missing', 'portal of that type', 'dropped'], ['portal of that type']))(
	'no script at all comes (%s): after a while the page says so by itself',
	async (fault) => {
		const host = new SpoiltHost();
		await onStage({ serve: host.serve, isKept: false }, async (stage) => {
			host.spoil = (file) => (file.endsWith('.js') ? fault : undefined);
			const page = await stage.openApp();
			const words = page.getByText('If this is all you see after a minute');
			await words.waitFor({ state: 'attached' });
			// Its five seconds pass at once, but in the soak.
			if (!isSoak) await page.evaluate(() => document.getAnimations().forEach((each) => each.finish()));
			await words.waitFor();
			await page.getByRole('link', { name: 'Load the page again' }).waitFor();
			stage.problems.splice(0); // scripts that were none
		});
	},
);

test.each(allOr<Fault>(['missing', 'portal of that type', 'dropped'], ['portal of that type']))(
	'a part that is loaded after the first screen does not come (%s): a sentence in its place, all else works, and it can be tried again',
	async (fault) => {
		const host = new SpoiltHost();
		await onStage({ serve: host.serve }, async (stage) => {
			host.spoil = (file) => (/Part-|later-/.test(file) || file === 'sw.js' ? fault : undefined);
			const page = await stage.openShow();
			const place = page.getByRole('alert', { name: 'Not loaded' });
			// A try that is under way takes the button off the page, and may come through.
			const tryAgainUntil = (what: Locator) =>
				expect
					.poll(async () => {
						if (await what.isVisible()) return true;
						const again = page.getByRole('button', { name: 'Try again', exact: true });
						await again
							.last()
							.click({ timeout: 1000 })
							.catch(() => undefined);
						return what.isVisible();
					})
					.toBe(true);
			await place.getByText('This part of Evenhang could not be loaded').waitFor();
			host.spoil = (file) => (/(others|paper)Part-/.test(file) || file === 'sw.js' ? fault : undefined);
			await tryAgainUntil(page.getByRole('button', { name: 'Start typing' }));
			await page.getByRole('button', { name: 'Start typing' }).click();
			await page.keyboard.type('Quay');
			await page.keyboard.press('Enter');
			await page.getByRole('rowheader', { name: 'Quay' }).waitFor();
			await page.getByRole('button', { name: 'Files' }).click();
			await place.waitFor();
			await page.getByRole('link', { name: 'Boards' }).click();
			await expect.poll(() => place.count()).toBe(2);
			host.spoil = (file) => (file.includes('paperPart-') || file === 'sw.js' ? fault : undefined);
			await tryAgainUntil(page.getByRole('heading', { name: 'Boards', level: 1 }));
			await page.getByRole('button', { name: 'Export CSV' }).waitFor(); // what was asked for meanwhile
			expect(await place.count()).toBe(0);
			await page.getByRole('link', { name: 'Bench' }).click();
			await page.getByRole('link', { name: 'Print on paper' }).click();
			await place.waitFor();
			host.mend();
			await tryAgainUntil(page.getByRole('heading', { name: 'On paper', level: 1 }));
			expect(await place.count()).toBe(0);
			forgive(stage);
		});
	},
);

/** How long the app waits for what is silent, in milliseconds. */
const longestMs = 10_000;

/** What may be wrong with a device or the app as it starts, as it is done to the page before any script of ours. */
const atStart: readonly (readonly [what: string, spoil: () => void, sentence: RegExp])[] = [
	[
		'storage fails to open',
		() => {
			const open = Reflect.get<IDBFactory, 'open'>(IDBFactory.prototype, 'open');
			IDBFactory.prototype.open = function (name) {
				const request = open.call(this, `${name} not`, 1);
				queueMicrotask(() => {
					Object.defineProperty(request, 'error', { value: new DOMException('broken', 'UnknownError') });
					request.dispatchEvent(new Event('error'));
				});
				return request;
			};
		},
		/cannot be opened just now \(UnknownError\)/,
	],
	[
		'storage never answers',
		() => {
			const open = Reflect.get<IDBFactory, 'open'>(IDBFactory.prototype, 'open');
			IDBFactory.prototype.open = function (name) {
				const request = open.call(this, `${name} not`, 1);
				request.addEventListener('success', (event) => event.stopImmediatePropagation());
				return request;
			};
		},
		/has not opened yet/,
	],
	[
		'an error as the screen is drawn',
		() => {
			Object.defineProperty(window, 'visualViewport', {
				get() {
					throw new TypeError('made up');
				},
			});
		},
		/^Evenhang has stopped \(made up\)/,
	],
	[
		'an error before anything is drawn',
		() => {
			Object.defineProperty(window, 'trustedTypes', {
				value: {
					createPolicy() {
						throw new TypeError('made up');
					},
				},
			});
		},
		/^Evenhang has stopped \(Uncaught TypeError: made up\)/,
	],
];

test.each(atStart)('%s: a sentence in the page, and what to do', (_what, spoil, sentence) =>
	onStage({ isKept: false }, async (stage) => {
		await stage.context.addInitScript(spoil);
		await stage.context.clock.install();
		const page = await stage.openApp();
		await page.clock.fastForward(longestMs);
		await said(page).filter({ hasText: sentence }).waitFor();
		await page.getByRole('link', { name: 'Load the page again' }).waitFor();
		await saveButton(page).click();
		await page.clock.fastForward(longestMs);
		await page.getByText(/Nothing is stored|could not be read|^1 show saved/).waitFor();
		stage.problems.splice(0); // the errors that were made
	}),
);

test('what is stored is saved where it cannot be opened by the app, damaged records too', () =>
	onStage({ isKept: false }, async (stage) => {
		const page = await withSomethingStored(stage);
		// A page where the app does not run: it would put aside what it finds damaged.
		await page.goto(new URL('icon-192.png', stage.address).href);
		await page.evaluate(
			() =>
				new Promise<void>((resolve, reject) => {
					const request = indexedDB.open('evenhang');
					request.onerror = () => reject(request.error ?? new Error('not opened'));
					request.onsuccess = () => {
						const tx = request.result.transaction(['shows', 'rows'], 'readwrite');
						tx.objectStore('shows').put({ id: 'bad', name: 7, settings: 'none' });
						tx.objectStore('rows').put({ id: 'lost', typed: 'none' }, ['bad', 'lost']);
						tx.onabort = () => reject(tx.error ?? new Error('not written'));
						tx.oncomplete = () => (request.result.close(), resolve());
					};
				}),
		);
		await page.addInitScript(() => Object.defineProperty(window, 'trustedTypes', { value: 7 }));
		await page.goto(stage.address);
		await said(page).waitFor();
		const { text } = await savedFile(page, '2 shows'); // of the damaged one what can be used
		await page.getByText('2 damaged records are in it as stored').waitFor();
		const file = JSON.parse(text) as { shows: { rows: unknown[] }[]; unread: { store: string; value: unknown }[] };
		expect(file.shows.map(({ rows }) => rows.length).sort()).toEqual([0, 1]);
		expect(file.unread.map(({ store }) => store)).toEqual(['rows', 'shows']);
		expect(file.unread.map(({ value }) => value)).toEqual([
			{ id: 'lost', typed: 'none' },
			{ id: 'bad', name: 7, settings: 'none' },
		]);
		stage.problems.splice(0); // the errors that were made
	}));

test('asked to save where nothing was ever stored, it makes no database', () =>
	onStage({ isKept: false }, async (stage) => {
		await stage.context.addInitScript(() => {
			Object.defineProperty(window, 'trustedTypes', { get: () => (location.hash === '#broken' ? 7 : undefined) });
		});
		const page = await stage.openApp();
		await page.goto('about:blank');
		await page.goto(`${stage.address}#broken`);
		await page.evaluate(
			() =>
				new Promise((resolve) => {
					indexedDB.deleteDatabase('evenhang').onsuccess = resolve;
				}),
		);
		await said(page).waitFor();
		await saveButton(page).click();
		await page.getByText('Nothing is stored on this device yet').waitFor();
		expect(await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name))).not.toContain(
			'evenhang',
		);
		stage.problems.splice(0); // the errors that were made
	}));

// A second window that stays at the older build: `update.test.ts`.
testInSoak(
	'pages that are open, or only beginning, while a newer build takes over load all their parts, until they are left',
	() =>
		onStage({}, async (stage) => {
			const first = await stage.openShow();
			await isReady(first);
			const second = await stage.context.newPage();
			const beginning = await stage.context.newPage();
			// It never comes to say of which version it is.
			await beginning.addInitScript(
				() => void (LockManager.prototype.request = () => new Promise<never>(() => undefined)),
			);
			for (const page of [second, beginning]) {
				await page.goto(stage.address);
				await isReady(page);
			}
			await stage.startHost(await newerBuild());
			await first.evaluate(async () => (await navigator.serviceWorker.ready).update());
			await first.getByRole('button', { name: 'Start the new version' }).click();
			await isNewer(first);
			await isReady(first);

			const versionsKept = () =>
				first.evaluate(async () => (await caches.keys()).filter((name) => name.includes('files')).length);
			for (const page of [second, beginning]) {
				await page.bringToFront();
				await page.getByText('this page still shows the older one').waitFor();
				await everyPartWorks(page);
				expect(await versionsKept()).toBe(2);
				await page.close();
			}
			await first.reload();
			await expect.poll(versionsKept).toBe(1);
			await everyPartWorks(first);
		}),
);

// In parts: a part that does not come, above, and a newer build that waits, in `update.test.ts`.
testInSoak(
	'a newer build is put on the host during the very first visit: what is missing has words, and a reload mends it',
	async () => {
		const host = new SpoiltHost();
		await onStage({ serve: host.serve }, async (stage) => {
			host.spoil = (file) => (file.includes('worker') || file === 'sw.js' ? 'missing' : undefined);
			const page = await stage.openShow();
			await openFirstShow(page, smallShow);
			await page.getByRole('link', { name: 'Boards' }).click();
			await page.getByText('The part of Evenhang for planning boards could not be loaded').waitFor();
			await stage.startHost(await newerBuild());
			host.mend();
			await page.getByRole('button', { name: 'Not ready offline' }).click();
			await page.getByText('this page still shows the older one').waitFor();
			await page.getByRole('button', { name: 'Start the new version' }).click();
			await isNewer(page);
			await everyPartWorks(page);
			forgive(stage);
		});
	},
);
