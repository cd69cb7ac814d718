import { expect, test } from 'vitest';
import { oneStage } from '../screens/oneStage.ts';
import { activeCell, at, cell, press, seen, startTyping, withPrints } from '../screens/prints.ts';
import { said, withNumbered } from './cells.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });
const touchPlay = oneStage({ isPlanned: false, isInOnePage: true, hasTouch: true });

test('Tab comes in at one cell, and Escape then Tab leaves it', () =>
	play(async (page) => {
		await withNumbered(page, 3);
		await press(page, 'Escape', 'Tab');
		expect(await activeCell(page)).toBe('');
		await press(page, 'Shift+Tab');
		expect(await activeCell(page), 'back at the cell that was active').toBe(at(0, 'number'));
		expect(await page.locator('[role=grid] [tabindex="0"]').count()).toBe(1);
		await press(page, 'ArrowDown', 'ArrowRight');
		expect(await page.locator('[role=grid] [tabindex="0"]').count()).toBe(1);
		await press(page, 'Tab');
		expect(await activeCell(page), 'without Escape it goes on').toBe(at(1, 'shape'));
		await press(page, 'Escape', 'Shift+Tab');
		expect(await activeCell(page), 'backwards too').toBe('');
	}));

test('Ctrl and an arrow go to the edge of what is filled', () =>
	play(async (page) => {
		await withPrints(page, [
			['Low water', '300', '200'],
			['Salt road', '310', '210'],
			['Kiln door', '', ''],
		]);
		await press(page, 'Control+Home');
		await press(page, 'Control+ArrowRight');
		expect(await activeCell(page), 'from a blank cell to the next that is filled').toBe(at(0, 'title'));
		await press(page, 'Control+ArrowDown');
		expect(await activeCell(page)).toBe(at(2, 'title'));
		await press(page, 'Control+ArrowUp', 'Control+ArrowRight');
		expect(await activeCell(page), 'over the blank shape').toBe(at(0, 'picture width'));
		await expect.poll(() => seen(page, 0, 'steps')).not.toBe('');
		await press(page, 'Control+ArrowRight');
		expect(await activeCell(page), 'what was worked out is filled too').toBe(at(0, 'steps'));
		await press(page, 'Control+Home', 'Control+Shift+ArrowDown');
		expect(await page.locator('[aria-selected=true]').count()).toBe(3);
	}));

test('the wheel goes over ten thousand rows while the active cell keeps the focus, and an arrow brings it back', () =>
	play(async (page) => {
		await withNumbered(page, 10_000);
		await press(page, 'ArrowDown', 'ArrowRight');
		const grid = page.getByRole('grid');
		const box = (await grid.boundingBox())!;
		await page.mouse.move(box.x + 300, box.y + 300);
		for (let turn = 0; turn < 8; turn++) await page.mouse.wheel(0, 50_000);
		await expect.poll(() => grid.evaluate((element) => element.scrollTop)).toBeGreaterThan(300_000);
		await expect
			.poll(() => grid.evaluate((element) => element.scrollTop + element.clientHeight > element.scrollHeight - 60_000))
			.toBe(true);
		expect(await activeCell(page)).toBe(at(1, 'title'));
		const seen = await page.evaluate(
			({ x, y }) => Number(document.elementFromPoint(x, y)?.closest<HTMLElement>('[data-row]')?.dataset['row']),
			{ x: box.x + 300, y: box.y + 300 },
		);
		expect(seen, 'the rows that are seen are in the page').toBeGreaterThan(6000);
		await press(page, 'ArrowDown');
		expect(await activeCell(page)).toBe(at(2, 'title'));
		expect(await grid.evaluate((element) => element.scrollTop)).toBeLessThan(100);
	}));

test('a swipe scrolls and selects nothing', () =>
	touchPlay(async (page, stage) => {
		await withNumbered(page, 300);
		await press(page, 'ArrowDown', 'ArrowRight');
		const grid = page.getByRole('grid');
		const box = (await grid.boundingBox())!;
		const debug = await stage.context.newCDPSession(page);
		const x = box.x + 300;
		for (let swipe = 0; swipe < 3; swipe++) {
			await debug.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y: box.y + 500 }] });
			for (let y = 480; y > 100; y -= 40)
				await debug.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [{ x, y: box.y + y }] });
			await debug.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
		}
		await expect.poll(() => grid.evaluate((element) => element.scrollTop)).toBeGreaterThan(600);
		expect(await activeCell(page)).toBe(at(1, 'title'));
		expect(await page.getByRole('textbox').count()).toBe(0);
	}));

test('the head of a column can be gone to, and selects its column', () =>
	play(async (page) => {
		await withNumbered(page, 3);
		await press(page, 'ArrowRight', 'ArrowUp');
		expect(await activeCell(page)).toBe(at(-1, 'title'));
		await press(page, 'Space');
		expect(await page.locator('[aria-selected=true]').count()).toBe(3);
		expect(await activeCell(page)).toBe(at(0, 'title'));
	}));

test('clearing a blank cell says that nothing was typed there', () =>
	play(async (page) => {
		await startTyping(page);
		await cell(page, 0, 'side').click();
		await press(page, 'Delete');
		expect(await said(page)).toBe('Nothing was typed there');
	}));
