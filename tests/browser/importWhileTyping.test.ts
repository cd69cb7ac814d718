import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goBehindName } from './harness/behindName.ts';
import { chooseFile } from './harness/chooseFile.ts';
import { holdReading } from './harness/holdReading.ts';
import { onStage } from './harness/stage.ts';
import { cell, press, seen, withPrints } from './screens/prints.ts';

const many = 2000;
const list = ['print id,title,note']
	.concat(Array.from({ length: many }, (_, at) => `p${at},Print ${at},from the list`))
	.join('\n');

const isSaved = (page: Page) => page.getByText('Saved', { exact: true }).waitFor();

async function type(page: Page, row: number, column: string, text: string): Promise<void> {
	await cell(page, row, column).click();
	await page.keyboard.type(text);
	await press(page, 'Enter');
}

/** Opens a show of that many prints, by its name. */
async function goTo(page: Page, name: string, prints: number): Promise<void> {
	await goBehindName(page, 'Shows');
	await page.getByRole('button', { name, exact: true }).last().click(); // one may be called as the button above the list
	await page.locator(`[role=grid][aria-rowcount="${prints + 2}"]`).waitFor();
}

interface Rows {
	readonly name: string;
	readonly rows: readonly { readonly id: string; readonly order: number; readonly typed: Record<string, string> }[];
}

/** The show that a tab has, as it saves it. */
async function shownIn(page: Page): Promise<Rows['rows']> {
	await page.getByRole('button', { name: 'Files', exact: true }).click();
	const coming = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Back up this show', exact: true }).click();
	const { rows } = JSON.parse(await readFile(await (await coming).path(), 'utf8')) as Rows;
	await page.keyboard.press('Escape');
	return rows;
}

/** The shows on disk, by their names. */
const stored = (page: Page): Promise<Readonly<Record<string, Rows['rows']>>> =>
	page.evaluate(async () => {
		const opening = indexedDB.open('evenhang');
		await new Promise((resolve) => (opening.onsuccess = resolve));
		const tx = opening.result.transaction(['shows', 'rows']);
		const [shows, keys, rows] = [
			tx.objectStore('shows').getAll(),
			tx.objectStore('rows').getAllKeys(),
			tx.objectStore('rows').getAll(),
		];
		await new Promise((resolve) => (tx.oncomplete = resolve));
		opening.result.close();
		const all = rows.result as Rows['rows'];
		const ofShow = (id: string) =>
			all.filter((_, at) => (keys.result[at] as string[])[0] === id).sort((a, b) => a.order - b.order);
		return Object.fromEntries(
			(shows.result as { id: string; name: string }[]).map(({ id, name }) => [name, ofShow(id)]),
		);
	});

/** What a comparison needs of rows. */
const plain = (rows: Rows['rows'] = []) => rows.map(({ id, typed }) => ({ id, typed }));

test('an import in one tab while another of the same show types, goes to another show and comes back', () =>
	onStage({ isKept: false }, async (stage) => {
		const one = await stage.openShow();
		await withPrints(one, [
			['Low water', '376', '251'],
			['Kiln door', '300', '200'],
		]);
		await isSaved(one);
		const first = Object.keys(await stored(one))[0]!;
		const other = await stage.openShow();
		await goBehindName(other, 'Shows');
		await other.getByRole('button', { name: 'New show', exact: true }).first().click();
		await other.getByRole('heading', { name: 'No prints in this show yet' }).waitFor();
		await withPrints(other, [['Net store', '200', '150']]);
		await isSaved(other);
		const second = Object.keys(await stored(one)).find((name) => name !== first)!;
		await goTo(other, first, 2);

		// What reads the list begins, and says more only when it is let: until then the import is under way.
		const letRead = await holdReading(one);
		await one.getByRole('button', { name: 'Files', exact: true }).click();
		await chooseFile(one, 'Import rows', 'list.csv', list.padEnd(400_000, '\n'));
		await one.getByRole('progressbar').waitFor();
		await type(other, 0, 'title', 'High water');
		await isSaved(other);
		await goTo(other, second, 1);
		await type(other, 0, 'note', 'typed elsewhere');
		await goTo(other, first, 2);
		await type(other, 1, 'note', 'typed meanwhile');
		expect(await one.getByRole('progressbar').count(), 'still under way').toBe(1);
		await letRead();
		for (const [at, note] of ['red', 'green', 'blue'].entries()) await type(other, at % 2, 'maker', note);
		// What is said of it goes with the next edit, which may be the other tab's: the rows are what stays.
		await one.locator(`[role=grid][aria-rowcount="${many + 4}"]`).waitFor();
		expect(await other.getByText(/rows read$/).count(), 'the report stands where the list was chosen').toBe(0);

		for (const page of [one, other]) {
			await isSaved(page);
			await page.locator(`[role=grid][aria-rowcount="${many + 4}"]`).waitFor();
			// What the other tab has saved arrives a little later.
			await expect
				.poll(async () => [await seen(page, 0, 'maker'), await seen(page, 1, 'maker')])
				.toEqual(['blue typed', 'green typed']);
			expect([await seen(page, 0, 'title'), await seen(page, 1, 'note')]).toEqual([
				'High water typed',
				'typed meanwhile typed',
			]);
		}
		const disk = await stored(one);
		expect(disk[first]).toHaveLength(many + 2);
		for (const page of [one, other]) expect(plain(await shownIn(page))).toEqual(plain(disk[first]));
		expect(disk[second]?.map(({ typed }) => [typed['title'], typed['note']])).toEqual([
			['Net store', 'typed elsewhere'],
		]);

		// The report stands in the tab and on the show that it speaks of.
		expect(await other.getByText(/rows read$/).count()).toBe(0);
		await goTo(one, second, 1);
		expect(await one.getByText(/rows read$/).count()).toBe(0);
		expect(await seen(one, 0, 'note')).toBe('typed elsewhere typed');
	}));
