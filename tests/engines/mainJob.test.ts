import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Papa from 'papaparse';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { planCommand } from '../../src/cli/planCommand.ts';
import { serveFolder, type StaticHost } from '../../src/cli/staticHost.ts';
import { columnIndexOf } from '../../src/ui/grid/gridColumns.ts';
import { builtApp } from '../browser/harness/stage.ts';
import { cornersDrawn, dropPainted, painted } from './droppedPicture.ts';
import { openTab } from './openTab.ts';
import { Person, type Wanted } from './person.ts';
import type { Engine, Tab } from './tab.ts';

const place = (name: string): Wanted => ({ selector: 'nav[aria-label=Places] a', name });
const link = (name: string | RegExp): Wanted => ({ selector: 'a', name });
const button = (name: string | RegExp): Wanted => ({ selector: 'button', name });
const cell = (row: number, column: string): Wanted => ({
	selector: `[data-row="${row}"][data-column="${columnIndexOf(column)}"]`,
});
/** What a cell shows, without what is said beside it. */
const inCell = (row: number, column: string): Wanted => ({
	selector: `${cell(row, column).selector} :is(.typed, .worked-out, .inherited)`,
});
const grid: Wanted = { selector: '[role=grid]' };
const saved: Wanted = { selector: 'header .saved', name: /^Saved/ };
const ready: Wanted = { selector: 'header .saved', name: /Ready offline/ };
const proven: Wanted = { selector: 'p, strong, span', name: /^No (cheaper plan exists|plan uses fewer sheets)/ };
const openTicks: Wanted = { selector: 'button[aria-pressed=false]' };

const under = '/gallery/mounts/';
/** How many boards, glazings and backings the example has cut from sheets. */
const planCount = 5;
const title = 'Ebb, "after" seven; = and more';

const example = fileURLToPath(new URL('../../shared/samples/example.evenhang.json', import.meta.url));

/** The rows of a list in a folder, worked out by the command line under the settings of the example. */
async function planned(folder: string, csv: string): Promise<string> {
	await writeFile(join(folder, 'rows.csv'), csv);
	const { output, said } = await planCommand(['--show', example, 'rows.csv'], folder);
	expect(said).toEqual([]);
	return output;
}

/** The rows without what the command line leaves out or has otherwise: ids, costs and the system's line ends. */
const compared = (csv: string) =>
	Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true }).data.map(
		({ 'print id': _id, 'result cost': _cost, ...others }) => others,
	);

// Each part goes on where the one before left off, as a person does.
describe.each<Engine>(['Firefox', 'WebKit'])('the main job in %s', (engine) => {
	let folder: string;
	let downloads: string;
	let host: StaticHost;
	let tab: Tab;
	let person: Person;

	const shown = async (row: number, column: string) => (await person.waitFor(inCell(row, column))).text;

	/** Types into a cell: to the cell, the text, and on. */
	async function type(row: number, column: string, text: string): Promise<void> {
		await person.click(cell(row, column));
		await person.type(text);
		await person.press('Tab');
	}

	/** The file that the app gives when this is done. */
	async function given(act: () => Promise<void>): Promise<string> {
		const before = new Set(await readdir(downloads));
		await act();
		const added = async () => (await readdir(downloads)).find((name) => !before.has(name) && name.endsWith('.csv'));
		await expect.poll(added, { timeout: 30_000 }).toBeDefined();
		const file = join(downloads, (await added())!);
		await expect.poll(() => readFile(file, 'utf8'), { timeout: 30_000 }).toMatch(/\r\n$/); // all of it is there
		return readFile(file, 'utf8');
	}

	const ends: (() => Promise<unknown>)[] = [];
	beforeAll(async () => {
		folder = await mkdtemp(join(tmpdir(), 'evenhang-engine-'));
		ends.push(() => rm(folder, { recursive: true, force: true, maxRetries: 5 }));
		const profile = join(folder, 'profile');
		downloads = join(folder, 'downloads');
		await Promise.all([profile, downloads].map((each) => mkdir(each)));
		host = await serveFolder(builtApp, { under });
		ends.push(() => host.stop());
		tab = await openTab(engine, { profile, downloads });
		ends.push(() => tab.close());
		person = new Person(tab);
	});

	afterEach(async () => expect(await tab.problems(), 'what went wrong in the page').toEqual([]));

	afterAll(async () => {
		for (const end of ends.reverse()) await end();
	});

	test('the example is loaded', async () => {
		await tab.go(host.address);
		await person.click(button('Load the example'));
		await person.waitFor(grid);
		expect(await shown(1, 'title')).toBe('Breakwater');
		await person.waitFor(saved);
	});

	test('what is typed into the grid is worked out, undone and done again', async () => {
		await type(0, 'title', title);
		await type(0, 'picture width', '456');
		// By hand: 3:2 on 700 x 550 with an overlap of 4 and 8 % below; of 254 mm above and below, 122 and 132.
		const columns = [
			'title',
			'picture width',
			'picture height',
			'window width',
			'window height',
			'side',
			'top',
			'bottom',
		];
		const row = () => Promise.all(columns.map((column) => shown(0, column)));
		const workedOut = [title, '456', '304', '448', '296', '126', '122', '132'];
		expect(await row()).toEqual(workedOut);
		await person.click(button(/^Undo/));
		await expect.poll(row).toContain('548');
		await person.click(button(/^Redo/));
		await expect.poll(row).toEqual(workedOut);
		await person.waitFor(saved);
	});

	test('a picture that is dropped finds its print by its title, and is seen in its mount', async () => {
		await tab.ask(dropPainted, 'Breakwater.png');
		await person.waitFor({ selector: 'main h1', name: '1 picture' });
		await person.click(button('Add pictures: 1 to prints'));
		await person.waitFor({ selector: 'p, li', name: /^1 print has a picture now/ });
		await person.click(cell(1, 'title'));
		await expect.poll(() => tab.ask(cornersDrawn, undefined), { timeout: 30_000 }).toBe(painted);
		await person.waitFor(saved);
	});

	test('boards are planned and proven least', async () => {
		await person.click(place('Boards'));
		await person.waitFor(proven, planCount);
	});

	test('cuts are ticked off at the bench', async () => {
		await person.click(place('Bench'));
		await person.click(link('Start cutting windows'));
		await person.waitFor({ selector: 'nav[aria-label=Steps]' });
		while ((await person.see(openTicks)).length === 0) await person.click(button('Next'));
		const open = (await person.see(openTicks)).length;
		await person.click(openTicks);
		await person.waitFor(openTicks, open - 1);
		await person.waitFor({ selector: 'p, span', name: /^Saved/ });
		await person.click(link('List'));
	});

	test('the rows are given as a file, the same as the command line makes them', async () => {
		await person.click(place('Prints'));
		await person.click(button('Files'));
		const csv = await given(() => person.click(button('Export CSV')));
		expect(csv).toContain('Ebb, ""after"" seven; = and more');
		expect(compared(csv)).toEqual(compared(await planned(folder, csv)));
	});

	test('without a host it is loaded again, with everything in it, and goes on', async () => {
		await person.waitFor(ready);
		await host.stop();
		await tab.reload();
		await person.waitFor(grid);
		expect(await shown(0, 'title')).toBe(title);
		expect(await shown(0, 'bottom')).toBe('132');
		await type(1, 'title', 'typed with no connection');
		await expect.poll(() => tab.ask(cornersDrawn, undefined), { timeout: 30_000 }).toBe(painted);
		await person.click(place('Boards'));
		await person.waitFor(proven, planCount);
		await person.waitFor(saved);
		expect(await tab.problems()).toEqual([]);
		await tab.reload();
		await person.click(place('Prints'));
		expect(await shown(1, 'title')).toBe('typed with no connection');
		await person.click(place('Bench'));
		await person.click(link('Carry on cutting windows'));
		await person.waitFor({ selector: 'p, span', name: /[1-9]\d* of \d+ cuts made$/ });
	});
});
