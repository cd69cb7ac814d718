import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { onStage } from './harness/stage.ts';
import { cell, isAnswering, press, seen, withPrints } from './screens/prints.ts';

const isSaved = (page: Page) => page.getByText('Saved', { exact: true }).waitFor();

async function type(page: Page, row: number, column: string, text: string): Promise<void> {
	await cell(page, row, column).click();
	await page.keyboard.type(text);
	await press(page, 'Enter');
}

test('two tabs of one show take in each other’s edits, and each undoes only its own', () =>
	onStage({ isKept: false }, async (stage) => {
		const one = await stage.openShow();
		await withPrints(one, [
			['Low water', '376', '251'],
			['Kiln door', '300', '200'],
		]);
		await isSaved(one);
		const other = await stage.openShow();
		await cell(other, 1, 'title').waitFor();

		await one.bringToFront();
		await type(one, 0, 'side', '70');
		await expect.poll(() => seen(other, 0, 'side')).toBe('70 typed');
		await other.bringToFront();
		await type(other, 0, 'top', '80');
		await type(other, 1, 'title', 'Kiln door, closed');
		await expect.poll(() => seen(one, 0, 'top')).toBe('80 typed');
		await one.bringToFront();
		await cell(one, 0, 'title').click();
		await press(one, 'Control+z');
		await expect.poll(() => seen(other, 0, 'side')).not.toBe('70 typed');
		expect(await seen(one, 0, 'top')).toBe('80 typed');
		await isSaved(one);
		await isSaved(other);

		// What the other tab types does not take away what is half typed here.
		const names: Locator[] = [];
		for (const page of [one, other]) {
			await page.evaluate(() => (location.hash = 'settings/show'));
			names.push(page.getByRole('textbox', { name: 'Name', exact: true }));
		}
		const [here, there] = names as [Locator, Locator];
		await there.fill('Kiln');
		await one.bringToFront();
		await here.fill('Quay');
		await press(one, 'Enter');
		await other.getByRole('button', { name: /^Quay/ }).waitFor();
		expect(await there.inputValue()).toBe('Kiln');
		await other.bringToFront();
		await press(other, 'Enter');
		await expect.poll(() => here.inputValue()).toBe('Kiln');
		await isSaved(other);

		await other.goto(`${other.url().split('#')[0]}#prints`);
		await other.reload();
		await cell(other, 1, 'title').waitFor();
		expect(await seen(other, 0, 'top')).toBe('80 typed');
		expect(await seen(other, 0, 'side')).not.toBe('70 typed');
		expect(await seen(other, 1, 'title')).toBe('Kiln door, closed typed');
	}));

test('an edit that the device refuses is told, held, asked about before leaving, and kept with the next', () =>
	onStage({ isKept: false }, async (stage) => {
		const page = await stage.openShow();
		await withPrints(page, [['Low water', '376', '251']]);
		await isSaved(page);
		await page.evaluate(() => {
			const put = Reflect.get<IDBObjectStore, 'put'>(IDBObjectStore.prototype, 'put');
			IDBObjectStore.prototype.put = () => {
				throw new DOMException('no room', 'QuotaExceededError');
			};
			Object.assign(window, { makeRoom: () => (IDBObjectStore.prototype.put = put) });
		});
		await type(page, 0, 'side', '70');
		await page.getByText('There is no room left on this device').waitFor();
		expect(await seen(page, 0, 'side')).toBe('70 typed');

		let asked = 0;
		page.once('dialog', (dialog) => {
			asked += dialog.type() === 'beforeunload' ? 1 : 0;
			void dialog.dismiss(); // and stay
		});
		await page.evaluate(() => location.reload());
		await expect.poll(() => asked).toBe(1);

		await page.evaluate(() => void (Reflect.get(window, 'makeRoom') as () => void)());
		await type(page, 0, 'top', '80');
		await isSaved(page);
		await page.reload();
		await cell(page, 0, 'title').waitFor();
		expect([await seen(page, 0, 'side'), await seen(page, 0, 'top')]).toEqual(['70 typed', '80 typed']);
	}));

test('every edit asks for strict durability, and the browser is asked once to keep what is stored', () =>
	onStage({ hasProfile: true, isKept: false }, async (stage) => {
		await stage.context.addInitScript(() => {
			const asked: unknown[] = [];
			Object.assign(window, { asked });
			const begin = Reflect.get<IDBDatabase, 'transaction'>(IDBDatabase.prototype, 'transaction');
			IDBDatabase.prototype.transaction = function (...args) {
				const tx = begin.apply(this, args);
				if (tx.mode === 'readwrite') asked.push(tx.durability);
				return tx;
			};
			const persist = Reflect.get<StorageManager, 'persist'>(StorageManager.prototype, 'persist');
			StorageManager.prototype.persist = function () {
				asked.push('persist');
				return persist.call(this);
			};
		});
		const page = await stage.openShow();
		const asked = () => page.evaluate(() => Reflect.get(window, 'asked') as unknown[]);
		expect(new Set(await asked())).toEqual(new Set(['strict'])); // the show is begun
		await withPrints(page, [['Low water', '376', '251']]);
		await isSaved(page);
		await type(page, 0, 'side', '70');
		await isSaved(page);
		expect(new Set(await asked())).toEqual(new Set(['strict', 'persist']));
		expect((await asked()).filter((what) => what === 'persist')).toHaveLength(1);
	}));

test('a show kept by the first version of the app opens, sorted as it was left', () =>
	onStage({ isKept: false }, async (stage) => {
		const page = await stage.context.newPage();
		// A page of the same origin, without the app.
		await page.route('**/before', (route) =>
			route.fulfill({ contentType: 'text/html', body: '<link rel="icon" href="icon.svg">' }),
		);
		await page.goto(new URL('before', stage.address).href);
		await page.evaluate(async () => {
			const opening = indexedDB.open('evenhang', 1);
			await new Promise((resolve, reject) => {
				opening.onerror = reject;
				opening.onupgradeneeded = () => {
					const db = opening.result;
					const shows = db.createObjectStore('shows', { keyPath: 'id' });
					const settings = { border: '60 mm', views: { sort: { column: 'title', way: 'down' } } };
					shows.put({ id: 'old', name: 'Low tide', settings, revision: 7 });
					const rows = db.createObjectStore('rows');
					db.createObjectStore('ticks');
					for (const [order, title] of ['Pier', 'Quay', 'Mole'].entries())
						rows.put({ id: title, order, typed: { title, shape: '3:2' } }, ['old', title]);
				};
				opening.onsuccess = resolve;
			});
			opening.result.close();
		});
		await page.goto(stage.address);
		await cell(page, 2, 'title').waitFor();
		const titles = () => Promise.all([0, 1, 2].map((row) => seen(page, row, 'title')));
		await expect.poll(titles).toEqual(['Quay typed', 'Pier typed', 'Mole typed']);
		await isAnswering(page);
		await type(page, 0, 'side', '70');
		await isSaved(page);
		await page.reload();
		await cell(page, 2, 'title').waitFor();
		await expect.poll(titles).toEqual(['Quay typed', 'Pier typed', 'Mole typed']);
		expect(await seen(page, 0, 'side')).toBe('70 typed');
	}));
