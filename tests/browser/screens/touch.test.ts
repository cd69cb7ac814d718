import { expect, test } from 'vitest';
import { coverAllBut } from '../grid/fingers.ts';
import { axeProblems } from '../harness/axe.ts';
import { landscapeTablet, onStage, uprightTablet } from '../harness/stage.ts';
import { at, cell, inHand, paste, press, seen, startTyping } from './prints.ts';

test('a tap takes a cell, a second tap opens it, a tap elsewhere keeps what was typed', () =>
	onStage({ hasTouch: true }, async (stage) => {
		const page = await stage.openApp();
		await page.getByRole('button', { name: 'Start typing' }).tap();
		await cell(page, 0, 'picture width').tap();
		expect(await inHand(page)).toBe(at(0, 'picture width'));
		const editor = page.getByRole('textbox', { name: 'Picture width, row 1' });
		expect(await editor.count()).toBe(0);
		await cell(page, 0, 'picture width').tap();
		expect(await editor.evaluate((input) => document.activeElement === input)).toBe(true);
		expect(await editor.getAttribute('inputmode')).toBe('decimal');
		expect(await editor.evaluate((input) => parseFloat(getComputedStyle(input).fontSize))).toBeGreaterThanOrEqual(16);
		await page.keyboard.type('30');
		await page.getByRole('button', { name: 'cm', exact: true }).tap(); // which a keypad of figures lacks
		expect(await editor.inputValue()).toBe('30cm');
		await cell(page, 0, 'picture height').tap();
		expect(await seen(page, 0, 'picture width')).toBe('300 typed');
		expect(await inHand(page)).toBe(at(0, 'picture height'));
		await page.getByRole('button', { name: 'Add print' }).tap();
		expect(await inHand(page)).toBe(at(1, 'picture height'));
		await page.getByRole('button', { name: 'This print…' }).tap();
		await page.getByRole('menuitem', { name: 'Move up' }).tap();
		await expect.poll(() => seen(page, 1, 'picture width')).toBe('300 typed');
	}));

test('a long press opens the row menu', () =>
	onStage({ hasTouch: true }, async (stage) => {
		const page = await stage.openApp();
		await startTyping(page);
		const box = (await cell(page, 0, 'title').boundingBox())!;
		const debug = await stage.context.newCDPSession(page);
		const touchPoints = [{ x: box.x + 20, y: box.y + 20 }];
		await debug.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
		await page.getByRole('menuitem', { name: 'Duplicate' }).waitFor();
		await debug.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
		expect(await page.getByRole('menu').count(), 'lifting the finger leaves it open').toBe(1);
	}));

test('a phone shows one print at a time, with the same cells', () =>
	onStage({ viewport: { width: 390, height: 844 }, hasTouch: true }, async (stage) => {
		const page = await stage.openApp();
		await page.getByRole('button', { name: 'Start typing' }).tap();
		await page.getByRole('textbox', { name: /^Picture width/ }).fill('456 x 306');
		await press(page, 'Tab');
		expect(await page.getByRole('textbox', { name: /^Picture height/ }).inputValue()).toBe('306');
		expect(await page.getByRole('textbox', { name: /^Window width/ }).getAttribute('placeholder')).toBe('450');
		await page.getByRole('button', { name: 'Add print' }).tap();
		await page.getByText('Print 2 of 2').waitFor();
		await page.getByRole('button', { name: 'Before' }).tap();
		expect(await page.getByRole('textbox', { name: /^Picture width/ }).inputValue()).toBe('456');
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
		expect(await axeProblems(page)).toEqual([]);
	}));

test('on a phone one reads, corrects and ticks: found by words, mended, typed with keys of our own, cut', () =>
	onStage({ viewport: { width: 390, height: 844 }, hasTouch: true, reducedMotion: 'reduce' }, async (stage) => {
		const page = await stage.openApp();
		await page.getByRole('button', { name: 'Load the example' }).tap();
		await page.getByRole('button', { name: 'Close' }).first().tap();
		await page.getByRole('searchbox', { name: 'Find prints' }).tap();
		await page.keyboard.insertText('rope');
		await page.getByText('Print 1 of 2').waitFor();
		await page.getByRole('heading', { name: '10 Rope, coiled' }).waitFor();
		const width = page.getByRole('textbox', { name: /^Picture width/ });
		await width.tap();
		expect(await width.getAttribute('inputmode')).toBe('decimal');
		await coverAllBut(page, 500);
		const isSeen = async () => {
			const keys = (await page.getByRole('toolbar', { name: 'Keys for lengths' }).boundingBox())!;
			const box = (await width.boundingBox())!;
			return box.y > 60 && box.y + box.height <= keys.y && keys.y + keys.height <= 501;
		};
		await expect.poll(isSeen).toBe(true);
		const foot = page.getByRole('toolbar', { name: 'Prints' });
		expect(await foot.isVisible(), 'the keyboard has the room of the foot').toBe(false);
		expect(await axeProblems(page)).toEqual([]);
		await width.fill('31');
		await page.getByRole('button', { name: 'cm', exact: true }).tap();
		await coverAllBut(page, 844);
		expect(await foot.isVisible()).toBe(true);
		await page.waitForTimeout(350); // the page is laid out anew, and a touch sooner may go beside what it was meant for
		await page.getByRole('button', { name: 'Next' }).tap();
		await page.getByRole('button', { name: 'Before' }).tap();
		expect(await width.inputValue()).toBe('31cm');
		await page.getByRole('searchbox', { name: 'Find prints' }).fill('');
		await page.getByRole('button', { name: 'Filter' }).tap();
		await page.getByRole('combobox', { name: 'What to know' }).selectOption('look');
		await page.getByText(/Print \d of 5/).waitFor();
		await page.getByRole('button', { name: 'Accept as it is' }).first().tap();
		await page.getByRole('link', { name: 'Bench', exact: true }).tap();
		await page.getByRole('link', { name: 'Go to the bench' }).tap();
		const ticks = page.locator('main [aria-pressed=false]');
		for (let turn = 0; turn < 9 && (await ticks.count()) === 0; turn++)
			await page.getByRole('button', { name: 'Next' }).first().tap();
		const before = await ticks.count();
		await ticks.first().tap();
		await expect.poll(() => ticks.count()).toBe(before - 1);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
	}));

test.each([
	{ name: 'landscape, light', viewport: landscapeTablet, colorScheme: 'light' as const },
	{ name: 'upright, dark', viewport: uprightTablet, colorScheme: 'dark' as const },
])(
	'$name: what can be tapped is 44 px on every screen, and axe finds nothing in a bad entry',
	({ viewport, colorScheme }) =>
		onStage({ viewport, colorScheme, reducedMotion: 'reduce' }, async (stage) => {
			const page = await stage.openApp();
			const wrong: string[] = [];
			const look = async (screen: string) => {
				const small = await page.evaluate(() =>
					[...document.querySelectorAll<HTMLElement>('button, a, input:not([type=radio]), [role=menuitem], [data-row]')]
						.filter((each) => each.closest('[role=grid] .head') === null)
						.map((each) => ({ each, box: each.getBoundingClientRect() }))
						.filter(({ box }) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
						.map(({ each, box }) => `${each.outerHTML.slice(0, 90)} is ${box.width} x ${box.height}`),
				);
				wrong.push(...small.slice(0, 8).map((problem) => `${screen}: ${problem}`));
			};
			await look('empty');
			await startTyping(page);
			await press(page, 'Home');
			await paste(
				page,
				'1\tLow water\t\t456\t306\n2\tSalt road\t3:2\n3\tKiln door\t\tabc\t306\n4\tTar\t\t640\t480\n5\tFog',
			);
			await cell(page, 4, 'title').waitFor();
			await look('prints');
			await cell(page, 0, 'picture width').click();
			await page.keyboard.type('4x');
			await press(page, 'Enter');
			await page.getByRole('button', { name: 'Keep as typed' }).waitFor();
			await look('error');
			wrong.push(...(await axeProblems(page)));
			await press(page, 'Escape', 'Shift+F10');
			await look('menu');
			await press(page, 'Escape');
			await page.getByRole('button', { name: /to stop for/ }).click();
			await look('list');
			await page.getByRole('button', { name: 'Files' }).click();
			await look('files');
			await page.getByRole('button', { name: 'Files' }).click();
			await cell(page, 0, 'title').click();
			await press(page, '?');
			await look('keys');
			await press(page, 'Escape');
			await page.getByRole('link', { name: 'Settings' }).click();
			await page.getByRole('heading', { name: 'Settings of the show' }).waitFor();
			await look('settings');
			await page.getByRole('link', { name: 'Bench' }).click();
			await page.getByRole('heading', { name: 'Before you cut' }).waitFor();
			await look('bench');
			expect(wrong).toEqual([]);
		}),
);
