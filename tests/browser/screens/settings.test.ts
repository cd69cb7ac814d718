import { expect, test } from 'vitest';
import { oneStage } from './oneStage.ts';
import { press, seen, seenIn, withPrints } from './prints.ts';
import { openSettings } from './settingsOf.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });

test('a changed setting works every row out again, is kept, and can be undone', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '456', '306']]);
		await openSettings(page, 'Mount and window');
		await page.getByRole('combobox', { name: 'Mount size' }).fill('600 x 450');
		await page.getByRole('textbox', { name: 'Border', exact: true }).fill('7 cm');
		await page.getByRole('textbox', { name: 'Bottom weight' }).fill('12 %');
		await press(page, 'Tab');
		await page.getByRole('link', { name: 'Prints', exact: true }).click();
		const borders = () => seenIn(page, 0, 'side', 'top', 'bottom', 'mount');
		const worked = ['75 worked-out', '71 worked-out', '79 worked-out', '600 × 450 inherited'];
		expect(await borders()).toEqual(worked);
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await expect.poll(borders).toEqual(worked);
	}));

test('what is half typed in a setting counts where Back leaves it, once', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await openSettings(page, 'Mount and window');
		const warned: string[] = [];
		page.on('console', (message) => warned.push(message.text()));
		const border = page.getByRole('textbox', { name: 'Border', exact: true });
		await border.fill('70');
		await page.evaluate(() => (location.hash = 'boards')); // as Back does, which moves no focus
		await border.waitFor({ state: 'detached' });
		await page.goBack();
		await border.waitFor();
		expect([await border.inputValue(), warned]).toEqual(['70', []]);
		await page.getByRole('button', { name: /^Undo: change border/ }).click();
		await expect.poll(() => border.inputValue()).toBe('');
		page.removeAllListeners('console');
	}));

test('undo takes a setting back', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		const before = await seen(page, 0, 'side');
		await openSettings(page, 'Mount and window');
		await page.getByRole('combobox', { name: 'Mount size' }).fill('600 x 450');
		await press(page, 'Tab');
		expect(await page.getByRole('combobox', { name: 'Mount size' }).inputValue()).toBe('600 x 450');
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload(); // undo is there again after that
		await page.getByRole('button', { name: /^Undo: change mount size/ }).click();
		await expect.poll(() => page.getByRole('combobox', { name: 'Mount size' }).inputValue()).toBe('');
		await page.getByRole('link', { name: 'Prints', exact: true }).click();
		await expect.poll(() => seen(page, 0, 'side')).toBe(before);
	}));

test('with inches a ruler of inches is offered; taken, unit and ruler are one step to undo', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await openSettings(page, 'Name and units');
		const chosen = (name: string) => page.getByRole('radio', { name, exact: true }).isChecked();
		await page.getByRole('radio', { name: 'inches' }).click();
		await page.getByText('1 print has numbers without a unit, such as 300.').waitFor();
		await page.getByRole('button', { name: 'Cancel' }).click();
		expect([await chosen('mm'), await chosen('inches')]).toEqual([true, false]);
		await page.getByRole('radio', { name: 'inches' }).click();
		await page.getByRole('button', { name: 'Keep the sizes, show them in inches' }).click();
		await page.getByText('The ruler is still 1 mm.').waitFor();
		expect(await chosen('1 mm')).toBe(true);
		await page.getByRole('button', { name: 'Use 1/16 in with inches' }).click();
		await expect.poll(() => chosen('1/16 in')).toBe(true);
		expect([await chosen('inches'), await page.getByText('The ruler is still').count()]).toEqual([true, 0]);
		await page.getByRole('radio', { name: 'cm', exact: true }).check();
		await page.getByRole('button', { name: 'Use 1 mm with cm' }).waitFor(); // every number has its unit now: nothing to ask
		await page.getByRole('button', { name: 'Undo: change unit' }).click();
		await page.getByRole('button', { name: 'Undo: change unit and ruler' }).click();
		await expect.poll(() => chosen('mm')).toBe(true);
		expect(await chosen('1 mm')).toBe(true);
	}));

test('what cannot be read as a setting is told beside its field, and the default holds', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await openSettings(page, 'Mount and window');
		const border = page.getByRole('textbox', { name: 'Border', exact: true });
		await border.fill('wide');
		await press(page, 'Tab');
		await page.getByRole('alert').waitFor();
		expect(await page.getByRole('alert').innerText()).toContain('wide');
		expect([await border.getAttribute('aria-invalid'), await border.inputValue()]).toEqual(['true', 'wide']);
		await border.fill('');
		await press(page, 'Tab');
		expect(await page.getByRole('alert').count()).toBe(0);
		expect(await border.getAttribute('placeholder')).toBe('65 mm');
	}));

test('a size given a name can be typed by it; another unit changes no size', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await openSettings(page, 'Mount and window');
		await page.getByRole('textbox', { name: 'Name, new size' }).fill('Oak');
		await page.getByRole('textbox', { name: 'Width, new size' }).fill('60 x 45 cm');
		await press(page, 'Tab');
		await page.getByRole('button', { name: 'Add size' }).click();
		await page.getByRole('combobox', { name: 'Mount size' }).fill('oak');
		await press(page, 'Tab');
		await openSettings(page, 'Name and units');
		await page.getByRole('radio', { name: 'inches' }).click();
		await page.getByRole('button', { name: 'Keep the sizes, show them in inches' }).click();
		await page.getByRole('link', { name: 'Prints', exact: true }).click();
		await page.getByRole('columnheader', { name: 'Picture width, in' }).waitFor();
		expect(await seenIn(page, 0, 'mount', 'picture width')).toEqual(['Oak inherited', '11 13/16 typed']);
	}));
