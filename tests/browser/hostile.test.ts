import { describe, expect, test } from 'vitest';
import { goBehindName } from './harness/behindName.ts';
import { allOr, runs } from '../soak.ts';
import { chooseFile } from './harness/chooseFile.ts';
import { holdReading } from './harness/holdReading.ts';
import { oneStage } from './screens/oneStage.ts';
import { cell } from './screens/prints.ts';
import { openSettings } from './screens/settingsOf.ts';

const play = oneStage();

const size = { width: 500, height: 400 };
const twice = {
	format: 'evenhang-show',
	version: 3,
	name: 'Twice',
	settings: {
		sizes: [
			{ name: 'Small', ...size },
			{ name: 'Small', width: 600, height: 450 },
		],
		boards: [
			{ name: 'Chalk', width: 1200, height: 800 },
			{ name: 'Chalk', width: 1200, height: 800 },
		],
		offcuts: [
			{ board: 'Chalk', ...size },
			{ board: 'Chalk', ...size },
		],
		frames: [
			{ name: 'Oak', ...size },
			{ name: 'Oak', ...size },
		],
		views: { inHand: 'Mine', list: [{ name: 'Mine' }, { name: 'Mine', hidden: ['top'] }] },
		labels: { corner: 'nowhere' },
	},
	rows: [
		{
			id: 'a',
			typed: { title: 'Pier', mount: 'Small', board: 'Chalk', frame: 'Oak', 'picture width': '300', shape: '3:2' },
		},
	],
};

test('names given twice are said in the settings, and can be mended there', () =>
	play(async (page) => {
		await chooseFile(page, 'Import a file', 'twice.json', JSON.stringify(twice));
		await cell(page, 0, 'title').waitFor();
		for (const place of ['Boards', 'Bench', 'Whole show', 'Prints']) {
			await page.getByRole('link', { name: place, exact: true }).click();
			await page.getByRole('heading', { level: 1 }).or(page.getByRole('grid')).first().waitFor();
		}
		await openSettings(page, 'Boards');
		await page.getByText('“Chalk” of this size is in the list already').first().waitFor();
		await page.getByRole('link', { name: 'Mount and window 1 not understood' }).click();
		await page.getByText('“Small” is the name of a size before it too; give this one another').waitFor();
		await page
			.getByRole('textbox', { name: /^Name, Small/ })
			.nth(1)
			.fill('Large');
		await page.keyboard.press('Tab');
		await expect.poll(() => page.getByText('is the name of a size before it too').count()).toBe(0);

		const unread = page.getByRole('region', { name: 'Could not be read' });
		expect(await unread.getByRole('listitem').allInnerTexts()).toEqual([
			expect.stringContaining('labels.corner'),
			expect.stringContaining('“Mine” is the name of a view before it too, and only that one is shown.'),
		]);
		await unread.getByRole('button', { name: 'Remove views.list[1].name' }).click();
		await unread.getByRole('button', { name: 'Remove labels.corner' }).click();
		await unread.waitFor({ state: 'detached' });
		await page.getByRole('button', { name: /^Undo: remove labels.corner/ }).click();
		await unread.waitFor();
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await goBehindName(page, 'Settings');
		await expect.poll(() => unread.getByRole('listitem').count()).toBe(1);
	}));

const megabytes = runs(1, 5);
const columns = Array.from({ length: 100_000 }, (_, place) => `column ${place}`);

describe('a list that is far too large comes in, and the page goes on answering', () => {
	const lists: readonly [what: string, list: string, said: string][] = [
		['100,000 columns', `title,side,${columns.join(',')}\nPier,70,${columns.join(',')}\n`, '1 row read'],
		[`a cell of ${megabytes} MB of words`, `title,side\n${'word '.repeat(megabytes * 200_000)},70\n`, '1 row read'],
		[
			`a cell of ${megabytes} MB of lengths`,
			`title,picture size\nPier,${'5 x '.repeat(megabytes * 250_000)}\n`,
			'1 row read',
		],
		[
			`a cell of ${megabytes} MB of lines`,
			`title,note\nPier,"${'word\n'.repeat(megabytes * 200_000)}"\n`,
			'1 row read',
		],
		[
			'5,000 equal ids',
			`print id,title\n${Array.from({ length: 5000 }, (_, at) => `same,Pier ${at}\n`).join('')}`,
			'5000 rows read',
		],
	];
	test.each(allOr(lists, [lists[2]!]))('%s', (_, list, said) =>
		play(async (page) => {
			await chooseFile(page, 'Import a file', 'large.csv', list);
			await page.getByRole('status', { name: said }).waitFor();
			await page.getByText('Saved', { exact: true }).waitFor();
			expect(await page.evaluate(() => document.title)).toContain('Evenhang'); // it answers; how soon is in the bench
		}),
	);
});

test('a large list says how far it is, and is left with nothing changed', () =>
	play(async (page) => {
		const letRead = await holdReading(page);
		await chooseFile(
			page,
			'Import a file',
			'large.csv',
			`title,picture width\n${Array.from({ length: 30_000 }, (_, at) => `Pier ${at},456\n`).join('')}`,
		);
		const coming = page.getByRole('region', { name: 'A file is coming in' });
		await coming.getByText(/^“large.csv”: (reading|working out) [\d,]+ of 30,000 rows$/).waitFor();
		expect(await coming.getByRole('progressbar').getAttribute('max')).toBe('30000');
		await coming.getByRole('button', { name: 'Cancel' }).click();
		await coming.waitFor({ state: 'detached' });
		await letRead();
		await page.getByRole('heading', { name: 'No prints in this show yet' }).waitFor();
		// What is left is left for good, and the next file comes in as ever.
		await chooseFile(page, 'Import a file', 'small.csv', 'title,picture width\nQuay,300\n');
		await page.getByRole('status', { name: '1 row read' }).waitFor();
		await cell(page, 0, 'title').waitFor();
		expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('3');
	}));
