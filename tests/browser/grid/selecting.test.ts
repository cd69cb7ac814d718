import { expect, test } from 'vitest';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import { oneStage } from '../screens/oneStage.ts';
import { activeCell, at, cell, press, seen } from '../screens/prints.ts';
import { copied, drag, grip, selected, withNumbered } from './cells.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });
const last = gridColumns.at(-1)!.key;

test('Shift and an arrow extend the selection and take it back, and what is extended to comes into view', () =>
	play(async (page) => {
		await withNumbered(page, 60);
		await press(page, 'ArrowDown', 'ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowDown', 'Shift+ArrowDown');
		expect(await selected(page)).toBe('1 title to 3 shape');
		expect(await activeCell(page), 'the first cell keeps the focus').toBe(at(1, 'title'));
		await press(page, 'Shift+ArrowUp', 'Shift+ArrowLeft', 'Shift+ArrowLeft');
		expect(await selected(page)).toBe('1 number to 2 title');
		for (let turn = 0; turn < 40; turn++) await press(page, 'Shift+ArrowDown');
		expect(await cell(page, 42, 'number').boundingBox()).not.toBeNull();
		const grid = (await page.getByRole('grid').boundingBox())!;
		const box = (await cell(page, 42, 'number').boundingBox())!;
		expect(box.y + box.height).toBeLessThanOrEqual(grid.y + grid.height + 1);
		await press(page, 'ArrowDown');
		expect(await selected(page)).toBe('2 title to 2 title');
	}));

test('Shift+click and dragging select the rectangle between two cells', () =>
	play(async (page) => {
		await withNumbered(page, 8);
		await cell(page, 1, 'picture width').click();
		await cell(page, 4, 'window height').click({ modifiers: ['Shift'] });
		expect(await selected(page)).toBe('1 picture width to 4 window height');
		expect(await activeCell(page)).toBe(at(1, 'picture width'));
		await cell(page, 0, 'title').click({ modifiers: ['Shift'] });
		expect(await selected(page), 'the corner that was begun from stays').toBe('0 title to 1 picture width');
		await drag(page, cell(page, 5, 'side'), cell(page, 2, 'shape'));
		expect(await selected(page)).toBe('2 shape to 5 side');
		expect(await activeCell(page)).toBe(at(5, 'side'));
		expect(await page.getByRole('textbox').count(), 'nothing is opened').toBe(0);
	}));

test('dragging past the edge scrolls on', () =>
	play(async (page) => {
		await withNumbered(page, 60);
		const start = (await cell(page, 0, 'title').boundingBox())!;
		await page.mouse.move(start.x + 20, start.y + 20);
		await page.mouse.down();
		await page.mouse.move(start.x + 20, start.y + 100);
		await page.mouse.move(start.x + 30, 815);
		await expect.poll(() => page.getByRole('grid').evaluate((element) => element.scrollTop)).toBeGreaterThan(400);
		await page.mouse.up();
		const texts = (await copied(page))['text/plain']!.trimEnd().split('\n');
		expect(texts.length).toBeGreaterThan(18);
		expect(texts.slice(0, 2)).toEqual(['Print 1', 'Print 2']);
		expect(await activeCell(page), 'the active cell stays').toBe(at(0, 'title'));
	}));

test('the handle of a cell that is scrolled under the columns that stay is not over them', () =>
	play(async (page) => {
		await withNumbered(page, 3);
		await cell(page, 1, 'picture width').click();
		const isOnTop = () =>
			page.locator('[data-handle]').evaluate((handle) => {
				const { x, y, width, height } = handle.getBoundingClientRect();
				const top = document.elementFromPoint(x + width / 2, y + height / 2);
				if (top === handle) return 'the handle';
				return top?.closest('[role=rowheader]') ? 'a cell that stays' : 'another';
			});
		expect(await isOnTop()).toBe('the handle');
		const [own, title] = await Promise.all(
			['picture width', 'title'].map((key) =>
				cell(page, 1, key)
					.boundingBox()
					.then((box) => box!.x + box!.width),
			),
		);
		await page.getByRole('grid').evaluate((grid, by) => grid.scrollTo(by, 0), own! - title! + 20);
		await expect.poll(isOnTop).toBe('a cell that stays');
	}));

test('while a cell is typed into no handle is over it, and afterwards neither handle nor caret is made again', () =>
	play(async (page) => {
		await withNumbered(page, 3);
		await cell(page, 1, 'picture width').click();
		const handle = await page.locator('[data-handle]').elementHandle();
		await page.keyboard.type('31');
		expect(await handle.isVisible()).toBe(false);
		await page.keyboard.press('Enter');
		expect(await handle.isVisible(), 'the same one').toBe(true);
		expect(await activeCell(page)).toBe(at(2, 'picture width'));
		expect(await page.evaluate(() => getSelection()!.type), 'no caret is looked for among the cells').toBe('None');
	}));

test('grips and heads select whole rows and columns, and so do keys', () =>
	play(async (page) => {
		await withNumbered(page, 5);
		await cell(page, 2, 'title').click();
		await grip(page, 1).click();
		expect(await selected(page)).toBe(`1 number to 1 ${last}`);
		await grip(page, 3).click({ modifiers: ['Shift'] });
		expect(await selected(page)).toBe(`1 number to 3 ${last}`);
		await grip(page, 0).click();
		await grip(page, 2).click({ modifiers: ['Shift'] });
		expect(await selected(page)).toBe(`0 number to 2 ${last}`);
		await cell(page, -1, 'picture width').click();
		expect(await selected(page)).toBe('0 picture width to 4 picture width');
		await cell(page, -1, 'window width').click({ modifiers: ['Shift'] });
		expect(await selected(page)).toBe('0 picture width to 4 window width');
		await drag(page, cell(page, -1, 'side'), cell(page, -1, 'top'));
		expect(await selected(page)).toBe('0 side to 4 top');
		await grip(page, -1).click();
		expect(await selected(page)).toBe(`0 number to 4 ${last}`);

		await cell(page, 2, 'title').click();
		await press(page, 'Shift+ArrowDown', 'Shift+Space');
		expect(await selected(page)).toBe(`2 number to 3 ${last}`);
		await cell(page, 2, 'title').click();
		await press(page, 'Shift+ArrowRight', 'Control+Space');
		expect(await selected(page)).toBe('0 title to 4 shape');
		await press(page, 'Control+a');
		expect(await selected(page)).toBe(`0 number to 4 ${last}`);
		expect(await activeCell(page)).toBe(at(2, 'title'));
		expect(await page.locator('[role=grid] [tabindex="0"]').count()).toBe(1);
	}));

test('rows that are selected are dragged to another place by their grip', () =>
	play(async (page) => {
		await withNumbered(page, 5);
		await grip(page, 1).click();
		await grip(page, 2).click({ modifiers: ['Shift'] });
		await drag(page, grip(page, 1), grip(page, 4), { x: 0.5, y: 0.9 });
		const order = () => Promise.all([0, 1, 2, 3, 4].map((row) => seen(page, row, 'number')));
		await expect.poll(order).toEqual(['1 typed', '4 typed', '5 typed', '2 typed', '3 typed']);
		expect(await selected(page), 'the selection goes with them').toBe(`3 number to 4 ${last}`);
		await press(page, 'Control+z');
		await expect.poll(order).toEqual(['1 typed', '2 typed', '3 typed', '4 typed', '5 typed']);
		expect(await selected(page)).toBe(`1 number to 2 ${last}`);

		await cell(page, 3, 'title').click();
		await drag(page, grip(page, 4), grip(page, 0), { x: 0.5, y: 0.1 });
		await expect
			.poll(order, { message: 'a row that was not selected goes by its grip too' })
			.toEqual(['5 typed', '1 typed', '2 typed', '3 typed', '4 typed']);
		await grip(page, 2).click();
		await expect
			.poll(order, { message: 'a click moves nothing' })
			.toEqual(['5 typed', '1 typed', '2 typed', '3 typed', '4 typed']);
		expect(await selected(page)).toBe(`2 number to 2 ${last}`);
	}));
