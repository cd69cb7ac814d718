import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { goBehindName } from './behindName.ts';
import { openPaperShow } from '../order/paperShow.ts';
import { chooseFile } from './chooseFile.ts';
import { orderFound, startTyping } from '../screens/prints.ts';
import { goByAddress } from './goByAddress.ts';
import { openFirstShow } from './openShow.ts';
import { someOfExample } from './someOfExample.ts';

/** A screen, and how a person gets there from an app that has just been opened for the first time. */
export interface Screen {
	readonly name: string;
	/** Whether it needs the grid, which a phone has no room for. */
	readonly needsGrid?: boolean;
	/**
	 * Whether one only looks at the example there, or at the show of `paperShow.ts`: the show is as it was afterwards, but for
	 * the documents that are chosen, nothing is filtered or folded, and another such screen may be opened in the same page.
	 * Default: the next begins in a page of its own.
	 */
	readonly onlyLooks?: 'at the example' | 'at the paper show';
	readonly open: (page: Page) => Promise<void>;
	/** Takes back what `open` did beyond looking, for the screen that comes next in the page. */
	readonly leave?: (page: Page) => Promise<void>;
}

/** Resolves when the list of what is to check holds all of it: it is made some lines at a time. */
export const allListed = (page: Page): Promise<void> => page.locator('.list [aria-busy=false]').waitFor();

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();

/** Comes to the prints of the example, with nothing open over them; it is loaded unless this page has done so before. */
async function loadExample(page: Page): Promise<void> {
	if (await page.evaluate(() => 'hasExample' in window)) {
		await page.keyboard.press('Escape'); // from a menu or a dialogue
		const isThere = await page.evaluate(() => ['', '#prints'].includes(location.hash));
		if (isThere) {
			// What is open beside the prints is closed by going elsewhere and back.
			await goByAddress(page, 'shows');
			await page.getByRole('heading', { name: 'Shows', exact: true }).waitFor();
		}
		await goByAddress(page, 'prints');
	} else {
		await press(page, 'Load the example');
		await page.evaluate(() => Object.assign(window, { hasExample: true }));
	}
	await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
}

/** Has screens that only look at the example look at these of its prints in this page. */
export async function openExample(page: Page, numbers: readonly number[]): Promise<void> {
	await openFirstShow(page, someOfExample(numbers));
	await page.evaluate(() => Object.assign(window, { hasExample: true }));
}

/** Comes to the prints of the show of `paperShow.ts`; it is opened unless this page has done so before. */
async function comeToPaperShow(page: Page): Promise<void> {
	if (await page.evaluate(() => 'hasPaperShow' in window)) {
		await goByAddress(page, 'prints');
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		return;
	}
	await openPaperShow(page);
	await page.evaluate(() => Object.assign(window, { hasPaperShow: true }));
}

/** Opens the choices of the page for paper, which are folded where it is narrow. */
async function openChoices(page: Page): Promise<void> {
	await page.getByRole('region', { name: 'What to print' }).waitFor();
	const folded = page.locator('.desk details:not([open]) > summary');
	if (await folded.isVisible()) await folded.click();
}

/** Chooses these documents on the page for paper, and no others. */
export async function choosePaper(page: Page, ...names: readonly string[]): Promise<void> {
	await openChoices(page);
	await page.getByRole('checkbox', { name: names[0]! }).first().waitFor();
	// No function of it has a name: `npm run look` compiles them with a helper that the page does not have.
	const chosen = await page.locator('.line input[type=checkbox]').evaluateAll(
		(boxes, wanted) =>
			(boxes as HTMLInputElement[]).filter((box) => {
				const words = box.labels![0]!.innerText.trim();
				const isWanted = wanted.some((name) => words.startsWith(name));
				if (box.checked !== isWanted) box.click();
				return isWanted;
			}).length,
		names,
	);
	if (chosen !== names.length) throw new Error(`${chosen} documents are called ${names.join(', ')}`);
	await page.locator('article').first().waitFor();
}

/** Goes to the first cell of the grid. Where the page has just come to it, the focus may still be on its way there. */
async function toFirstCell(page: Page): Promise<void> {
	await page.locator('[role=grid] [tabindex="0"]').first().focus();
	await page.keyboard.press('Control+Home');
}

/** Goes to a place by the head of the page. */
export async function goTo(
	page: Page,
	place: 'Prints' | 'Whole show' | 'Boards' | 'To get' | 'Bench' | 'Wall' | 'On paper',
): Promise<void> {
	const opener = page.getByRole('button', { name: /^Places/ }); // where the page is narrow
	if (await opener.isVisible()) await opener.click();
	await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: place }).click();
	await page.locator(`nav a[aria-current=page]:text-is("${place}")`).waitFor({ state: 'attached' });
	await page.locator('main h1').first().waitFor({ state: 'attached' }); // its part may still be loaded
}

/** Shows a drawing of the active print, which a phone folds away at first. */
async function showDrawing(page: Page, which: string): Promise<void> {
	const folded = page.getByRole('button', { name: 'Show drawing' });
	if (await folded.isVisible()) await folded.click();
	await press(page, which);
	await page.getByRole('img', { name: which === 'Framed' ? 'Frame in profile' : 'Undermount' }).waitFor();
}

async function goToShows(page: Page): Promise<void> {
	await goBehindName(page, 'Shows');
	await page.getByRole('heading', { name: 'Shows', exact: true }).waitFor();
}

/** Loads the example and has a file come in that has to be answered. */
async function comeIn(page: Page, name: string, text: string, title: RegExp): Promise<void> {
	await loadExample(page);
	await press(page, 'Files');
	await chooseFile(page, 'Import rows', name, text);
	await page.getByRole('heading', { name: title }).waitFor();
}

const otherShow = { format: 'evenhang-show', version: 3, name: 'Harbour room', settings: {}, rows: [] };

/** Every screen of the app, and every panel that opens over one. */
export const screens: readonly Screen[] = [
	{ name: 'start', open: async (page) => void (await page.getByRole('heading', { level: 1 }).waitFor()) },
	{
		name: 'start-skipped',
		open: async (page) => {
			await press(page, 'Skip the first steps');
			await page.getByRole('button', { name: 'Skip the first steps' }).waitFor({ state: 'detached' });
		},
	},
	{
		name: 'start-lost',
		open: async (page) => {
			await page.evaluate(() => {
				const gone = [
					{ id: 'gone', name: 'Light on the estuary', prints: 30, copiedAt: 1.79e12 },
					{ id: 'begun', name: '', prints: 1 },
				];
				const putBack = [{ id: 'back', name: 'Spring', at: 1.794e12 }];
				localStorage.setItem('evenhang lost shows', JSON.stringify({ gone, putBack }));
			});
			await page.reload();
			await page.getByRole('button', { name: 'Open a backup' }).waitFor();
			await page.getByRole('heading', { level: 1 }).waitFor();
		},
	},
	{ name: 'paste', open: (page) => press(page, 'Paste rows') },
	{ name: 'prints', onlyLooks: 'at the example', open: loadExample },
	{
		name: 'editing',
		needsGrid: true,
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await toFirstCell(page);
			await page.keyboard.press('F2');
			await page.getByRole('grid').getByRole('textbox').waitFor();
		},
	},
	{
		name: 'findings',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await press(page, /can’t be cut yet|to check/);
			await allListed(page);
		},
	},
	{
		name: 'menu',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await press(page, 'More…');
			await page.getByRole('menu').waitFor();
		},
	},
	{
		name: 'column menu',
		needsGrid: true,
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await toFirstCell(page);
			await page.keyboard.press('F7');
			await page.getByRole('menu').waitFor();
		},
	},
	{
		name: 'range',
		needsGrid: true,
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await toFirstCell(page);
			for (const key of ['ArrowDown', 'ArrowRight', 'ArrowRight', 'Shift+ArrowDown', 'Shift+ArrowRight'])
				await page.keyboard.press(key);
			await page.getByRole('button', { name: 'Copy' }).waitFor();
		},
	},
	{
		name: 'filtered',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await press(page, 'Filter');
			await page.getByRole('combobox', { name: 'Checks' }).selectOption('look');
			await page
				.getByText(/of \d+ prints/)
				.first()
				.waitFor();
		},
		leave: async (page) => {
			await page.getByRole('combobox', { name: 'Checks' }).selectOption('');
			await press(page, 'Filter');
		},
	},
	{
		name: 'views',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await press(page, 'Columns');
			await page.getByRole('checkbox', { name: 'Board', exact: true }).waitFor();
		},
	},
	{
		name: 'keys',
		needsGrid: true,
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await toFirstCell(page);
			await page.keyboard.press('?');
			await page.getByRole('dialog').waitFor();
		},
	},
	{
		name: 'files',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await press(page, 'Files');
		},
	},
	{
		name: 'shows',
		open: async (page) => {
			await loadExample(page);
			await goToShows(page);
			for (const copies of [1, 2]) {
				if (copies === 1) await press(page, /^More for /);
				await press(page, /^Copy /);
				await page
					.getByRole('button', { name: / copy/ })
					.nth(copies - 1)
					.waitFor();
			}
			await press(page, /^More for .* copy$/);
			await press(page, /^Archive .* copy$/);
			await page.getByRole('heading', { name: 'Archive' }).waitFor();
			await press(page, /^More for .* copy \(2\)$/);
			await press(page, /^Delete .* copy \(2\)$/);
			await page.getByText(/is deleted/).waitFor();
		},
	},
	{
		name: 'comparison',
		onlyLooks: 'at the example',
		open: (page) =>
			comeIn(
				page,
				'from Ilse.csv',
				'print id,title,price\nexample-02,Breakwater at noon,360\nexample-03,Net store,420\nnew,Slip,90\n',
				/^What differs/,
			),
	},
	{
		name: 'columns of a file',
		onlyLooks: 'at the example',
		open: (page) =>
			comeIn(page, 'list.csv', 'name;width (cm);height (cm);hue\nPier;45,6;30,6;red\n', /^What do these columns/),
	},
	{
		name: 'whole show',
		onlyLooks: 'at the example',
		open: (page) => comeIn(page, 'harbour.json', JSON.stringify(otherShow), /^“Harbour room”/),
	},
	{
		name: 'backup',
		open: async (page) => {
			await loadExample(page);
			await goToShows(page);
			const given = page.waitForEvent('download');
			await press(page, 'Back up all shows');
			const text = await readFile(await (await given).path(), 'utf8');
			await press(page, /^More for /);
			await press(page, /^Rename /);
			await page.keyboard.type('Salt, slate');
			await page.keyboard.press('Enter');
			await page.getByRole('button', { name: 'Salt, slate', exact: true }).waitFor();
			await chooseFile(page, 'Open a file or a backup', 'all.json', text);
			await page.getByText(/differs from the one on this device$/).waitFor();
		},
	},
	{
		name: 'across',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Whole show');
			await press(page, 'Find sizes');
			await page.getByRole('table').waitFor();
		},
	},
	{
		name: 'prints-framed',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await showDrawing(page, 'Framed');
		},
	},
	{
		name: 'prints-hinges',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await showDrawing(page, 'Hinges');
		},
	},
	{
		name: 'frames',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await press(page, 'More…');
			await page.getByRole('menuitem', { name: 'Frames for all prints…' }).click();
			await press(page, 'Find frames');
			await page.getByText('keep their frame and size').waitFor();
		},
	},
	{
		name: 'boards',
		open: async (page) => {
			await openPaperShow(page);
			await goTo(page, 'Boards');
			await page
				.getByText(/^No (cheaper plan exists|plan uses fewer sheets)/)
				.nth(1)
				.waitFor();
			await page
				.getByText(/cuts in order$/)
				.first()
				.click();
			await press(page, /^Mark as cut/);
			await page.getByRole('heading', { name: /^Already cut/ }).waitFor();
		},
	},
	{
		name: 'to-get',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'To get');
			await page.getByRole('heading', { name: /^Total/ }).waitFor();
			await page.getByText('Working out the plans…').waitFor({ state: 'detached' });
		},
	},
	{
		name: 'to-get-paper',
		onlyLooks: 'at the paper show',
		open: async (page) => {
			await comeToPaperShow(page);
			await goTo(page, 'To get');
			await page.getByRole('link', { name: 'Print on paper' }).click();
			await page.locator('article').first().waitFor();
		},
	},
	{
		name: 'print-list',
		onlyLooks: 'at the paper show',
		open: async (page) => {
			await comeToPaperShow(page);
			await goTo(page, 'To get');
			await page.getByRole('link', { name: 'Pictures to print' }).click();
			await page.getByRole('heading', { name: 'Not printed' }).waitFor();
		},
	},
	{
		name: 'print-list-paper',
		onlyLooks: 'at the paper show',
		open: async (page) => {
			await comeToPaperShow(page);
			await goByAddress(page, 'print-list');
			await page.getByRole('link', { name: 'Print on paper' }).click();
			await page.locator('article').first().waitFor();
		},
	},
	{
		name: 'boards-empty',
		open: async (page) => {
			await startTyping(page);
			await page.keyboard.type('Low water');
			await page.keyboard.press('Enter');
			await goByAddress(page, 'boards');
			await page.getByRole('link', { name: 'Add boards to stock' }).waitFor();
		},
	},
	{
		name: 'knife',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Boards');
			await page
				.getByText(/^No (cheaper plan exists|plan uses fewer sheets)/)
				.nth(1)
				.waitFor();
			await page.getByRole('link', { name: 'Start cutting sheets' }).click();
			await press(page, 'Next');
			await page.locator('.digits').waitFor();
		},
	},
	{
		name: 'bench',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Bench');
			await orderFound(page);
		},
	},
	{
		name: 'cut',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Bench');
			await page.getByRole('link', { name: 'Start cutting windows' }).click();
			await press(page, 'Next');
			await page.locator('.digits').waitFor();
		},
	},
	{
		name: 'finish',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Bench');
			await page.getByRole('link', { name: 'Start finishing' }).click();
			await press(page, 'Printed');
			await page.getByRole('button', { name: 'Printed', pressed: true }).waitFor();
		},
		leave: async (page) => {
			await press(page, /^Undo tick/);
			await page.getByRole('button', { name: 'Printed', pressed: true }).waitFor({ state: 'detached' });
		},
	},
	{
		name: 'lists-paper',
		onlyLooks: 'at the paper show',
		open: async (page) => {
			await comeToPaperShow(page);
			await goTo(page, 'Bench');
			await page.getByRole('link', { name: 'Print on paper' }).click();
			await choosePaper(
				page,
				...['Print cards', 'Catalogue, plain list', 'Catalogue with pictures', 'Handing over', 'Packing'],
			);
			await page.getByRole('heading', { name: /^Box 1/ }).waitFor();
		},
	},
	{
		name: 'wall',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Wall');
			await page.getByRole('button', { name: /^3 Net store/ }).focus();
			await page.keyboard.press('Enter');
			await page.getByRole('heading', { name: '3 Net store' }).waitFor();
			await press(page, 'Measures');
		},
	},
	{
		name: 'sales',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goBehindName(page, 'Sales');
			await page.getByRole('heading', { name: 'Editions' }).waitFor();
		},
	},
	{
		name: 'hang',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Wall');
			await page.getByRole('link', { name: 'Start hanging' }).click();
			await page.locator('.digits').first().waitFor();
		},
	},
	{
		name: 'wall-paper',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Wall');
			await page.getByRole('link', { name: 'Print on paper' }).click();
			await page.locator('article').first().waitFor();
		},
	},
	{
		name: 'paper-labels',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goByAddress(page, 'paper');
			await openChoices(page);
			await page.getByRole('checkbox', { name: 'Labels for the back' }).check();
			await page.locator('article').first().waitFor();
		},
	},
	{
		name: 'paper',
		onlyLooks: 'at the paper show',
		open: async (page) => {
			await comeToPaperShow(page);
			await goTo(page, 'Bench');
			await page.getByRole('link', { name: 'Print on paper' }).click();
			await choosePaper(page, 'Bench list', 'Marks on the back', 'Corner templates');
		},
	},
	{
		name: 'paper-frames',
		onlyLooks: 'at the paper show',
		open: async (page) => {
			await comeToPaperShow(page);
			await goTo(page, 'Bench');
			await page.getByRole('link', { name: 'Print on paper' }).click();
			await choosePaper(page, 'Frames and hinges');
			await page
				.getByRole('img', { name: /^(Undermount|Back of the mount)/ })
				.first()
				.waitFor();
		},
	},
	{
		name: 'help',
		open: async (page) => {
			await goByAddress(page, 'help');
			await page.getByRole('img', { name: /^Signing space/ }).waitFor();
		},
	},
	{
		name: 'settings',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goBehindName(page, 'Settings');
			await page.getByRole('link', { name: 'Mount and window' }).click();
			await page.getByRole('heading', { name: 'Mount and borders' }).waitFor();
		},
	},
	{
		name: 'settings-boards',
		onlyLooks: 'at the example',
		open: async (page) => {
			await loadExample(page);
			await goBehindName(page, 'Settings');
			await page.getByRole('navigation', { name: 'Sections of the settings' }).getByText('Boards').click();
			await page
				.getByRole('button', { name: /^Chalk/ })
				.first()
				.click();
			await page.getByRole('button', { name: 'Remove Chalk' }).waitFor();
		},
	},
];
