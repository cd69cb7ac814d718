import { expect, test } from 'vitest';
import { oneStage } from './oneStage.ts';
import { activeCell, at, cell, press, seen, seenIn, startTyping, withPrints } from './prints.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });

const results = ['window width', 'window height', 'side', 'top', 'bottom', 'mount width', 'mount height'];

// The settings of a new show: mount 500 x 400, border 65, bottom weight 10 %, overlap 3, ruler 1 mm.
test('a shape typed into a new show gives window, borders, picture and bench steps at once', () =>
	play(async (page) => {
		await startTyping(page);
		await cell(page, 0, 'shape').click();
		await page.keyboard.type('3:2');
		await press(page, 'Tab');
		expect(await activeCell(page)).toBe(at(0, 'picture width'));
		expect(await seenIn(page, 0, 'shape', 'picture width', 'picture height', ...results)).toEqual([
			'3:2 typed',
			'376.5 worked-out',
			'251 worked-out',
			'370 worked-out',
			'245 worked-out',
			'65 worked-out',
			'74 worked-out',
			'81 worked-out',
			'500 worked-out',
			'400 worked-out',
		]);
		await expect
			.poll(() => seenIn(page, 0, 'steps', 'overlap', 'bottom weight', 'mount'))
			.toEqual(['1, 2, 3 worked-out', '3 inherited', '10 % inherited', '500 × 400 inherited']);
	}));

test('typed, inherited and worked-out cells are told apart by ear too', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		const words = (key: string) => cell(page, 0, key).textContent();
		expect(await words('picture width')).toBe('300, typed');
		expect(await words('window width')).toBe('294, worked out');
		expect(await words('overlap')).toBe('3, from the show');
		expect(await cell(page, 0, 'steps').getAttribute('aria-readonly')).toBe('true');
	}));

test('two lengths or the name of a size typed into a width type the height too, as one step', () =>
	play(async (page) => {
		await startTyping(page);
		for (const [text, width, height] of [
			['456 x 306', '456 typed', '306 typed'],
			['A4', '210 typed', '297 typed'],
			['18 x 12 in', '457.2 typed', '304.8 typed'],
		]) {
			await cell(page, 0, 'picture width').click();
			await page.keyboard.type(text!);
			await press(page, 'Tab');
			expect(await seenIn(page, 0, 'picture width', 'picture height'), text).toEqual([width, height]);
			await press(page, 'Control+z');
			expect((await seenIn(page, 0, 'picture width', 'picture height')).join(), text).not.toContain('typed');
		}
	}));

test('a cell is edited as it was typed, with its unit, and Escape gives it back', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '45.6 cm', '306']]);
		expect(await seen(page, 0, 'picture width')).toBe('456 typed');
		await cell(page, 0, 'picture width').click();
		await press(page, 'F2');
		const editor = page.getByRole('textbox', { name: 'Picture width, row 1' });
		expect(await editor.inputValue()).toBe('45.6 cm');
		await page.keyboard.type('50');
		expect(await editor.inputValue(), 'what it held was selected').toBe('50');
		await press(page, 'Escape');
		expect(await seen(page, 0, 'picture width')).toBe('456 typed');
		await press(page, 'Delete');
		expect(await seen(page, 0, 'picture width')).toMatch(/worked-out$/);
	}));

test('what cannot be read keeps the editor open, offers what it may mean, and can be kept as typed', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '456', '306']]);
		await cell(page, 0, 'picture width').click();
		await page.keyboard.type('1,500');
		await press(page, 'Enter');
		const editor = page.getByRole('textbox', { name: 'Picture width, row 1' });
		expect(await editor.getAttribute('aria-invalid')).toBe('true');
		expect(
			await editor.getAttribute('aria-describedby').then((id) => page.locator(`[id="${id}"]`).innerText()),
		).toMatch(/1,500/);
		await page.getByRole('button', { name: '1.500', exact: true }).click();
		expect(await seen(page, 0, 'picture width')).toBe('1.5 typed');
		await press(page, 'Control+z');
		expect(await seen(page, 0, 'picture width')).toBe('456 typed');

		await page.keyboard.type('wide');
		await press(page, 'Enter', 'Escape');
		expect(await seen(page, 0, 'picture width'), 'Escape gives the old value back').toBe('456 typed');

		await page.keyboard.type('wide');
		await press(page, 'Enter', 'Enter');
		expect(await seen(page, 0, 'picture width'), 'put in again it stays as typed').toBe('wide typed');
		expect(await cell(page, 0, 'picture width').getAttribute('aria-invalid')).toBe('true');
		await press(page, 'ArrowUp');
		await expect.poll(() => page.locator('#sentences').innerText()).toMatch(/Can’t cut[^]*wide/);
	}));

test('a mend is one tap and one step of undo', () =>
	play(async (page) => {
		await withPrints(page, [['Kiln door', '456', '306']]);
		await cell(page, 0, 'side').click();
		await page.keyboard.type('80');
		await press(page, 'Enter', 'ArrowUp');
		await expect.poll(() => page.locator('#sentences').innerText()).toContain('Check');
		const mend = page
			.locator('#sentences')
			.getByRole('button', { name: /Set side/ })
			.first();
		await mend.click();
		await expect.poll(() => seen(page, 0, 'side')).toMatch(/worked-out$/);
		await page.getByRole('button', { name: /^Undo/ }).click();
		await expect.poll(() => seen(page, 0, 'side')).toBe('80 typed');
	}));

test('a look is accepted and taken back; a way out is one tap', () =>
	play(async (page) => {
		await withPrints(page, [['Two nets', '270', '270']]); // 118 at the sides, 65 at the top: uneven
		const sentences = page.locator('#sentences');
		await sentences.getByRole('button', { name: 'Leave it' }).click();
		await expect.poll(() => sentences.innerText()).toMatch(/Left as it is[^]*118/);
		expect(await sentences.innerText()).not.toMatch(/Check(?! again)/);
		await sentences.getByRole('button', { name: 'Check again' }).click();
		await expect.poll(() => sentences.innerText()).toMatch(/Check[^]*118/);
		await sentences.getByRole('button', { name: /^Cut a mount/ }).click();
		await expect
			.poll(() => seenIn(page, 0, 'mount', 'side', 'top', 'bottom'))
			.toEqual(['fit typed', '65 worked-out', '65 worked-out', '72 worked-out']);
		await press(page, 'Control+z');
		await expect.poll(() => seen(page, 0, 'side')).toBe('118 worked-out');
	}));

test('a worked-out active cell says how it came to its figure', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await cell(page, 0, 'window width').click();
		await expect.poll(() => page.locator('#sentences').innerText()).toMatch(/Window width:.*294\smm/);
		await cell(page, 0, 'picture width').click();
		await expect.poll(() => page.locator('#sentences').innerText()).not.toMatch(/Picture width:/);
	}));

test('every finding of the show leads to its cell', () =>
	play(async (page) => {
		await withPrints(page, [
			['Low water', '300', '200'],
			['Salt road', 'abc', '200'],
		]);
		await page.getByRole('button', { name: /can’t be cut yet/ }).click();
		await page.getByRole('button', { name: /Can’t cut: .*abc/ }).click();
		await expect.poll(() => activeCell(page)).toBe(at(1, 'picture width'));
		await press(page, 'F6');
		expect(await page.evaluate(() => document.activeElement?.closest('#sentences') !== null)).toBe(true);
		await press(page, 'F6');
		await expect.poll(() => activeCell(page)).toBe(at(1, 'picture width'));
		await press(page, 'Control+Home', 'F8');
		expect(await activeCell(page), 'F8 goes from one to the next').not.toBe(at(0, 'number'));
	}));
