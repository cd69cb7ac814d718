import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { openFirstShow, showOf } from '../harness/openShow.ts';
import { builtApp, type Stage } from '../harness/stage.ts';
import { portalPage } from './spoiltHost.ts';

/** Forgets what the browser says by itself of answers that were spoilt on purpose. */
export function forgive(stage: Stage): void {
	const said = /Failed to load resource|fetching the script|MIME type|ERR_|integrity|is not kept/;
	stage.problems.splice(0, Infinity, ...stage.problems.filter((problem) => !said.test(problem)));
}

/** The header says that all of the app is on the device. */
export const isReady = (page: Page) => page.getByText(/Ready offline/).waitFor({ state: 'attached' }); // a phone has it behind the name

/** The button of the header that says that it is not. */
export const notKept = (page: Page) => page.getByRole('button', { name: 'Not ready offline' });

/** The app opens again with its host switched off, and every file that is kept of it answers. */
export async function worksOffline(stage: Stage, page: Page): Promise<void> {
	await stage.stopHost();
	await page.reload();
	await page.getByRole('navigation', { name: 'Places' }).waitFor();
	const answers = await page.evaluate(async () => {
		const names = (await caches.keys()).filter((each) => each.includes('files'));
		const requests = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
		return Promise.all(requests.flat().map(async ({ url }) => `${(await fetch(url)).status} ${url}`));
	});
	expect(answers.length).toBeGreaterThan((await builtFiles()).length); // the page is one more
	expect(answers.filter((answer) => !answer.startsWith('200 '))).toEqual([]);
	await stage.startHost();
}

/** A show of one print and one board, which is planned in a moment: here only whether it can be counts. */
export const smallShow = showOf(
	'Quay',
	{ unit: 'mm', mountSize: '600 x 450 mm', border: 70, boards: [{ name: 'Chalk', width: 1200, height: 900 }] },
	[{ title: 'Ebb', 'picture width': '300', 'picture height': '200' }],
);

/** The plan of its board is there. */
export const isPlanned = (page: Page) =>
	page
		.getByText(/^No (cheaper plan exists|plan uses fewer sheets)/)
		.first()
		.waitFor();

/** A file of a show and the plan of its board, for which the app loads parts only when they are asked for. */
export async function everyPartWorks(page: Page): Promise<void> {
	const places = page.getByRole('navigation', { name: 'Places' });
	const prints = places.getByRole('link', { name: 'Prints', exact: true });
	await prints.click();
	const start = page.getByRole('button', { name: 'Start typing', exact: true });
	// An empty show asks how to begin; that is loaded after the page is there.
	await start
		.or(page.getByRole('toolbar', { name: 'Prints' }))
		.first()
		.waitFor();
	if ((await start.count()) > 0) await openFirstShow(page, smallShow);
	await places.getByRole('link', { name: 'Boards' }).click();
	await isPlanned(page);
	await prints.click();
}

/** Every file is kept, each with the bytes that were built. */
export async function expectEveryCopy(page: Page): Promise<void> {
	const kept = await page.evaluate(async () => {
		const hashes: Record<string, string> = {};
		const [name] = (await caches.keys()).filter((each) => each.startsWith('evenhang files'));
		const cache = await caches.open(name!);
		for (const { url } of await cache.keys()) {
			const bytes = await (await cache.match(url))!.arrayBuffer();
			const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
			hashes[new URL(url).pathname.slice(1)] = btoa(String.fromCharCode(...digest));
		}
		return hashes;
	});
	const files = ['index.html', ...(await builtFiles())];
	const built = files.map(async (file) => [file, hashOf(await readFile(join(builtApp, file)))] as const);
	expect(kept).toEqual(Object.fromEntries(await Promise.all(built)));
}

const hashOf = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('base64');

/** Nothing that the network put in the place of a file is kept anywhere. */
export async function expectNothingOfThePortal(page: Page): Promise<void> {
	const kept = await page.evaluate(async () => {
		const texts: string[] = [];
		for (const name of await caches.keys()) {
			const cache = await caches.open(name);
			for (const request of await cache.keys()) texts.push((await (await cache.match(request))?.text()) ?? '');
		}
		return texts;
	});
	expect(kept.filter((text) => text === portalPage)).toEqual([]);
}

/** The file of the built app with that in its name. */
export async function builtFile(part: string): Promise<string> {
	const found = (await builtFiles()).find((file) => file.includes(part));
	if (found === undefined) throw new Error(`nothing built is called ${part}`);
	return found;
}

/** Has the browser look for a newer version. @returns how that one ended: `redundant` where it was left */
export const endOfUpdate = (page: Page): Promise<string> =>
	page.evaluate(async () => {
		const registration = await navigator.serviceWorker.ready;
		// What the app has asked for just before may be answered by the older build.
		while (!registration.installing) await registration.update();
		const { installing } = registration;
		return new Promise<string>((resolve) => {
			installing.addEventListener('statechange', () => resolve(installing.state));
		});
	});

/** All that the app is made of but its page and the service worker, as the page or the service worker asks for it. */
export async function builtFiles(): Promise<readonly string[]> {
	const entries = await readdir(builtApp, { recursive: true, withFileTypes: true });
	return entries
		.filter((entry) => entry.isFile())
		.map(({ parentPath, name }) => relative(builtApp, join(parentPath, name)).split(sep).join('/'))
		.filter((file) => file !== 'sw.js' && file !== 'index.html');
}

/** Takes away all that is kept of the app, as if it had never been here; the page stays. */
export async function forgetApp(page: Page): Promise<void> {
	await page.evaluate(async () => {
		for (const name of await caches.keys()) await caches.delete(name);
		for (const each of await navigator.serviceWorker.getRegistrations()) await each.unregister();
	});
	await page.goto('about:blank');
}
