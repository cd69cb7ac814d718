import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goBehindName } from '../harness/behindName.ts';
import { axeProblems } from '../harness/axe.ts';
import { chooseFile } from '../harness/chooseFile.ts';
import { onStage, uprightTablet } from '../harness/stage.ts';
import { oneStage } from './oneStage.ts';
import { activeCell, at, cell, press, seen, seenIn, startTyping, withPrints } from './prints.ts';

const play = oneStage({ isPlanned: false });
const inOnePage = oneStage({ isPlanned: false, isInOnePage: true });

/** What has the focus: its words, else what kind of thing it is. */
const focused = (page: Page): Promise<string> =>
	page.evaluate(() => {
		const element = document.activeElement;
		if (element === null || element === document.body) return 'BODY';
		return element.textContent.trim() || element.tagName;
	});

test('one tap loads an example of thirty prints; undo gives the empty show back', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('32');
		const report = page.getByText('opened');
		await report.waitFor();
		expect(await page.getByText('in the place of').count()).toBe(0); // nothing was there
		await page.getByRole('button', { name: /^Undo/ }).click();
		await page.getByRole('button', { name: 'Start typing' }).waitFor();
		expect(await report.count()).toBe(0);
		expect(await focused(page)).not.toBe('BODY');
		await page.getByRole('button', { name: 'Redo: load the example' }).click();
		await page.getByRole('grid').waitFor();
		expect(await focused(page)).not.toBe('BODY');
	}));

test('a report is closed, or goes when the show changes; the focus goes to the grid', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('button', { name: 'Close' }).click();
		expect(await activeCell(page)).toBe(at(0, 'title'));
		await page.getByRole('button', { name: /can’t be cut yet/ }).click();
		await page.getByRole('button', { name: 'Close' }).click();
		expect(await focused(page)).toMatch(/can’t be cut yet/);
	}));

test('a report with nothing to answer goes with the next tap or key, and Files still says it; a menu stands above its button', () =>
	play(async (page) => {
		const report = page.getByRole('status', { name: /opened$/ });
		await page.getByRole('button', { name: 'Load the example' }).click();
		await report.waitFor();
		await press(page, 'Tab');
		expect(await report.count(), 'Tab leads to its button').toBe(1);
		const more = page.getByRole('button', { name: 'More…' });
		const [said, before] = [(await report.boundingBox())!, (await more.boundingBox())!];
		expect(said.y + said.height, 'it stands above the foot').toBeLessThanOrEqual(before.y);
		await more.click();
		const menu = (await page.getByRole('menu').boundingBox())!;
		const [button, add] = [
			await more.boundingBox(),
			await page.getByRole('button', { name: 'Add print' }).boundingBox(),
		];
		expect(await report.count()).toBe(0);
		expect(button, 'the foot stays where it is when it goes').toEqual(before);
		expect(menu.y + menu.height).toBeLessThanOrEqual(button!.y);
		expect(menu.x + menu.width).toBeLessThanOrEqual(add!.x + add!.width);
		expect(await focused(page)).toBe('Insert above');
		await press(page, 'Escape');
		await page.getByRole('button', { name: 'Files' }).click();
		await page.getByText('Last file: “Salt and slate, Kiln Lane Rooms” opened. 30 prints.').waitFor();
		await page.getByRole('region', { name: 'Files' }).getByRole('button', { name: 'Load the example' }).click();
		await report.waitFor();
		expect(await activeCell(page)).toBe(at(0, 'title'));
		await press(page, 'ArrowDown');
		expect(await report.count()).toBe(0);
		expect(await activeCell(page)).toBe(at(1, 'title'));
		// The way out of a long sheet is in view from its top.
		await page.getByRole('button', { name: 'Keys' }).click();
		const close = page.getByRole('dialog').getByRole('button', { name: 'Close' });
		expect((await close.boundingBox())!.y).toBeLessThan(120);
	}));

test('rows exported and a show saved come back the same', () =>
	play(async (page) => {
		const folder = await mkdtemp(join(tmpdir(), 'evenhang-files-'));
		await withPrints(page, [['Low water', '16 1/2', '11']]);
		const saved: Record<string, string> = {};
		for (const [button, said] of [
			['Export CSV', '1 row written to “New show.csv”'],
			['Back up this show', 'The show written to “New show.evenhang.json”'],
		] as const) {
			await page.getByRole('button', { name: 'Files' }).click();
			const given = page.waitForEvent('download');
			await page.getByRole('button', { name: button }).click();
			const path = join(folder, button);
			await (await given).saveAs(path);
			saved[button] = await readFile(path, 'utf8');
			await page.getByRole('heading', { name: said }).waitFor();
			expect(await focused(page)).toBe('Files');
		}
		await writeFile(join(folder, 'done'), '');
		await rm(folder, { recursive: true });
		expect(saved['Export CSV']).toContain('Low water');
		await press(page, 'Escape');
		await cell(page, 0, 'title').click();
		await press(page, 'Delete');
		await page.getByRole('button', { name: 'Files' }).click();
		await chooseFile(page, 'Open a show', 'show.json', saved['Back up this show']!);
		await page.getByRole('button', { name: 'Open as a new show' }).click();
		await page.getByText('opened').waitFor();
		await page.getByRole('heading', { name: '“New show (2)” opened' }).waitFor();
		expect(await seenIn(page, 0, 'title', 'picture width', 'picture height')).toEqual([
			'Low water typed',
			'419.1 typed',
			'279.4 typed',
		]);
	}));

test('an import says what it did not know, leads to what it could not read, and offers the settings of the file', () =>
	inOnePage(async (page) => {
		const settings = 'unit=mm; ruler=1 mm; mount=600 x 450 mm; border=70 mm; weight=12 %; overlap=3 mm';
		await chooseFile(
			page,
			'Import a file',
			'rows.csv',
			`title,shape,side,hue,result settings\nLow water,3:2,,red,${settings}\nSalt road,3:2,broad,,${settings}\n`,
		);
		await page.getByText('Column “hue” is not known; it is left as it is.').waitFor();
		await page.getByText('1 cell not understood').waitFor();
		await page.getByText('mount size 600 × 450 mm (here 500 × 400 mm)').waitFor();
		await page.getByRole('button', { name: 'Use these settings' }).click();
		await page.getByText('The settings of the file are used').waitFor();
		expect(await seenIn(page, 0, 'side', 'top', 'bottom')).toEqual(['72 worked-out', '70 worked-out', '78 worked-out']);
		expect(await focused(page)).not.toBe('BODY');
		await page.getByRole('button', { name: 'Undo: use settings of the file' }).click();
		await page.getByRole('button', { name: 'Undo: import “rows.csv”' }).waitFor();
		await page.getByRole('button', { name: 'Files' }).click();
		await chooseFile(page, 'Import rows', 'more.csv', 'title,top\nThird,high\n');
		await page.getByRole('button', { name: 'Go to the first one not understood' }).click();
		expect(await activeCell(page)).toBe(at(2, 'top'));
	}));

test('the ways in and out close on Escape and with the place', () =>
	inOnePage(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		const panel = page.getByRole('region', { name: 'Files' });
		await page.getByRole('button', { name: 'Files' }).click();
		await panel.waitFor();
		await press(page, 'Escape');
		await panel.waitFor({ state: 'detached' });
		expect(await focused(page)).toBe('Files');
		await press(page, 'Enter');
		await panel.waitFor();
		await page.getByRole('link', { name: 'Bench' }).click();
		await panel.waitFor({ state: 'detached' });
	}));

test('a file is imported, and what it says is counted in words', () =>
	inOnePage(async (page) => {
		await chooseFile(
			page,
			'Import a file',
			'rows.csv',
			'title;picture width (cm);picture height (cm)\nLow water;45,6;30,6\n',
		);
		await page.getByText('1 row read').waitFor();
		expect(await seenIn(page, 0, 'title', 'picture width', 'picture height')).toEqual([
			'Low water typed',
			'456 typed',
			'306 typed',
		]);
	}));

test('what cannot be read is told in a sentence that says why, and nothing is lost', () =>
	inOnePage(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await page.getByRole('button', { name: 'Files' }).click();
		for (const { name, text, says } of [
			{ name: 'nothing.csv', text: '', says: /empty/ },
			{ name: 'picture.csv', text: '\u0000\u0001PNG\u0000\u0000', says: /could not be read/ },
			{ name: 'twice.csv', text: 'title,title\na,b\n', says: /title/ },
			{ name: 'newer.json', text: '{"format":"evenhang-show","version":99}', says: /version/ },
		]) {
			await chooseFile(page, 'Import rows', name, text);
			const report = page.getByRole('alert').filter({ hasText: name });
			await report.waitFor();
			expect(await report.innerText()).toMatch(says);
		}
		await page.getByRole('button', { name: 'Files' }).click(); // closed, it gives the rows their room back
		expect(await seen(page, 0, 'picture width')).toBe('300 typed');
	}));

test('rows are pasted into a text area; a text without column names stays there to be mended', () =>
	inOnePage(async (page) => {
		await page.getByRole('button', { name: 'Paste rows' }).click();
		const area = page.getByRole('textbox', { name: /Rows/ });
		expect(await area.evaluate((element) => element === document.activeElement)).toBe(true);
		const [field, button, away] = await Promise.all(
			[area, ...['Import rows', 'Not now'].map((name) => page.getByRole('button', { name }))].map(
				async (each) => (await each.boundingBox())!,
			),
		);
		expect(button!.y, 'over the text').toBeLessThan(field!.y);
		expect(away!.x, 'the way out left of the main button, as everywhere').toBeLessThan(button!.x);
		expect(field!.y + field!.height, 'above a keyboard').toBeLessThan(410);
		await page.getByRole('button', { name: 'Not now' }).click();
		expect(await focused(page), 'goes back to what opened it').toBe('Paste rows');
		await page.getByRole('button', { name: 'Paste rows' }).click();
		await area.fill('Low water,456,306');
		await page.getByRole('button', { name: 'Import rows' }).click();
		await page.getByRole('alert').waitFor();
		expect(await area.inputValue()).toBe('Low water,456,306');
		await area.fill('title\tpicture width\tpicture height\nLow water\t456\t306\nSalt road\tA4\t\n');
		await page.getByRole('button', { name: 'Import rows' }).click();
		await page.getByText('2 rows read').waitFor();
		expect(await seenIn(page, 0, 'title', 'picture width')).toEqual(['Low water typed', '456 typed']);
	}));

test('the last print deleted can be had back from the empty screen', () =>
	inOnePage(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await press(page, 'Shift+F10', 'End', 'Enter');
		await page.getByRole('button', { name: 'Undo' }).click();
		await expect.poll(() => seen(page, 0, 'picture width')).toBe('300 typed');
	}));

test('start typing gives a row with its first cell active', () =>
	inOnePage(async (page) => {
		await startTyping(page);
		await page.keyboard.type('Low water');
		await press(page, 'Enter');
		expect(await seen(page, 0, 'title')).toBe('Low water typed');
	}));

test.each<[where: string, standalone: boolean | undefined, count: number]>([
	['a tab of the tablet’s own browser', false, 1],
	['the home screen', true, 0],
	['any other browser', undefined, 0],
])('in %s it is said, or not, that the home screen comes first', async (_, standalone, count) =>
	onStage({ viewport: uprightTablet, isKept: false }, async (stage) => {
		if (standalone !== undefined)
			await stage.context.addInitScript((value) => {
				Object.defineProperty(navigator, 'standalone', { value });
			}, standalone);
		const page = await stage.openShow();
		await page.getByRole('heading', { name: 'No prints in this show yet' }).waitFor();
		expect(await page.getByText('Shows typed here stay in this tab.').count()).toBe(count);
		expect(await axeProblems(page)).toEqual([]);
		await goBehindName(page, 'Shows');
		await page.getByRole('heading', { name: 'Backups' }).waitFor();
		const installed = page.getByText('The app is installed.');
		await (standalone === true ? installed : page.getByText(/Add to Home Screen|The app is not installed/)).waitFor();
		// What is known of the device is asked of the browser as the place opens.
		await expect.poll(() => page.getByText('save a backup here and open it there').count()).toBe(count);
	}),
);
