import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeProblems } from '../harness/axe.ts';
import { chooseFile } from '../harness/chooseFile.ts';
import { oneStage } from './oneStage.ts';
import { seenIn } from './prints.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });

const importList = (page: Page, text: string) => chooseFile(page, 'Import a file', 'list.csv', text);

test('sizes that give the height first are turned by a switch, seen before they come in, and taken back in one step', () =>
	play(async (page) => {
		await importList(
			page,
			'title;Technique;Hue;Dimensions\nPier;etching;red;300 x 400 mm\nQuay;linocut;;310 x 410 mm\n',
		);
		await page.getByRole('heading', { name: 'What do these columns hold?' }).waitFor();
		await page.getByText(/has \d columns to check, 1 without a match\./).waitFor();
		const first = page.locator('dd').first();
		await first.getByText('picture 300 × 400').waitFor();
		const order = page.getByRole('checkbox', { name: 'Height first, then width' });
		expect(await order.isChecked(), 'nothing says that the height is first').toBe(false);
		await order.focus();
		await page.keyboard.press('Space');
		await first.getByText('picture 400 × 300').waitFor();
		expect(await axeProblems(page)).toEqual([]);
		await page.getByRole('button', { name: 'Import rows' }).click();
		await page.getByText('2 rows read').waitFor();
		expect(await seenIn(page, 0, 'title', 'picture width', 'picture height')).toEqual([
			'Pier typed',
			'400 typed',
			'300 typed',
		]);
		await page.keyboard.press('Control+z');
		await page.getByRole('button', { name: 'Import a file' }).waitFor();
	}));

test('where the list says that the height is first, the switch is on, and stays as it was said for the next one', () =>
	play(async (page) => {
		const list = 'title;Blatt oder Platte (H x B)\nPier;300 x 400 mm\n';
		await importList(page, list);
		const order = page.getByRole('checkbox', { name: 'Height first, then width' });
		await page.getByRole('combobox').selectOption('paper');
		expect(await order.isChecked()).toBe(true);
		await order.click();
		await page.getByRole('button', { name: 'Import rows' }).click();
		await page.getByText('1 row read').waitFor();
		await page.keyboard.press('Control+z');
		await importList(page, list);
		await page.getByText('1 row read').waitFor();
	}));
