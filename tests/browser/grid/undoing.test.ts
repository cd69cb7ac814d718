import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { allOr, testInSoak } from '../../soak.ts';
import { oneStage } from '../screens/oneStage.ts';
import { cell, paste, press, seen, seenIn, stepsFollowed, withPrints } from '../screens/prints.ts';
import { allCells, copied, drag, grip, said, selected, withNumbered } from './cells.ts';

// So wide that every column is in view: what the grid shows is read without scrolling.
const play = oneStage({ isPlanned: false, isInOnePage: true, viewport: { width: 3400, height: 560 } });

const columnOf = (page: Page, count: number, key: string) =>
	Promise.all(Array.from({ length: count }, (_, row) => seen(page, row, key)));

/** Selects a rectangle by mouse. */
async function select(page: Page, from: readonly [number, string], to: readonly [number, string]): Promise<void> {
	await cell(page, ...from).click();
	await cell(page, ...to).click({ modifiers: ['Shift'] });
}

/** All that the grid shows of some rows. */
const shown = async (page: Page): Promise<string> => (await allCells(page)).map((cells) => cells.join('\t')).join('\n');

const gestures = [
	{
		what: 'a paste',
		from: [1, 'shape'],
		to: [1, 'shape'],
		act: (page: Page) => paste(page, '3:2\t\t\n4:3\t\t\n1:1\t\t'),
		after: '1 shape to 3 picture height',
	},
	{
		what: 'a fill',
		from: [0, 'maker'],
		to: [3, 'edition'],
		act: (page: Page) => press(page, 'Control+d'),
		after: '0 maker to 3 edition',
	},
	{
		what: 'clearing',
		from: [0, 'title'],
		to: [2, 'picture height'],
		act: (page: Page) => press(page, 'Delete'),
		after: '0 title to 2 picture height',
	},
	{
		what: 'a cut',
		from: [0, 'title'],
		to: [2, 'shape'],
		act: (page: Page) => copied(page, 'cut'),
		after: '0 title to 2 shape',
	},
	{
		what: 'deleting rows',
		from: [1, 'title'],
		to: [2, 'shape'],
		act: (page: Page) => press(page, 'Control+Delete'),
		after: '1 title to 1 title',
	},
	{
		what: 'a move',
		from: [1, 'title'],
		to: [2, 'shape'],
		act: (page: Page) => press(page, 'Alt+Shift+ArrowDown'),
		after: '2 title to 3 shape',
	},
	{
		what: 'duplicating',
		from: [1, 'title'],
		to: [2, 'title'],
		act: (page: Page) => press(page, 'Control+Shift+D'),
		after: '3 title to 4 title',
	},
	{
		what: 'an insertion',
		from: [1, 'title'],
		to: [1, 'title'],
		act: (page: Page) => press(page, 'Control+Enter'),
		after: '2 title to 2 title',
	},
] as const;

const [aPaste, , , , deleting] = gestures;

test('one undo takes back any gesture, and the selection with it; redo gives both again', () =>
	play(async (page) => {
		await withPrints(page, [
			['Low water', '300', '200'],
			['Salt road', '310', '210'],
			['Kiln door', '320', '220'],
			['Two nets', '330', '230'],
			['Tar', '340', '240'],
		]);
		await cell(page, 0, 'maker').click();
		await page.keyboard.type('Ada');
		await press(page, 'Tab');
		await page.keyboard.type('1/5');
		await press(page, 'Enter');
		await stepsFollowed(page);
		const before = await shown(page);
		for (const { what, from, to, act, after } of allOr(gestures, [aPaste, deleting])) {
			await select(page, from, to);
			const selection = await selected(page);
			await act(page);
			expect(await selected(page), what).toBe(after);
			await stepsFollowed(page);
			const then = await shown(page);
			expect(then, what).not.toBe(before);
			await cell(page, 0, 'paper').click();
			await press(page, 'Control+z');
			expect(await selected(page), what).toBe(selection);
			await expect.poll(() => shown(page), { message: what }).toBe(before);
			await cell(page, 0, 'paper').click();
			await press(page, 'Control+Shift+z');
			expect(await selected(page), what).toBe(after);
			await expect.poll(() => shown(page), { message: what }).toBe(then);
			await press(page, 'Control+z');
			await expect.poll(() => shown(page), { message: what }).toBe(before);
		}
	}));

test('Ctrl+D and Ctrl+R fill from the first of the cells, worked-out cells too; each is one step', () =>
	play(async (page) => {
		await withPrints(page, [
			['Low water', '300', '200'],
			['Salt road', '310', '210'],
			['Kiln door', '320', '220'],
		]);
		await select(page, [0, 'picture width'], [2, 'picture height']);
		await press(page, 'Control+d');
		expect(await columnOf(page, 3, 'picture width')).toEqual(Array(3).fill('300 typed'));
		expect(await columnOf(page, 3, 'picture height')).toEqual(Array(3).fill('200 typed'));
		expect(await said(page)).toBe('Fill down: 4 cells typed');
		await press(page, 'Control+z');
		expect(await columnOf(page, 3, 'picture width')).toEqual(['300 typed', '310 typed', '320 typed']);
		await select(page, [0, 'picture width'], [2, 'picture height']);
		await press(page, 'Control+r');
		expect(await columnOf(page, 3, 'picture height')).toEqual(['300 typed', '310 typed', '320 typed']);
		await press(page, 'Control+z');
		await select(page, [0, 'window height'], [1, 'window height']);
		await press(page, 'Control+d');
		expect(await seen(page, 1, 'window height'), 'worked out stays worked out').toMatch(/worked-out$/);
	}));

test('the handle fills down and right; catalogue numbers go on', () =>
	play(async (page) => {
		await withPrints(
			page,
			Array.from({ length: 6 }, (_, index) => [`Print ${index}`, '', ''] as const),
		);
		await cell(page, 0, 'number').click();
		await paste(page, '10\n20');
		expect(await selected(page)).toBe('0 number to 1 number');
		await drag(page, page.locator('[data-handle]'), cell(page, 5, 'number'));
		expect(await columnOf(page, 6, 'number')).toEqual(
			['10', '20', '30', '40', '50', '60'].map((each) => `${each} typed`),
		);
		expect(await selected(page)).toBe('0 number to 5 number');
		await press(page, 'Control+z');
		expect(await columnOf(page, 6, 'number')).toEqual(['10 typed', '20 typed', '', '', '', '']);
		expect(await selected(page)).toBe('0 number to 1 number');

		await select(page, [1, 'number'], [4, 'number']);
		await press(page, 'Control+d');
		expect(await columnOf(page, 6, 'number'), 'from one number by one').toEqual([
			'10 typed',
			'20 typed',
			'21 typed',
			'22 typed',
			'23 typed',
			'',
		]);

		await cell(page, 0, 'picture width').click();
		await paste(page, '300');
		await drag(page, page.locator('[data-handle]'), cell(page, 0, 'picture height'));
		expect(await seenIn(page, 0, 'picture width', 'picture height')).toEqual(['300 typed', '300 typed']);
		await press(page, 'Control+z');
		expect(await seen(page, 0, 'picture height')).not.toContain('typed');
	}));

/** The catalogue numbers of all rows. */
async function numbersOf(page: Page): Promise<string> {
	const count = await page.getByRole('grid').evaluate((each) => Number(each.getAttribute('aria-rowcount')) - 2);
	return (await columnOf(page, count, 'number')).map((each) => each.replace(' typed', '')).join();
}

// As `screens/keyboard.test.ts`, in another order.
testInSoak('rows are inserted, doubled, moved and deleted by keys', () =>
	play(async (page) => {
		await withNumbered(page, 3);
		const numbers = () => numbersOf(page);
		await press(page, 'ArrowDown', 'Control+Enter');
		expect(await numbers()).toBe('1,2,,3');
		await press(page, 'ArrowUp', 'Control+Shift+Enter');
		expect(await numbers()).toBe('1,,2,,3');
		await press(page, 'Control+Delete');
		expect(await numbers()).toBe('1,2,,3');
		await press(page, 'Control+Shift+D');
		expect(await numbers()).toBe('1,2,2,,3');
		await press(page, 'Alt+Shift+ArrowUp', 'Alt+Shift+ArrowUp');
		expect(await numbers()).toBe('2,1,2,,3');
		await press(page, 'Shift+ArrowDown', 'Alt+Shift+ArrowDown');
		expect(await numbers()).toBe('2,2,1,,3');
		for (let step = 0; step < 7; step++) await press(page, 'Control+z');
		expect(await numbers()).toBe('1,2,3');
	}),
);

test('the menu of a row does the same, opened and gone through by keys; each is one step', () =>
	play(async (page) => {
		await withNumbered(page, 3);
		await press(page, 'ArrowDown');
		const steps = [
			{ item: 'Insert above', place: 0, then: '1,,2,3' },
			{ item: 'Insert below', place: 1, then: '1,2,,3' },
			{ item: 'Duplicate', place: 2, then: '1,2,2,3' },
			{ item: 'Move up', place: 3, then: '2,1,3' },
			{ item: 'Move down', place: 4, then: '1,3,2' },
			{ item: 'Delete print', place: 6, then: '1,3' }, // after the frames of all prints
		];
		for (const { item, place, then } of allOr(steps, [steps[2]!, steps[5]!])) {
			await press(page, 'Shift+F10');
			await page.getByRole('menuitem', { name: item }).waitFor();
			for (let down = 0; down < place; down++) await press(page, 'ArrowDown');
			await press(page, 'Enter');
			await expect.poll(() => numbersOf(page)).toBe(then);
			await press(page, 'Control+z');
			await expect.poll(() => numbersOf(page)).toBe('1,2,3');
		}
	}));

test('a row is moved by its menu, and its grip opens the menu too', () =>
	play(async (page) => {
		await withNumbered(page, 3);
		await grip(page, 2).click({ button: 'right' });
		await page.getByRole('menuitem', { name: 'Move up' }).click();
		await expect.poll(() => columnOf(page, 3, 'number')).toEqual(['1 typed', '3 typed', '2 typed']);
	}));
