import type { Page } from 'playwright-core';

/** A screen, and how a person gets there from an app that has just been opened for the first time. */
export interface Screen {
	readonly name: string;
	/** Whether it needs the grid, which a phone has no room for. */
	readonly needsGrid?: boolean;
	readonly open: (page: Page) => Promise<void>;
}

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();

async function loadExample(page: Page): Promise<void> {
	await press(page, 'Load the example');
	await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
}

async function goTo(page: Page, place: 'Prints' | 'Across' | 'Boards' | 'Bench'): Promise<void> {
	await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: place }).click();
	await page.locator(`nav a[aria-current=page]:text-is("${place}")`).waitFor();
}

/** Every screen of the app, and every panel that opens over one. */
export const screens: readonly Screen[] = [
	{ name: 'start', open: async (page) => void (await page.getByRole('heading', { level: 1 }).waitFor()) },
	{ name: 'paste', open: (page) => press(page, 'Paste rows') },
	{ name: 'prints', open: loadExample },
	{
		name: 'editing',
		needsGrid: true,
		open: async (page) => {
			await loadExample(page);
			await page.keyboard.press('Control+Home');
			await page.keyboard.press('F2');
			await page.getByRole('grid').getByRole('textbox').waitFor();
		},
	},
	{
		name: 'findings',
		open: async (page) => {
			await loadExample(page);
			await press(page, /to stop for|to look at/);
		},
	},
	{
		name: 'menu',
		open: async (page) => {
			await loadExample(page);
			await press(page, 'This print…');
			await page.getByRole('menu').waitFor();
		},
	},
	{
		name: 'column menu',
		needsGrid: true,
		open: async (page) => {
			await loadExample(page);
			await page.keyboard.press('Control+Home');
			await page.keyboard.press('F7');
			await page.getByRole('menu').waitFor();
		},
	},
	{
		name: 'range',
		needsGrid: true,
		open: async (page) => {
			await loadExample(page);
			await page.keyboard.press('Control+Home');
			for (const key of ['ArrowDown', 'ArrowRight', 'ArrowRight', 'Shift+ArrowDown', 'Shift+ArrowRight'])
				await page.keyboard.press(key);
			await page.getByRole('button', { name: 'Copy' }).waitFor();
		},
	},
	{
		name: 'filtered',
		open: async (page) => {
			await loadExample(page);
			await press(page, 'Filter');
			await page.getByRole('combobox', { name: 'What to know' }).selectOption('look');
			await page.getByText('of 30 prints').first().waitFor();
		},
	},
	{
		name: 'views',
		open: async (page) => {
			await loadExample(page);
			await press(page, /^(View:|Every column)/);
			await page.getByRole('radio', { name: 'Sizing' }).waitFor();
		},
	},
	{
		name: 'keys',
		needsGrid: true,
		open: async (page) => {
			await loadExample(page);
			await page.keyboard.press('Control+Home');
			await page.keyboard.press('?');
			await page.getByRole('dialog').waitFor();
		},
	},
	{
		name: 'files',
		open: async (page) => {
			await loadExample(page);
			await press(page, 'Files');
		},
	},
	{
		name: 'across',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Across');
			await press(page, 'Work it out');
			await page.getByRole('table').waitFor();
		},
	},
	{
		name: 'boards',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Boards');
			await page
				.getByText(/^Proven least/)
				.nth(1)
				.waitFor();
			await page
				.getByText(/cuts in order$/)
				.first()
				.click();
			await press(page, /^Mark as cut/);
			await page.getByRole('heading', { name: /^Cut already/ }).waitFor();
		},
	},
	{
		name: 'boards-empty',
		open: async (page) => {
			await press(page, 'Start typing');
			await page.goto(`${page.url().split('#')[0]}#boards`);
			await page.getByRole('button', { name: 'Put boards into the stock' }).waitFor();
		},
	},
	{
		name: 'knife',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Boards');
			await page
				.getByText(/^Proven least/)
				.nth(1)
				.waitFor();
			await page.getByRole('link', { name: 'Go to the knife' }).click();
			await press(page, 'Next');
			await page.locator('.digits').waitFor();
		},
	},
	{
		name: 'bench',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Bench');
		},
	},
	{
		name: 'cut',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Bench');
			await page.getByRole('link', { name: 'Go to the bench' }).click();
			await press(page, 'Next');
			await page.locator('.digits').waitFor();
		},
	},
	{
		name: 'paper',
		open: async (page) => {
			await loadExample(page);
			await goTo(page, 'Bench');
			await page.getByRole('link', { name: 'Print on paper' }).click();
			await page.getByRole('checkbox', { name: /Corner templates/ }).check();
		},
	},
	{
		name: 'settings',
		open: async (page) => {
			await loadExample(page);
			await page.getByRole('link', { name: /Settings/ }).click();
			await page.getByRole('heading', { name: 'Mount and borders' }).waitFor();
		},
	},
];
