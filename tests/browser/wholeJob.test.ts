import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { planCommand } from '../../src/cli/planCommand.ts';
import { allCells } from './grid/cells.ts';
import { chooseFile } from './harness/chooseFile.ts';
import { onStage } from './harness/stage.ts';
import { isSoak } from '../soak.ts';
import { cell, isAnswering, press, seen, seenIn, startTyping, stepsFollowed } from './screens/prints.ts';

/** Types into a cell of the active print as a person does: to the cell, the text, and on. */
async function type(page: Page, row: number, column: string, text: string): Promise<void> {
	await cell(page, row, column).click();
	await page.keyboard.type(text);
	await press(page, 'Tab');
}

/** Everything that the grid shows, the steps too. */
async function settledCells(page: Page): Promise<string[][]> {
	await stepsFollowed(page);
	return allCells(page);
}

const isSaved = (page: Page) => page.getByText('Saved', { exact: true }).waitFor();

/** The rows as the app hands them out. */
async function exported(page: Page): Promise<string> {
	await page.getByRole('button', { name: 'Files' }).click();
	const download = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Export CSV' }).click();
	return await readFile(await (await download).path(), 'utf8');
}

/** The rows of a CSV as the command line works them out, in a folder of its own; as a process: `unit/cli/plan`. */
async function planned(csv: string): Promise<string> {
	const folder = await mkdtemp(join(tmpdir(), 'evenhang-plan-'));
	try {
		await writeFile(join(folder, 'rows.csv'), csv);
		return (await planCommand(['rows.csv'], folder)).output;
	} finally {
		await rm(folder, { recursive: true });
	}
}

const under = '/gallery/mounts/';

// The settings of a new show: mount 500 x 400, border 65, bottom weight 10 %, overlap 3, ruler 1 mm.
async function typeTheShow(page: Page): Promise<void> {
	await startTyping(page);
	await type(page, 0, 'title', 'Low water');
	await type(page, 0, 'picture width', '376');
	await type(page, 0, 'picture height', '251');
	expect(await seenIn(page, 0, 'window width', 'window height', 'side', 'top', 'bottom')).toEqual([
		'370 worked-out',
		'245 worked-out',
		'65 worked-out',
		'74 worked-out',
		'81 worked-out',
	]);
	await expect.poll(() => seen(page, 0, 'steps')).toBe('1, 2, 3 worked-out');

	await page.getByRole('button', { name: 'Add print' }).click();
	await type(page, 1, 'title', 'Salt, “road”; and = more');
	await type(page, 1, 'shape', '1:1');
	await type(page, 1, 'mount', 'fit');
	await type(page, 1, 'picture width', '8 1/2 in');

	await page.getByRole('button', { name: 'Add print' }).click();
	await type(page, 2, 'title', 'Kiln door');
	await type(page, 2, 'picture width', 'twelve');
	await page.getByText('“twelve” is not a length').first().waitFor();
	await page.getByRole('button', { name: 'Leave as typed' }).click();
	await page.getByRole('button', { name: '1 can’t be cut yet' }).waitFor();
	expect(await seen(page, 2, 'picture width'), 'what cannot be read stays as typed').toBe('twelve typed');
	await isSaved(page);
}

test('the whole job: typed, closed, opened without a host, exported, imported elsewhere, all the same', async () => {
	let csv = '';
	let cells: string[][] = [];

	// Here the window is closed, in the soak the browser: that it opens cold from its own disk is shown by `shell.test.ts`.
	await onStage({ under, hasProfile: isSoak, isWhole: isSoak }, async (stage) => {
		const page = await stage.openShow();
		await typeTheShow(page);
		await press(page, 'Control+Home');
		cells = await settledCells(page);
		await stage.isKept(page);

		if (isSoak) await stage.closeBrowser();
		else await page.close();
		await stage.stopHost();
		if (isSoak) await stage.openBrowser();
		const again = await stage.openShow();
		await cell(again, 2, 'title').waitFor();
		await isAnswering(again);
		await press(again, 'Control+Home');
		expect(await settledCells(again)).toEqual(cells);

		await type(again, 0, 'note', 'typed with no connection');
		await isSaved(again);
		await again.reload();
		await cell(again, 2, 'title').waitFor();
		expect(await seen(again, 0, 'note')).toBe('typed with no connection typed');
		cells = await settledCells(again);
		csv = await exported(again);
	});

	expect(csv).toContain('Kiln door');
	// Line ends are the system's there, and an id that the app gave is none that was typed.
	const typedAndWorkedOut = (text: string) => text.split(/\r?\n/).map((line) => line.slice(line.indexOf(',')));
	expect(typedAndWorkedOut(await planned(csv)), 'the command line says the same').toEqual(typedAndWorkedOut(csv));

	await onStage({ under, isKept: false }, async (stage) => {
		const page = await stage.openShow();
		await chooseFile(page, 'Import a file', 'rows.csv', csv);
		await cell(page, 2, 'title').waitFor();
		expect(await settledCells(page)).toEqual(cells);
		expect(await exported(page)).toBe(csv);
	});
}, 180_000); // three windows and the command line, one after the other
