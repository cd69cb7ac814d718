import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import { testInSoak } from '../../soak.ts';
import { axeProblems } from '../harness/axe.ts';
import { oneStage } from '../screens/oneStage.ts';
import { activeCell, at, cell, paste, press, seen, startTyping } from '../screens/prints.ts';
import { allCells, drag, said, withNumbered } from './cells.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true, reducedMotion: 'reduce' });

const head = (page: Page, name: string) =>
	page.getByRole('columnheader', { name, exact: true }).and(page.locator('[data-row="-1"]'));
const titles = (page: Page, count: number) =>
	Promise.all(Array.from({ length: count }, async (_, row) => (await seen(page, row, 'title')).replace(' typed', '')));
const choose = async (page: Page, item: string) => {
	await page.getByRole('menuitem', { name: item }).waitFor();
	await page.getByRole('menuitem', { name: item }).press('Enter');
};
const isInView = (page: Page) =>
	page.evaluate(() => {
		const [box, grid] = [document.activeElement!, document.querySelector('[role=grid]')!].map((each) =>
			each.getBoundingClientRect(),
		) as [DOMRect, DOMRect];
		return box.top >= grid.top && box.bottom <= grid.bottom + 1;
	});

/** Begins a show of five prints by two makers; one is to be looked at and one to stop for. */
async function withFive(page: Page): Promise<void> {
	await startTyping(page);
	await paste(
		page,
		['Pier 10\t\t30 cm\t200', 'Pier 9\t\t250\t170', 'Ebb\t\tabc\t200', 'Fog\t\t10 in\t170', 'Tar\t\t200\t250'].join(
			'\n',
		),
	);
	await cell(page, 4, 'title').waitFor();
	await press(page, 'Control+Home', 'ArrowRight');
}

test('by keyboard: sorted from the head, by size whatever the unit; the active row stays active; one step of undo', () =>
	play(async (page) => {
		await withFive(page);
		await press(page, 'ArrowDown', 'F7');
		await choose(page, 'Sort, A to Z');
		await expect.poll(() => titles(page, 5)).toEqual(['Ebb', 'Fog', 'Pier 9', 'Pier 10', 'Tar']);
		await expect.poll(() => activeCell(page)).toBe(at(2, 'title'));
		expect(await head(page, 'Title').getAttribute('aria-sort')).toBe('ascending');
		expect(await said(page)).toBe('5 prints, sorted by title');
		await press(page, 'ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowRight', 'ArrowRight');
		expect(await activeCell(page)).toBe(at(-1, 'picture width'));
		await press(page, 'Enter');
		await choose(page, 'Sort, largest first');
		await expect.poll(() => titles(page, 5)).toEqual(['Ebb', 'Pier 10', 'Fog', 'Pier 9', 'Tar']);
		expect(await page.locator('[aria-sort=descending], [aria-sort=ascending]').count()).toBe(1);
		await press(page, 'ArrowDown', 'F2');
		await page.keyboard.type('1');
		await press(page, 'Enter');
		expect(await titles(page, 5), 'typing moves no row').toEqual(['Ebb', 'Pier 10', 'Fog', 'Pier 9', 'Tar']);
		await page.getByRole('button', { name: 'Sort again' }).press('Enter');
		await expect.poll(async () => (await titles(page, 5))[4]).toBe('Ebb');
		await press(page, 'Control+z', 'Control+z');
		await expect.poll(() => titles(page, 5)).toEqual(['Ebb', 'Fog', 'Pier 9', 'Pier 10', 'Tar']);
		await page.getByRole('button', { name: 'Save this order' }).press('Enter');
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await expect.poll(() => titles(page, 5)).toEqual(['Ebb', 'Fog', 'Pier 9', 'Pier 10', 'Tar']);
		expect(await head(page, 'Title').getAttribute('aria-sort')).toBe('none');
	}));

test('by keyboard: words find prints, the counts follow, and cleared, one is back at one’s place', () =>
	play(async (page) => {
		await withFive(page);
		await press(page, 'ArrowDown', 'ArrowDown', 'ArrowDown', 'Control+f');
		await page.keyboard.type('pier');
		await expect.poll(() => said(page)).toBe('2 of 5 prints');
		expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('4');
		await press(page, 'Enter');
		await expect.poll(() => activeCell(page)).toMatch(/^\d 1$/);
		await page.getByRole('button', { name: 'Show all prints' }).press('Enter');
		await expect.poll(() => activeCell(page)).toBe(at(3, 'title'));
		await press(page, 'Control+f');
		await page.keyboard.type('no such print');
		await page.getByText('No prints match').waitFor();
		expect(await axeProblems(page)).toEqual([]);
		await press(page, 'Control+a', 'Delete', 'Escape');
		await expect.poll(() => activeCell(page)).toBe(at(3, 'title'));
	}));

test('prints are asked for by what is said of them, mount, maker and whether they are cut; a paste goes to what is seen', () =>
	play(async (page) => {
		await withFive(page);
		await page.getByRole('button', { name: 'Filter' }).press('Enter');
		const ask = (name: string, option: string) => page.getByRole('combobox', { name }).selectOption({ label: option });
		const count = () => page.getByRole('grid').getAttribute('aria-rowcount');
		await ask('Checks', 'Can’t be cut yet');
		expect(await titles(page, 1)).toEqual(['Ebb']);
		await ask('Checks', 'Not understood');
		expect(await count()).toBe('3');
		await ask('Checks', 'Any');
		await ask('Mount size', '500 × 400 mm');
		expect(await count()).toBe('7');
		await ask('At the bench', 'Cut');
		expect(await count()).toBe('2');
		await page.getByRole('button', { name: 'Show all prints' }).press('Enter');
		await press(page, 'Control+f');
		await page.keyboard.type('pier');
		await press(page, 'Enter', 'Control+Home', 'End');
		await paste(page, 'first\nsecond\nthird');
		await expect.poll(() => said(page)).toContain('3 prints left out');
		await page.getByRole('button', { name: 'Show all prints' }).press('Enter');
		const notes = await Promise.all([0, 1, 2, 3, 4, 5].map((row) => seen(page, row, 'note')));
		expect(notes).toEqual(['first typed', 'second typed', 'third typed', '', '', '']);
	}));

test('columns are sized, moved and hidden by keyboard and by mouse, keep their true positions, and each is one step', () =>
	play(async (page) => {
		await withFive(page);
		await press(page, 'ArrowUp', 'ArrowRight', 'Alt+ArrowRight');
		await expect.poll(() => head(page, 'Shape').getAttribute('aria-colindex')).toBe('4');
		expect(await said(page)).toBe(`Shape, column 4 of ${gridColumns.length}`);
		expect(await activeCell(page), 'the focus goes with it').toBe('-1 3');
		const width = async () => (await head(page, 'Shape').boundingBox())!.width;
		const before = await width();
		await press(page, 'Alt+Shift+ArrowRight');
		expect(await width()).toBe(before + 12);
		await press(page, 'Delete');
		expect(await head(page, 'Shape').count()).toBe(0);
		expect(await head(page, 'Picture height, mm').getAttribute('aria-colindex'), 'its true position').toBe('5');
		expect(await page.getByRole('grid').getAttribute('aria-colcount')).toBe(`${gridColumns.length}`);
		await press(page, 'ArrowDown', 'Control+z', 'Control+z');
		expect(await width()).toBe(before);
		await press(page, 'Control+z');
		expect(await head(page, 'Shape').getAttribute('aria-colindex')).toBe('3');

		await head(page, 'Side border, mm').click();
		await drag(page, head(page, 'Side border, mm'), head(page, 'Picture width, mm'), { x: 0.2, y: 0.5 });
		expect(await head(page, 'Side border, mm').getAttribute('aria-colindex')).toBe('4');
		const usual = (await head(page, 'Title').boundingBox())!.width;
		const edge = (await head(page, 'Title').locator('[data-edge]').boundingBox())!;
		await page.mouse.move(edge.x + 4, edge.y + 10);
		await page.mouse.down();
		await page.mouse.move(edge.x + 64, edge.y + 10, { steps: 3 });
		await page.mouse.up();
		expect((await head(page, 'Title').boundingBox())!.width).toBe(usual + 60);
		await press(page, 'Control+z');
		expect((await head(page, 'Title').boundingBox())!.width).toBe(usual);
	}));

test('a view shows the columns for its purpose, is kept with the show, and one’s own can be named and removed', () =>
	play(async (page) => {
		await withFive(page);
		await page.getByRole('radio', { name: 'Labels' }).press('Space');
		await page.getByRole('button', { name: 'Columns' }).press('Enter');
		await expect.poll(() => head(page, 'Side border, mm').count()).toBe(0);
		expect((await allCells(page)).map((cells) => cells.length)).toEqual(Array(5).fill(12));
		await page.getByRole('checkbox', { name: 'Wall', exact: true }).press('Space');
		await page.getByRole('textbox', { name: 'Save as a view of your own' }).fill('For the printer');
		await press(page, 'Enter');
		await page.getByRole('radio', { name: 'For the printer' }).waitFor();
		expect(await axeProblems(page)).toEqual([]);
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await head(page, 'Wall').waitFor();
		const active = (name: string) => page.getByRole('radio', { name, exact: true, checked: true });
		await active('For the printer').waitFor();
		await page.getByRole('button', { name: 'Columns' }).press('Enter');
		await page.getByRole('button', { name: 'Remove this view' }).press('Enter');
		await active('Every column').waitFor();
		await page.getByRole('button', { name: 'Undo' }).click();
		await active('For the printer').waitFor();
	}));

// In parts: the tests above and below sort and filter, `moving` scrolls ten thousand rows.
testInSoak('ten thousand rows are sorted, filtered and scrolled without the hand being lost', () =>
	play(async (page) => {
		await withNumbered(page, 10_000);
		await press(page, 'Control+End', 'Home', 'ArrowRight');
		expect(await seen(page, 9999, 'title')).toBe('Print 10000 typed');
		await press(page, 'F7');
		await choose(page, 'Sort, Z to A');
		await expect.poll(() => activeCell(page)).toBe(at(0, 'title'));
		expect(await isInView(page)).toBe(true);
		await press(page, 'PageDown');
		const place = await activeCell(page);
		const title = await page.evaluate(() => document.activeElement!.textContent);
		await press(page, 'Control+f');
		await page.keyboard.type('print 77');
		await expect.poll(() => page.getByRole('grid').getAttribute('aria-rowcount')).toBe('282');
		await page.getByRole('searchbox', { name: 'Find prints' }).fill('');
		await press(page, 'Escape');
		await expect.poll(() => activeCell(page)).toBe(place);
		expect(await page.evaluate(() => document.activeElement!.textContent)).toBe(title);
		expect(await isInView(page)).toBe(true);
		await page.getByRole('grid').evaluate((grid) => (grid.scrollTop = 200_000));
		await cell(page, 4450, 'title').waitFor();
		expect(await activeCell(page)).toBe(place);
		expect(await page.getByRole('grid').getByRole('row').nth(5).getAttribute('aria-rowindex')).not.toBeNull();
		await press(page, 'ArrowDown');
		expect(await isInView(page)).toBe(true);
		expect(await page.locator('[role=row]').count()).toBeLessThan(60);
		// However many rows and columns there are, a key looks at no more than what can be seen, the active row among it.
		const cells = page.getByRole('grid').locator('[data-column]');
		await page.getByRole('grid').evaluate((grid) => ((grid.scrollTop = 200_000), (grid.scrollLeft = 700)));
		await page.locator('[data-row="4450"]').first().waitFor();
		expect(await cells.count()).toBeGreaterThan(50);
		expect(await cells.count()).toBeLessThanOrEqual(300);
	}),
);
