import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openFirstShow } from '../harness/openShow.ts';
import { resize } from '../harness/resize.ts';
import { ofEveryKind, someOfExample } from '../harness/someOfExample.ts';
import { withPrints } from './prints.ts';
import { oneStage } from './oneStage.ts';
import { openSettings } from './settingsOf.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });

async function harmoniseExample(page: Page) {
	await openFirstShow(page, someOfExample(ofEveryKind));
	await page.getByRole('link', { name: 'Whole show' }).click();
	await page.getByRole('button', { name: 'Find sizes' }).click();
	await page.getByRole('table').waitFor();
}

const needs = (page: Page) => page.locator('main .lead').innerText();

test('harmonise shows before and after, and is taken whole in one step to undo', () =>
	play(async (page) => {
		await harmoniseExample(page);
		const before = await needs(page);
		expect(await page.locator('main').getByRole('status').innerText()).toMatch(
			/^Chosen\s+\S.*\s+Mount sizes\s+\d+ → \d+\s/,
		);
		await page.getByText('clears what is typed in its picture, window, mount and border cells').waitFor();
		const count = await page.getByRole('checkbox', { checked: true }).count();
		expect(await page.getByRole('row').filter({ hasText: 'Left alone: can’t be cut yet' }).count()).toBeGreaterThan(0);
		await page.getByRole('button', { name: `Apply to ${count} prints` }).click();
		await expect.poll(() => needs(page)).not.toBe(before);
		const note = page.getByRole('group', { name: 'What was applied' });
		expect(await note.innerText()).toContain(`${count} prints changed.`);
		expect(await note.evaluate((element) => element === document.activeElement)).toBe(true);
		expect(await needs(page)).toMatch(/need 1 mount size|need 2 mount sizes/);
		await note.getByRole('button', { name: 'Undo' }).click();
		await expect.poll(() => needs(page)).toBe(before);
		expect(await note.count()).toBe(0);
		expect(await page.evaluate(() => document.activeElement?.textContent.trim())).toBe('Find sizes');
		await page.getByRole('button', { name: 'Redo: fewer sizes' }).click();
		await expect.poll(() => needs(page)).not.toBe(before);
	}));

test('on a phone each print is a block, its figures after what they are, and nothing is scrolled sideways', () =>
	play(async (page) => {
		await harmoniseExample(page);
		await page.getByText('Largest change to a picture').waitFor();
		const topOf = async (each: ReturnType<Page['locator']>) => (await each.first().boundingBox())!.y;
		const applying = await topOf(page.getByText(/^This puts the name of its size/));
		expect(applying, 'what is applied is said before the list').toBeLessThan(await topOf(page.locator('tbody')));
		const region = page.getByRole('region', { name: 'Before and after' });
		const width = () => region.evaluate((each) => each.scrollWidth - each.clientWidth);
		const heads = () =>
			region
				.locator('tbody tr')
				.first()
				.locator('td[data-head]')
				.evaluateAll((cells) => cells.map((each) => getComputedStyle(each, '::before').content));
		expect((await heads())[1], 'the table has its heads').toBe('none');
		await resize(page, { width: 390, height: 844 });
		expect(await width()).toBe(0);
		expect((await heads())[1]).toBe('"Long side wanted, mm"');
		const first = (await region.locator('tbody tr').first().boundingBox())!;
		expect(first.height).toBeGreaterThan(100);
	}));

test('a print can be left out, and all of it left as it is', () =>
	play(async (page) => {
		await harmoniseExample(page);
		const boxes = page.getByRole('checkbox');
		const all = await boxes.count();
		expect(all).toBeGreaterThan(5);
		await boxes.first().uncheck();
		await boxes.evaluateAll((others) => others.slice(1, -1).forEach((each) => (each as HTMLElement).click()));
		await page.getByRole('button', { name: 'Apply to 1 print' }).waitFor();
		await page.getByRole('button', { name: 'Leave as it is' }).click();
		expect(await page.getByRole('table').count()).toBe(0);
		await page.getByRole('link', { name: 'Prints', exact: true }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		expect(await page.getByRole('button', { name: 'Undo: fewer sizes' }).count()).toBe(0);
	}));

test('all prints are drawn to one scale in hang order; one that is marked leads to the print', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		await page.getByRole('link', { name: 'Whole show' }).click();
		const prints = page.getByRole('region', { name: 'All prints to one scale' }).getByRole('listitem');
		await expect.poll(() => prints.count()).toBe(30);
		const widthOf = (name: string) =>
			prints
				.filter({ hasText: name })
				.locator('.drawing svg')
				.evaluate((drawing) => drawing.getBoundingClientRect().width);
		const [large, small] = [await widthOf('Ebb, before six'), await widthOf('Two gulls')];
		expect(small).toBeLessThan(large);
		const hatched = prints.filter({ has: page.locator('path.hatch') });
		expect(await hatched.allInnerTexts(), 'nothing is known of what is seen in it').toEqual([
			expect.stringContaining('21 Tip, after rain'),
		]);
		await prints.getByRole('button', { name: /^Can’t cut: 9 Salt pan III/ }).press('Enter');
		await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toContain('Salt pan III');
	}));

test('without named sizes it says what is missing', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '456', '306']]);
		await page.getByRole('link', { name: 'Whole show' }).click();
		await page.getByText('The show has no named sizes yet').waitFor();
	}));

test('rules are chosen as a set, and each can still be changed', () =>
	play(async (page) => {
		await openSettings(page, 'Rules of the show');
		await page.getByRole('radio', { name: 'One metric size' }).check();
		await page.getByText('Every mount 500 × 400 mm to 2 mm').waitFor();
		expect(await page.getByRole('textbox', { name: 'Exact mount' }).inputValue()).toBe('500 x 400 mm');
		await page.getByRole('textbox', { name: 'Tolerance ±' }).fill('3');
		await page.keyboard.press('Tab');
		await page.getByText('Rules of your own').waitFor();
		await page.getByRole('radio', { name: 'bottom right' }).check();
		expect(await page.getByRole('radio', { name: 'bottom right' }).isChecked()).toBe(true);
		expect(await page.getByRole('radio', { name: 'required' }).isChecked()).toBe(true);
	}));

test('a frame and a board are typed, tell a print what they hide, and can be taken away', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		await openSettings(page, 'Frames');
		const fill = async (label: string, text: string) => {
			await page.getByRole('textbox', { name: label }).fill(text);
			await page.keyboard.press('Tab');
		};
		await page.getByRole('button', { name: 'New frame…' }).click();
		await fill('Name, new frame', 'Ash');
		await fill('Rebate width, new frame', '704');
		await fill('Rebate height, new frame', '554');
		await page.getByRole('button', { name: 'Add frame' }).click();
		await page.getByRole('button', { name: /^Ash \d/ }).waitFor();
		await page.getByRole('button', { name: /^Large oak/ }).click();
		await fill('Lip, Large oak', '5 cm');
		await page.getByRole('link', { name: 'Prints', exact: true }).click();
		await page.getByText('show in the frame “Large oak”').first().waitFor();
		await openSettings(page, 'Frames');
		await page.getByRole('button', { name: /^Ash \d/ }).click();
		await page.getByRole('button', { name: 'Remove Ash', exact: true }).click();
		expect(await page.getByRole('button', { name: /^Ash \d/ }).count()).toBe(0);
		await openSettings(page, 'Boards');
		await page.getByRole('button', { name: 'New board…' }).click();
		const density = page.getByLabel(/^Density, .*new board$/);
		expect(await density.getAttribute('placeholder'), 'what counts where none is typed').toBe('0.7');
		await fill('Name, new board', 'White');
		await fill('Width, new board', 'wide');
		await fill('Height, new board', '800');
		await page.getByRole('button', { name: 'Add board' }).click();
		await page.getByRole('alert').filter({ hasText: 'wide' }).waitFor();
	}));
