import { expect, test } from 'vitest';
import { oneStage } from '../screens/oneStage.ts';
import { cell, press, seen } from '../screens/prints.ts';

const play = oneStage({ reducedMotion: 'reduce' });

test('the example from frame and paper to what to get: given frames, bound by its paper, printed, planned, sawn, shared', () =>
	play(async (page) => {
		const goTo = (place: string) =>
			page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: place, exact: true }).click();
		const planned = () => page.getByText('Working out the plans…').waitFor({ state: 'detached' });
		await page.getByRole('button', { name: 'Load the example' }).click();

		// Frames given out to those that name none, all of them in one step, and taken back.
		await goTo('Whole show');
		await page.getByRole('link', { name: 'Frames for all prints' }).click();
		await page.getByRole('button', { name: 'Find frames' }).click();
		await page.getByText('22 of 25 prints keep their frame and size. Their mount follows').waitFor();
		await page.getByText('No other choice frames more prints or changes their pictures less.').waitFor();
		// One tick for all of a frame, and one for each print of it.
		const small = page.getByRole('checkbox', { name: /^Apply to 6 prints in Small oak, 520 × 420 mm/ });
		await small.uncheck();
		await page.getByRole('button', { name: 'Apply to 16 prints' }).waitFor();
		await page.locator('summary').filter({ hasText: 'Small oak' }).click();
		await page.getByRole('checkbox', { name: 'Apply to 4 Two gulls arguing' }).check();
		await page.getByRole('button', { name: 'Apply to 17 prints' }).waitFor();
		expect(await small.evaluate((box: HTMLInputElement) => box.indeterminate)).toBe(true);
		await small.check();
		await page.getByRole('button', { name: 'Apply to 22 prints' }).click();
		await page.getByText('22 prints changed.').waitFor();
		await goTo('Prints');
		expect([await seen(page, 0, 'frame'), await seen(page, 0, 'mount')]).toEqual(['Large oak typed', 'frame typed']);
		await page.getByRole('button', { name: /^Undo/ }).click();
		await expect.poll(() => seen(page, 0, 'mount')).not.toBe('frame typed');

		// A smaller paper bounds the picture of the first print, says so, and is taken back too: 297 wide, no margin known.
		await cell(page, 0, 'paper').click();
		await page.keyboard.type('A4');
		await press(page, 'Enter');
		await expect.poll(() => seen(page, 0, 'picture width')).toBe('297 worked-out');
		await cell(page, 0, 'paper').click();
		await page
			.getByText(/^The picture could be [\d.]+ × [\d.]+ mm, but the paper has room for 297 × 210 mm/)
			.first()
			.waitFor();
		await page.getByRole('button', { name: /^Undo/ }).click();
		await expect.poll(() => seen(page, 0, 'picture width')).toBe('548 worked-out');

		await goTo('Boards');
		for (const name of ['Chalk', 'Greyback', 'Clear glass', 'Clear acrylic', 'Backing board'])
			await page
				.getByRole('region', { name: new RegExp(`^${name}`) })
				.first()
				.getByText(/^No (cheaper plan exists|plan uses fewer sheets)/)
				.waitFor();

		await goTo('To get');
		await planned();
		await page.getByRole('heading', { name: /^Total [\d.]+ EUR$/ }).waitFor();
		const shares = await page.locator('.shares > li').allInnerTexts();
		expect(shares.map((share) => share.split(':')[0])).toEqual(['Ilse Tarnow', 'Jonah Wickstrand']);
		const minorUnits = (words: string) => Math.round(Number(/\d+\.\d\d/.exec(words)![0]) * 100);
		const total = await page.getByRole('heading', { name: /^Total/ }).innerText();
		expect(shares.reduce((sum, share) => sum + minorUnits(share), 0)).toBe(minorUnits(total));
		await page.getByRole('heading', { name: /^Ash moulding, \d+ lengths?$/ }).waitFor();

		await page.getByRole('link', { name: 'Pictures to print' }).first().click();
		for (const name of [/^Cotton A2/, /^Cotton A3.*deckle edge/, /^Satin A3\+/, /^Satin roll.*roll/])
			await page.getByRole('heading', { name }).waitFor();
		await page.getByRole('link', { name: 'Print on paper' }).click();
		await page.locator('article').first().waitFor();
		expect(await page.getByRole('checkbox', { name: /^Pictures to print/ }).isChecked()).toBe(true);
	}));
