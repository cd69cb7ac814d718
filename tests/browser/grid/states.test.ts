import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { isSoak } from '../../soak.ts';
import { axeProblems } from '../harness/axe.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { smallTargets } from '../harness/smallTargets.ts';
import { oneStage } from '../screens/oneStage.ts';
import { activeCell, at, cell, paste, press, seen, withPrints } from '../screens/prints.ts';
import { grip, said } from './cells.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true, reducedMotion: 'reduce' });

const prints = [
	['Low water', '300', '200'],
	['Salt road', 'abc', '210'],
	['Kiln door', '640', '480'],
] as const;

test('grips are seen on the active row, on the one under the pointer and on selected rows', () =>
	play(async (page) => {
		await withPrints(page, prints);
		const seenGrips = () =>
			page
				.locator('.grip')
				.evaluateAll((grips) =>
					grips
						.filter((each) => getComputedStyle(each, '::before').visibility === 'visible')
						.map((each) => (each as HTMLElement).dataset['grip']),
				);
		await cell(page, 0, 'title').click();
		expect(await seenGrips()).toEqual(['0']);
		await cell(page, 2, 'title').hover();
		expect((await seenGrips()).sort()).toEqual(['0', '2']);
		await grip(page, 1).click();
		await page.mouse.move(5, 5);
		expect(await seenGrips()).toEqual(['1']);
	}));

test('axe finds nothing in any state of the grid, and a finger hits everything', () =>
	play(async (page) => {
		await withPrints(page, prints);
		const found: string[] = [];
		// As screens of their own these are looked at by `axe`.
		const screens = ['plain', 'editing', 'menu', 'range', 'keys'];
		const look = async (state: string) => {
			const problems = await smallTargets(page);
			if (isSoak || !screens.includes(state)) problems.push(...(await axeProblems(page)));
			if (isSoak) {
				// In `npm test` the dark colours are held by the test of the tokens, and by axe on each screen.
				await page.emulateMedia({ colorScheme: 'dark' });
				problems.push(...(await axeProblems(page, { rules: ['color-contrast'] })));
				await page.emulateMedia({ colorScheme: 'light' });
			}
			found.push(...problems.map((problem) => `${state}: ${problem}`));
		};
		await cell(page, 0, 'picture width').click();
		await look('plain');
		await press(page, 'F2');
		await look('editing');
		await page.keyboard.type('1,500');
		await press(page, 'Enter');
		const keep = page.getByRole('button', { name: 'Leave as typed' });
		await keep.waitFor();
		await look('error');
		await keep.click(); // and is gone with its editor
		expect(await activeCell(page)).toBe(at(0, 'picture width'));
		await press(page, 'Escape', 'Shift+F10');
		await page.getByRole('menu').waitFor();
		await look('menu');
		await press(page, 'Escape');
		await cell(page, 2, 'side').click({ modifiers: ['Shift'] });
		await look('range');
		await grip(page, 1).click();
		await look('rows');
		await cell(page, -1, 'side').click();
		await look('columns');
		await cell(page, 0, 'picture width').click();
		await paste(page, '310\t210\t304\n320\t220\t314');
		await page.getByRole('group', { name: 'The paste' }).waitFor();
		await look('paste');
		await press(page, 'ArrowUp', 'ArrowUp');
		await look('head');
		await press(page, '?');
		await page.getByRole('dialog').waitFor();
		await look('keys');
		expect(found).toEqual([]);
	}));

/** What can be clicked and Tab does not come to, however often it is pressed. */
async function missedByTab(page: Page): Promise<string[]> {
	const places = await page.evaluate(() => {
		document.addEventListener('focusin', ({ target }) => (target as Element).setAttribute('data-came', ''));
		return document.querySelectorAll('button, a, input, select').length;
	});
	for (let place = 0; place < places + 15; place++) {
		if (await page.evaluate(() => document.activeElement?.closest('[role=grid]'))) await press(page, 'Escape');
		await press(page, 'Tab');
	}
	// Of a group of radio buttons Tab comes to one, and arrows to the others; a disabled one does nothing.
	return page
		.locator('button:enabled, a[href], input:enabled:not([type=radio]), select')
		.and(page.locator(':visible:not([data-came])'))
		.evaluateAll((all) => all.map((each) => each.outerHTML.slice(0, 100)));
}

test('whatever can be clicked around the grid and in its panels is reached by Tab', () =>
	play(async (page) => {
		await withPrints(page, prints);
		await cell(page, 0, 'picture width').click();
		await paste(page, '310\t210\t304');
		await page.getByRole('group', { name: 'The paste' }).waitFor();
		await page.getByRole('button', { name: 'Filter' }).press('Enter');
		await page.getByRole('combobox', { name: 'Checks' }).selectOption('stop');
		expect(await missedByTab(page)).toEqual([]);
		await page.getByRole('button', { name: 'Columns' }).press('Enter');
		await page.getByRole('checkbox', { name: 'Board', exact: true }).waitFor();
		expect(await missedByTab(page)).toEqual([]);
	}));

test('a cell that begins as worked out or from the show is typed and handed back: seen, said, undone', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		const steps = [
			{
				key: 'side',
				text: '120',
				before: '103 worked-out',
				typed: 'Side border typed; it was worked out',
				back: 'Side border, 103, worked out',
			},
			{
				key: 'overlap',
				text: '4',
				before: '3 inherited',
				typed: 'Overlap typed; it was from the show',
				back: 'Overlap, 3, from the show',
			},
		];
		for (const { key, text, before, typed, back } of steps) {
			expect(await seen(page, 0, key)).toBe(before);
			await cell(page, 0, key).click();
			await page.keyboard.type(text);
			await press(page, 'F2');
			expect(await seen(page, 0, key)).toBe(`${text} typed`);
			expect(await said(page)).toContain(typed);
			await press(page, 'Delete');
			expect(await seen(page, 0, key)).toBe(before);
			expect(await said(page)).toContain(back);
			await press(page, 'Control+z');
			expect(await seen(page, 0, key)).toBe(`${text} typed`);
			await press(page, 'F2', 'Control+a', 'Backspace', 'F2');
			expect(await seen(page, 0, key), 'emptied in the editor').toBe(before);
			await press(page, 'Control+z', 'Control+z');
			expect(await seen(page, 0, key)).toBe(before);
		}
	}));

test('what cannot be read is said aloud while the editor stays open, and what it may mean lies over the other rows', () =>
	play(async (page) => {
		await withPrints(
			page,
			['Low water', 'Quay', 'Sluice', 'Shed'].map((title) => [title, '300', '200'] as const),
		);
		await cell(page, 0, 'picture width').click();
		await page.keyboard.type('1,000');
		await press(page, 'Enter');
		await page.locator('[data-apart] button').first().click();
		expect(await seen(page, 0, 'picture width')).toBe('1000 typed');
		await press(page, 'Control+z');
		await cell(page, 0, 'picture width').click();
		await page.keyboard.type('1,000');
		await cell(page, 0, 'picture width').click();
		await page.keyboard.type('1,000');
		await press(page, 'Enter');
		expect(await said(page)).toMatch(/1,000/);
		expect(await page.getByRole('textbox', { name: 'Picture width, row 1' }).getAttribute('aria-invalid')).toBe('true');
		await press(page, 'Escape');
		expect(await seen(page, 0, 'picture width')).toBe('300 typed');
	}));

test('lengths are read as people type them', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		for (const [text, shown] of [
			['65 mm', '65 typed'],
			['6.5cm', '65 typed'],
			['2 5/8 in', '66.7 typed'],
			['2-5/8"', '66.7 typed'],
			['2,5', '2.5 typed'],
		] as const) {
			await cell(page, 0, 'picture width').click();
			await page.keyboard.type(text);
			await press(page, 'Enter');
			expect(await seen(page, 0, 'picture width'), text).toBe(shown);
		}
	}));

test('? lists the keys for this platform, every command among them', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await press(page, '?');
		const keys = page.getByRole('dialog', { name: 'Touch and keys' });
		const words = await keys.innerText();
		for (const key of [
			'Drag over them; a round handle by finger',
			'F2',
			'F6',
			'F8',
			'F7',
			'F9',
			'Ctrl F',
			'Shift F10',
			'Ctrl D',
			'Ctrl Z',
			'Alt ↓',
			'Alt Shift ↑ ↓',
			'Ctrl Shift D',
			'Ctrl Enter',
			'Ctrl Delete',
			'Ctrl Home',
		])
			expect(words).toContain(key);
		expect(words).not.toContain('⌘');
		await goByAddress(page, 'boards');
		await keys.waitFor({ state: 'hidden' });
		await page.goBack();
		await page.getByRole('grid').waitFor();
	}));

test('on an Apple keyboard the keys have its names, and its command key does what Ctrl does', () =>
	play(async (page) => {
		await page.addInitScript(() => {
			const agent = 'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7)';
			Object.defineProperty(navigator, 'userAgent', { get: () => agent });
		});
		await page.reload();
		await withPrints(page, [['Low water', '300', '200']]);
		await press(page, 'Meta+Enter');
		expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('4');
		await press(page, '?');
		const words = await page.getByRole('dialog', { name: 'Keys' }).innerText();
		for (const key of ['⌘ Z', '⌘ D', '⌘ Enter', '⌥ ↓', '⌥ Shift ↑ ↓']) expect(words).toContain(key);
		expect(words).not.toMatch(/Alt|Ctrl (?!Space)/);
		await page.close();
	}));
