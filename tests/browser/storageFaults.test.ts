import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { allOr, testInSoak } from '../soak.ts';
import { goBehindName } from './harness/behindName.ts';
import { grip } from './grid/cells.ts';
import { onStage, type Stage } from './harness/stage.ts';
import { oneStage } from './screens/oneStage.ts';
import { cell, isAnswering, paste, press, seen, withPrints } from './screens/prints.ts';

/** For what is spoilt in the page alone, and gone with what it stores. */
const play = oneStage({ isPlanned: false });

const isSaved = (page: Page) => page.getByText('Saved', { exact: true }).waitFor();
const noRoom = (page: Page) => page.getByRole('alert').getByText('There is no room left on this device');

async function type(page: Page, row: number, column: string, text: string): Promise<void> {
	await cell(page, row, column).click();
	await page.keyboard.type(text);
	await press(page, 'Enter');
}

/** A page of the app's origin without the app. */
async function emptyPage(stage: Stage): Promise<Page> {
	const page = await stage.context.newPage();
	const body = '<link rel="icon" href="icon.svg">';
	await page.route('**/empty', (route) => route.fulfill({ contentType: 'text/html', body }));
	await page.goto(new URL('empty', stage.address).href);
	return page;
}

/** What a button saves as a file. */
async function savedFile(page: Page, button: string): Promise<string> {
	const coming = page.waitForEvent('download');
	await page.getByRole('button', { name: button, exact: true }).click();
	return readFile(await (await coming).path(), 'utf8');
}

/** The titles in the show file that the page saves now. */
async function titlesInFile(page: Page): Promise<readonly (string | undefined)[]> {
	await page.getByRole('button', { name: 'Files', exact: true }).click();
	const text = await savedFile(page, 'Back up this show');
	await page.keyboard.press('Escape');
	return (JSON.parse(text) as { rows: { typed: { title?: string } }[] }).rows.map(({ typed }) => typed.title);
}

/** How many bytes the page may store; without a number as many as there are. */
async function setRoom(page: Page, stage: Stage, quotaSize?: number): Promise<void> {
	const debug = await page.context().newCDPSession(page);
	const { origin } = new URL(stage.address);
	await debug.send('Storage.overrideQuotaForOrigin', { origin, ...(quotaSize !== undefined && { quotaSize }) });
}

/** The rows of the database, by their titles. */
const titlesOnDisk = (page: Page): Promise<readonly string[]> =>
	page.evaluate(async () => {
		const opening = indexedDB.open('evenhang');
		await new Promise((resolve) => (opening.onsuccess = resolve));
		const reading = opening.result.transaction('rows').objectStore('rows').getAll();
		await new Promise((resolve) => (reading.onsuccess = resolve));
		opening.result.close();
		return (reading.result as { typed: { title: string } }[]).map(({ typed }) => typed.title).sort();
	});

test('a device that fills up at an import: all stays, is said, is in a file, and is saved once there is room', () =>
	onStage({ hasProfile: true, isKept: false }, async (stage) => {
		const first = await stage.openShow();
		await withPrints(first, [
			['Low water', '376', '251'],
			['Kiln door', '300', '200'],
		]);
		await isSaved(first);
		// The browser asks how much room there is when it opens a database, and counts down from there.
		await stage.closeBrowser();
		await stage.openBrowser();
		const empty = await emptyPage(stage);
		const usage = await empty.evaluate(async () => (await navigator.storage.estimate()).usage ?? 0);
		await setRoom(empty, stage, usage + 150_000);
		await stage.context.clock.install();
		const page = await stage.openShow();
		await cell(page, 1, 'title').waitFor();
		await isAnswering(page);
		await type(page, 0, 'title', 'High water');
		await isSaved(page);
		const many = Array.from(
			{ length: 400 },
			(_, at) => `Print ${String(at).padStart(3, '0')}${' of many'.repeat(100)}`,
		);
		await paste(page, ['Kiln door', ...many].join('\n'));
		await page.locator('[role=grid][aria-rowcount="404"]').waitFor();
		await noRoom(page).waitFor();
		await type(page, 0, 'side', '70');
		await noRoom(page).waitFor();
		expect(await page.getByText('Saved', { exact: true }).count()).toBe(0);
		expect(await titlesOnDisk(page)).toEqual(['High water', 'Kiln door']);
		const all = ['High water', 'Kiln door', ...many];
		expect(await titlesInFile(page)).toEqual(all);
		await setRoom(empty, stage);
		// Nobody types: it is tried again by itself, every half a minute at the least.
		await page.clock.fastForward(30_000);
		await isSaved(page);
		expect(await titlesOnDisk(page)).toEqual(all);
		await type(page, 0, 'top', '80');
		await isSaved(page);
		await page.reload();
		await cell(page, 0, 'title').waitFor();
		expect([await seen(page, 0, 'title'), await seen(page, 0, 'side')]).toEqual(['High water typed', '70 typed']);
	}));

// In parts: a device that fills up at an import, and one where storage is refused.
testInSoak(
	'a device that is full as the page first opens: it opens, says so, and a show typed there is in a file',
	() =>
		onStage({ hasProfile: true }, async (stage) => {
			const before = await emptyPage(stage);
			await setRoom(before, stage, 1);
			const page = await stage.openShow();
			await noRoom(page).waitFor();
			await withPrints(page, [['Low water', '376', '251']]);
			await noRoom(page).waitFor();
			expect(await titlesInFile(page)).toEqual(['Low water']);
			await setRoom(before, stage);
			await type(page, 0, 'side', '70');
			await isSaved(page);
			await page.reload();
			await cell(page, 0, 'title').waitFor();
			expect(await seen(page, 0, 'title')).toBe('Low water typed');
			stage.problems.splice(0); // the app itself could not be kept, and the console says so
		}),
);

test('storage cleared under an open page: what is on the screen stays, and the next edit saves all of it again', () =>
	play(async (page, stage) => {
		await withPrints(page, [
			['Low water', '376', '251'],
			['Kiln door', '300', '200'],
		]);
		await isSaved(page);
		const debug = await page.context().newCDPSession(page);
		await debug.send('Storage.clearDataForOrigin', {
			origin: new URL(stage.address).origin,
			storageTypes: 'indexeddb',
		});
		expect(await seen(page, 1, 'title')).toBe('Kiln door typed');
		await type(page, 0, 'side', '70');
		await isSaved(page);
		await page.reload();
		await cell(page, 1, 'title').waitFor();
		expect(await titlesOnDisk(page)).toEqual(['Kiln door', 'Low water']);
		expect(await seen(page, 0, 'side')).toBe('70 typed');
	}));

type Missing = readonly [what: string, spoil: () => void];
const notThere: Missing = ['is not there', () => void Object.defineProperty(window, 'indexedDB', { value: undefined })];
const refused: Missing = [
	'is refused',
	() => {
		IDBFactory.prototype.open = () => {
			throw new DOMException('refused', 'SecurityError');
		};
	},
];

test.each(allOr([notThere, refused], [refused]))(
	'where storage %s, as in a private window, one works, is told, and saves a file',
	(_what, spoil) =>
		onStage({ isKept: false }, async (stage) => {
			await stage.context.addInitScript(spoil);
			const page = await stage.openShow();
			const told = page.getByRole('alert').getByText('this browser lets the page store nothing');
			await told.waitFor();
			await withPrints(page, [
				['Low water', '376', '251'],
				['Kiln door', '300', '200'],
			]);
			await type(page, 0, 'side', '70');
			await told.waitFor();
			expect(await page.getByText('Saved', { exact: true }).count()).toBe(0);
			expect(await titlesInFile(page)).toEqual(['Low water', 'Kiln door']);
			await goBehindName(page, 'Shows');
			const backup = JSON.parse(await savedFile(page, 'Back up all shows')) as { shows: { rows: unknown[] }[] };
			expect(backup.shows.map(({ rows }) => rows.length)).toEqual([2]);
		}),
);

test('another tab brings the database to a newer form: this one lets it, says so, keeps all and saves a file', () =>
	play(async (page, stage) => {
		await withPrints(page, [
			['Low water', '376', '251'],
			['Kiln door', '300', '200'],
		]);
		await isSaved(page);
		const other = await emptyPage(stage);
		await other.evaluate(async () => {
			const opening = indexedDB.open('evenhang', 99);
			await new Promise((resolve) => (opening.onsuccess = resolve));
			opening.result.close();
		});
		await page.getByRole('alert').getByText('Another tab has opened a newer version').waitFor();
		await type(page, 0, 'title', 'High water');
		await page.getByRole('alert').getByText('Another tab has opened a newer version').waitFor();
		expect(await seen(page, 0, 'title')).toBe('High water typed');
		expect(await titlesInFile(page)).toEqual(['High water', 'Kiln door']);
		expect(await titlesOnDisk(other)).toEqual(['Kiln door', 'Low water']);
	}));

test('damaged records are said once, saved as a file, and in the way of nothing', () =>
	play(async (page) => {
		await withPrints(page, [
			['Low water', '376', '251'],
			['Kiln door', '300', '200'],
		]);
		await isSaved(page);
		await page.evaluate(async () => {
			const opening = indexedDB.open('evenhang');
			await new Promise((resolve) => (opening.onsuccess = resolve));
			const tx = opening.result.transaction(['shows', 'rows', 'ticks'], 'readwrite');
			const all = tx.objectStore('shows').getAllKeys();
			await new Promise((resolve) => (all.onsuccess = resolve));
			tx.objectStore('rows').put({ id: 'lost', typed: 7n }, [all.result[0] as string, 'lost']);
			tx.objectStore('ticks').put(null, [all.result[0] as string, 'lost', 1, 'mount', 'left']);
			tx.objectStore('shows').put({ id: 'other', name: 7, settings: 'none' });
			await new Promise((resolve) => (tx.oncomplete = resolve));
			opening.result.close();
		});
		await page.reload();
		await cell(page, 1, 'title').waitFor();
		const note = page.getByText('3 damaged records were set aside');
		await note.waitFor();
		const file = JSON.parse(await savedFile(page, 'Save damaged records')) as { records: { store: string }[] };
		expect(file.records.map(({ store }) => store).sort()).toEqual(['rows', 'shows', 'ticks']);
		await note.waitFor({ state: 'detached' });
		await isAnswering(page);
		await type(page, 0, 'side', '70');
		await isSaved(page);
		await page.reload();
		await cell(page, 1, 'title').waitFor();
		expect(await note.count()).toBe(0);
		await goBehindName(page, 'Shows');
		await page.getByRole('button', { name: 'Save damaged records' }).waitFor();
	}));

test('a text that is typed into a print which another tab deletes is said, and undo there brings the print back', () =>
	play(async (one, stage) => {
		await withPrints(one, [
			['Low water', '376', '251'],
			['Kiln door', '300', '200'],
		]);
		await isSaved(one);
		const other = await stage.openShow();
		await cell(other, 1, 'title').waitFor();
		await cell(one, 1, 'title').click();
		await one.keyboard.type('Kiln door, closed');
		await grip(other, 1).click();
		await other.getByRole('button', { name: 'More…' }).click();
		await other.getByRole('menuitem', { name: 'Delete print' }).click();
		await other.locator('[role=grid][aria-rowcount="3"]').waitFor();
		await one.locator('[role=grid][aria-rowcount="3"]').waitFor();
		await one.getByText('Not saved: “Kiln door, closed”').first().waitFor();
		// Who goes on typing types into no other print.
		await one.keyboard.type(', again');
		await one.keyboard.press('Enter');
		expect(await seen(one, 0, 'title')).toBe('Low water typed');
		await press(other, 'Control+z');
		await one.locator('[role=grid][aria-rowcount="4"]').waitFor();
		await type(one, 1, 'title', 'Kiln door, closed');
		await expect.poll(() => seen(other, 1, 'title')).toBe('Kiln door, closed typed');
	}));
