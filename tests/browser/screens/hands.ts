import type { Page } from 'playwright-core';
import { chooseFile } from '../harness/chooseFile.ts';
import { press } from './prints.ts';

/** One line of what keys do beside the cells: where one is, the keys, what is looked at, and what is seen there. */
export type HandLine = readonly [
	state: string,
	keys: readonly string[],
	look: (page: Page) => Promise<unknown>,
	is: unknown,
];

/** What has the focus, as it is heard. */
export const focused = (page: Page): Promise<string> =>
	page.evaluate(() => {
		const active = document.activeElement;
		if (active === null || active === document.body) return 'BODY';
		return active.getAttribute('aria-label') ?? active.textContent.trim().replaceAll(/\s+/g, ' ');
	});

/** What the screen has said aloud last. */
export const heard = (page: Page): Promise<string> =>
	page.evaluate(() =>
		[...document.querySelectorAll('[role=status].heard')].map((each) => each.textContent).join(' | '),
	);

/** Presses the keys of each line, where a text in quotes is typed. @returns the lines that did not come true */
export async function wrongHands(page: Page, lines: readonly HandLine[]): Promise<string[]> {
	const wrong: string[] = [];
	for (const [state, keys, look, is] of lines) {
		for (const key of keys)
			if (key.startsWith("'")) await page.keyboard.type(key.slice(1, -1));
			else await press(page, key);
		let found = await look(page);
		for (let turn = 0; turn < 20 && !isSeen(found, is); turn++) {
			await page.waitForTimeout(50); // what follows a key may be drawn a little later
			found = await look(page);
		}
		if (!isSeen(found, is)) wrong.push(`${state} (${keys.join(' ')}): ${String(found)}, not ${String(is)}`);
	}
	return wrong;
}

const isSeen = (found: unknown, is: unknown) => (is instanceof RegExp ? is.test(String(found)) : found === is);

const columnsOfFour = ['title', 'picture width', 'picture height', 'surface'] as const;
const prints = [
	['Low water', '300', '200', 'matt'],
	['Salt road', '270', '270', ''], // uneven: to look at
	['Kiln door', 'wide', '200', ''], // not read: to stop for
	['Two nets', '310', '210', ''],
] as const;

/**
 * Opens a show of four prints, one to look at and one to stop for, with a board to cut them from.
 * @param own what is typed besides in the first of them
 */
export async function openHands(page: Page, own: Readonly<Record<string, string>> = {}): Promise<void> {
	const rows = prints.map((texts, place) => ({
		id: `row-${place}`,
		order: place + 1,
		typed: {
			...Object.fromEntries(
				columnsOfFour.map((column, at) => [column, texts[at]!] as const).filter(([, text]) => text !== ''),
			),
			...(place === 0 && own),
		},
	}));
	const boards = [{ name: 'Chalk', kind: 'sheet', width: 1200, height: 900 }];
	const show = { format: 'evenhang-show', version: 3, name: 'Hands', settings: { boards }, rows };
	await chooseFile(page, 'Import a file', 'hands.evenhang.json', JSON.stringify(show));
	await page.getByText('opened').waitFor();
}

const find = (page: Page) => page.getByRole('searchbox').inputValue();
const rows = (page: Page) => page.getByRole('grid').getAttribute('aria-rowcount');
const isAtSentences = (page: Page) => page.evaluate(() => document.activeElement?.closest('#sentences') !== null);
const printShown = (page: Page) => page.locator('.beside h2').first().innerText();
const menu = (page: Page) =>
	page
		.getByRole('menuitem')
		.allInnerTexts()
		.then((all) => all.join(', '));
const ticked = (page: Page) => page.locator('[aria-pressed=true]').count();
const selected = (page: Page) =>
	page
		.locator('[role=row]:has([aria-selected=true]) [data-column="1"]')
		.allInnerTexts()
		.then((all) => all.join());

/** At the grid: Find, the sentences, the list of findings, a mend, menus, a sorted list. */
export const besideGrid: readonly HandLine[] = [
	['words in Find', ['Control+f', "'salt'"], rows, '3'],
	[
		'Escape in Find clears it',
		['Escape'],
		async (page) => `${await find(page)}, ${await rows(page)}, ${await focused(page)}`,
		', 6, Find prints',
	],
	['Escape again leaves it', ['Escape'], async (page) => (await focused(page)) !== 'Find prints', true],
	['F8 goes on from the sentences', ['Control+Home', 'ArrowRight', 'F6', 'F8'], printShown, /Salt road/],
	['and stays there', [], isAtSentences, true],
	['F8 again', ['F8'], printShown, /Kiln door/],
	['Shift+F8 goes back', ['Shift+F8'], printShown, /Salt road/],
	['a mend is heard', ['F8', 'Enter'], heard, /^Done: accept\. Picture width: “wide”/],
	['Undo is heard', ['Control+z'], heard, /^Undone: accept/],
	[
		'the menu of several prints says how many',
		['Escape', 'Control+Home', 'ArrowDown', 'Shift+ArrowDown', 'Shift+F10'],
		menu,
		'Insert above, Insert below, Duplicate 2 prints, Move 2 prints up, Move 2 prints down, Frames for all prints…, Delete 2 prints',
	],
	[
		'sorted, the last first',
		['Escape', 'Control+Home', 'ArrowRight', 'F7', 'ArrowDown', 'Enter'],
		heard,
		/sorted by title/,
	],
	['two prints deleted', ['Control+Home', 'ArrowRight', 'ArrowDown', 'Shift+ArrowDown', 'Control+Delete'], rows, '4'],
	['Undo selects what came back', ['Control+z'], selected, 'Salt road,Low water'],
	['and says so', [], heard, /^Undone: delete 2 prints/],
];

/** In the list of findings, opened. */
export const inList: readonly HandLine[] = [
	['the list begins with what stops the cutting', ['F8'], focused, /^Can’t cut/],
	['F8 goes on in it', ['F8'], focused, /^Check/],
	['Shift+F8 goes back', ['Shift+F8'], focused, /^Can’t cut/],
];

/** At the bench, on the page before the first cut. */
export const atBench: readonly HandLine[] = [
	['right goes on', ['ArrowRight'], heard, /Step 1 of \d+\. Guide 118 mm\. Next: Salt road, both sides\./],
	['the focus goes with it', [], focused, /^Step 1/],
	['Space ticks what comes next', ['Space'], ticked, 1],
	['what comes is heard', [], heard, /All of this step is cut/],
	['right again', ['ArrowRight'], heard, /Step 2 of/],
	['left goes back', ['ArrowLeft'], heard, /Step 1 of/],
	['Undo takes the tick off', ['Control+z'], ticked, 0],
	['and nothing else', ['Control+z', 'Control+z'], heard, /Step 1 of .*Next: Salt road/],
];

/** At the sheets, on the page before the first cut. */
export const atSheets: readonly HandLine[] = [
	['right goes on', ['ArrowRight'], heard, /step 1 of \d+\. 1000 mm from the (left|top) edge\. Next: Chalk, sheet 1, /],
	['Space ticks what comes next', ['Space'], ticked, 1],
	['Undo takes the tick off', ['Control+z'], ticked, 0],
	['right again', ['ArrowRight'], heard, /step 2 of/],
	['left goes back', ['ArrowLeft'], heard, /step 1 of/],
	['the focus goes with it', [], focused, /step 1/],
];

/** In the settings, in the first field of a new size. */
export const inSettings: readonly HandLine[] = [
	['Enter goes to what is still wanted', ["'Large'", 'Enter'], focused, 'Width, new size'],
	['and on', ["'700'", 'Enter'], focused, 'Height, new size'],
	['Enter adds, and goes to the new name', ["'500'", 'Enter'], focused, 'Name, new size'],
	['two lengths in one field', ["'Small'", 'Tab', "'500 x 400'", 'Enter'], focused, 'Name, new size'],
	['Remove goes to what stands there then', ['Shift+Tab', 'Enter'], focused, 'Name, new size'],
	['another', ['Shift+Tab', 'Enter'], focused, 'Name, new size'],
];
