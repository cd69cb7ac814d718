import { expect, test } from 'vitest';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import { withNumbered } from '../grid/cells.ts';
import { painted, resize } from '../harness/resize.ts';
import { oneStage } from './oneStage.ts';
import { activeCell, at, cell, paste, press, seen, seenIn, startTyping, withPrints } from './prints.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });

const three = [
	['Low water', '300', '200'],
	['Salt road', '310', '210'],
	['Kiln door', '320', '220'],
] as const;

const titles = (page: Parameters<typeof seen>[0], count: number) =>
	Promise.all(Array.from({ length: count }, (_, row) => seen(page, row, 'title')));

test('arrows, Home, End and pages go where they should and stop at the edges; one cell can be tabbed to', () =>
	play(async (page) => {
		await withNumbered(page, 60);
		expect(await activeCell(page)).toBe(at(0, 'number'));
		await press(page, 'ArrowLeft');
		expect(await activeCell(page)).toBe(at(0, 'number'));
		await press(page, 'ArrowRight', 'ArrowDown');
		expect(await activeCell(page)).toBe(at(1, 'title'));
		await press(page, 'ArrowUp', 'ArrowUp', 'ArrowUp');
		expect(await activeCell(page), 'up from the first row: the head').toBe(at(-1, 'title'));
		await press(page, 'ArrowDown', 'End');
		expect(await activeCell(page)).toBe(at(0, 'note'));
		await press(page, 'Control+End');
		expect(await activeCell(page)).toBe(at(59, 'note'));
		await press(page, 'ArrowRight', 'ArrowDown');
		expect(await activeCell(page), 'nothing wraps').toBe(at(59, 'note'));
		await press(page, 'Control+Home');
		const whole = await page.getByRole('grid').evaluate((grid) => {
			const [{ top }, head] = [grid.getBoundingClientRect(), grid.firstElementChild!.getBoundingClientRect()];
			const isWhole = (box: DOMRect) => box.top >= head.bottom && box.bottom <= top + grid.clientHeight;
			return [...grid.querySelectorAll('.body [role=row]')].filter((row) => isWhole(row.getBoundingClientRect()))
				.length;
		});
		await press(page, 'PageDown');
		expect(await activeCell(page), 'the last that was wholly seen').toBe(at(whole - 1, 'number'));
		await press(page, 'PageUp');
		expect(await activeCell(page)).toBe(at(0, 'number'));
		expect(await page.locator('[role=grid] [tabindex="0"]').count()).toBe(1);
		const grid = page.getByRole('grid');
		const counts = [await grid.getAttribute('aria-rowcount'), await grid.getAttribute('aria-colcount')];
		expect(counts).toEqual(['62', `${gridColumns.length}`]);
	}));

test('every active cell is wholly in view, clear of the head and of the frozen columns', () =>
	play(async (page) => {
		await resize(page, { width: 820, height: 600 });
		await startTyping(page);
		await paste(page, Array.from({ length: 40 }, (_, index) => `Print ${index + 1}`).join('\n'));
		for (const key of ['Control+End', 'Home', 'Control+Home', 'End', 'PageDown', 'ArrowLeft', 'ArrowLeft', 'PageUp']) {
			await press(page, key);
			await painted(page);
			const isClear = await page.evaluate(() => {
				const box = document.activeElement!.getBoundingClientRect();
				const corners = [
					[box.left + 3, box.top + 3],
					[box.right - 3, box.bottom - 3],
				] as const;
				return corners.every(
					([x, y]) =>
						document
							.elementsFromPoint(x, y)
							.find((each) => !each.matches('[data-handle]'))
							?.closest('[data-row]') === document.activeElement,
				);
			});
			expect(isClear, key).toBe(true);
		}
		const across = () => page.getByRole('grid').evaluate((grid) => grid.scrollLeft);
		for (const key of ['Home', 'Control+Home', 'Shift+Home']) {
			await press(page, 'Control+End');
			expect(await across()).toBeGreaterThan(500);
			await press(page, key);
			expect(await across(), `${key} scrolls back sideways`).toBe(0);
		}
	}));

test('with half the page covered by a keyboard the active cell stays in view', () =>
	play(async (page) => {
		await resize(page, { width: 820, height: 1180 });
		await startTyping(page);
		await paste(page, Array.from({ length: 20 }, (_, index) => `Print ${index + 1}`).join('\n'));
		await press(page, 'Control+End', 'Home', 'F2');
		await resize(page, { width: 820, height: 590 });
		await expect
			.poll(() =>
				page.evaluate(() => {
					const box = document.activeElement!.getBoundingClientRect();
					return document.elementFromPoint(box.left + 5, box.bottom - 5) === document.activeElement;
				}),
			)
			.toBe(true);
	}));

test('the active cell keeps the focus while the grid is scrolled away from it', () =>
	play(async (page) => {
		await startTyping(page);
		await paste(page, Array.from({ length: 300 }, (_, index) => `Print ${index + 1}`).join('\n'));
		await press(page, 'Control+Home', 'ArrowDown', 'ArrowRight');
		const grid = page.getByRole('grid');
		await grid.evaluate((element) => (element.scrollTop = 9000));
		await cell(page, 210, 'title').waitFor();
		expect(await activeCell(page)).toBe(at(1, 'title'));
		await press(page, 'ArrowDown');
		expect(await activeCell(page)).toBe(at(2, 'title'));
		expect(await grid.evaluate((element) => element.scrollTop)).toBeLessThan(200);
	}));

test('only what can be seen is in the page, with the active cell, and each cell says where it stands', () =>
	play(async (page) => {
		await startTyping(page);
		await paste(page, Array.from({ length: 300 }, (_, index) => `Print ${index + 1}`).join('\n'));
		await press(page, 'Control+Home', 'ArrowDown', 'ArrowRight', 'ArrowRight', 'ArrowRight');
		const grid = page.getByRole('grid');
		const cellCount = () => page.locator('[role=gridcell], [role=rowheader]').count();
		expect(await cellCount()).toBeLessThanOrEqual(300);
		await grid.evaluate((element) => element.scrollTo(9000, 9000));
		await page.locator(`[data-row="210"][data-column="${gridColumns.length - 1}"]`).waitFor();
		expect(await activeCell(page)).toBe(at(1, 'picture width'));
		expect(await cellCount()).toBeLessThanOrEqual(300);
		const wrong = await grid.evaluate((element) =>
			[...element.querySelectorAll<HTMLElement>('[data-row]')].filter((each) => {
				const row = Number(each.closest('[role=row]')!.ariaRowIndex) - 3;
				const { column, row: said } = each.dataset;
				return column !== `${Number(each.ariaColIndex) - 1}` || said !== `${row}`;
			}),
		);
		expect(wrong).toHaveLength(0);
		expect(await page.locator('[role=grid] [tabindex="0"]').count()).toBe(1);
		await page.keyboard.type('300');
		expect(await cell(page, 1, 'picture width').getByRole('textbox').inputValue(), 'typed into, it is there').toBe(
			'300',
		);
		await press(page, 'Enter');
		expect(await activeCell(page)).toBe(at(2, 'picture width'));
		expect(await grid.evaluate((element) => element.scrollTop + element.scrollLeft)).toBeLessThan(200);
		await grid.evaluate((element) => element.scrollTo(9000, 0));
		await press(page, 'ArrowUp', 'ArrowUp', 'ArrowUp');
		expect(await activeCell(page), 'its head too').toBe(at(-1, 'picture width'));
		await grid.evaluate((element) => element.scrollTo(9000, 0));
		await painted(page);
		expect(await activeCell(page)).toBe(at(-1, 'picture width'));
	}));

test('Enter and Tab put in and go on; Enter under the last row adds one', () =>
	play(async (page) => {
		await startTyping(page);
		await page.keyboard.type('Low water');
		await press(page, 'Enter');
		expect(await activeCell(page)).toBe(at(1, 'title'));
		await page.keyboard.type('Salt road');
		await press(page, 'Shift+Enter');
		expect(await activeCell(page)).toBe(at(0, 'title'));
		await press(page, 'Tab', 'Tab');
		await page.keyboard.type('300');
		await press(page, 'Tab');
		await page.keyboard.type('200');
		await press(page, 'Shift+Tab');
		expect(await activeCell(page)).toBe(at(0, 'picture width'));
		expect(await seenIn(page, 0, 'title', 'picture width', 'picture height')).toEqual([
			'Low water typed',
			'300 typed',
			'200 typed',
		]);
		await press(page, 'Escape', 'Tab');
		expect(await page.evaluate(() => document.activeElement?.closest('[role=grid]'))).toBeNull();
	}));

test('Tab goes on in the next row, and from the last cell of all into a row of its own; a blank one is not followed', () =>
	play(async (page) => {
		await withPrints(page, three.slice(0, 2));
		await press(page, 'Control+Home', 'End', 'Tab');
		expect(await activeCell(page)).toBe(at(1, 'number'));
		await press(page, 'Shift+Tab');
		expect(await activeCell(page)).toBe(at(0, 'note'));
		await press(page, 'Control+End');
		await page.keyboard.type('framed');
		await press(page, 'Tab');
		expect(await activeCell(page)).toBe(at(2, 'number'));
		await press(page, 'F2', 'Enter');
		expect(await activeCell(page)).toBe(at(2, 'number'));
		expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('5');
	}));

test('rows are inserted, doubled, moved and deleted by keyboard, and each is one step of undo', () =>
	play(async (page) => {
		await withPrints(page, three);
		await press(page, 'Control+Home', 'ArrowRight', 'Alt+Shift+ArrowDown');
		expect(await titles(page, 3)).toEqual(['Salt road typed', 'Low water typed', 'Kiln door typed']);
		expect(await activeCell(page), 'the focus goes with the print').toBe(at(1, 'title'));
		await press(page, 'Alt+Shift+ArrowUp');
		expect((await titles(page, 3))[0]).toBe('Low water typed');

		await press(page, 'Shift+F10');
		await page.getByRole('menuitem', { name: 'Insert above' }).waitFor();
		await press(page, 'ArrowDown', 'ArrowDown', 'Enter'); // Duplicate
		await expect
			.poll(() => titles(page, 4))
			.toEqual(['Low water typed', 'Low water typed', 'Salt road typed', 'Kiln door typed']);
		await press(page, 'Shift+F10', 'End', 'Enter'); // Delete
		await expect.poll(() => titles(page, 3)).toEqual(['Low water typed', 'Salt road typed', 'Kiln door typed']);
		await press(page, 'Control+z', 'Control+z', 'Control+z', 'Control+z');
		await expect.poll(() => titles(page, 3)).toEqual(['Low water typed', 'Salt road typed', 'Kiln door typed']);
		await press(page, 'Control+Shift+z');
		expect((await titles(page, 3))[0]).toBe('Salt road typed');
		await press(page, 'Control+y');
		expect((await titles(page, 3))[0]).toBe('Low water typed');
		await press(page, 'Shift+F10', 'Escape');
		expect(await activeCell(page), 'closed, the menu gives the focus back').toMatch(/ 1$/);
	}));

test('a selection is the rectangle that Shift extends; Delete clears it as one step, copy and paste carry it', () =>
	play(async (page) => {
		await withPrints(page, three);
		await cell(page, 0, 'picture width').click();
		await press(page, 'Shift+ArrowRight', 'Shift+ArrowDown');
		const selected = await page
			.locator('[aria-selected=true]')
			.evaluateAll((cells) =>
				cells.map((each) => `${(each as HTMLElement).dataset['row']} ${(each as HTMLElement).dataset['column']}`),
			);
		expect(selected.sort()).toEqual(
			[at(0, 'picture width'), at(0, 'picture height'), at(1, 'picture width'), at(1, 'picture height')].sort(),
		);
		const copied = await page.evaluate(() => {
			const clipboardData = new DataTransfer();
			const event = new ClipboardEvent('copy', { clipboardData, bubbles: true, cancelable: true });
			document.activeElement?.dispatchEvent(event);
			return clipboardData.getData('text/plain');
		});
		expect(copied).toBe('300\t200\n310\t210\n');
		await press(page, 'Delete');
		expect((await seenIn(page, 1, 'picture width', 'picture height')).join()).not.toContain('typed');
		expect(await seen(page, 2, 'picture width')).toBe('320 typed');
		await press(page, 'Control+z');
		expect(await seenIn(page, 1, 'picture width', 'picture height')).toEqual(['310 typed', '210 typed']);
		await cell(page, 2, 'picture width').click();
		await paste(page, copied);
		expect(await seenIn(page, 2, 'picture width', 'picture height')).toEqual(['300 typed', '200 typed']);
		expect(await seenIn(page, 3, 'picture width', 'picture height'), 'a row was added').toEqual([
			'310 typed',
			'210 typed',
		]);
	}));

test('? lists the keys', () =>
	play(async (page) => {
		await startTyping(page);
		await press(page, '?');
		const sheet = page.getByRole('dialog', { name: 'Keys' });
		await sheet.waitFor();
		const keysOf = (words: string) =>
			sheet
				.locator('dl > div, tr')
				.filter({ has: page.getByText(words, { exact: true }) })
				.locator('kbd')
				.allInnerTexts();
		expect(await keysOf('Undo, redo')).toEqual(['Ctrl Z', 'Ctrl Shift Z', 'Ctrl Y']);
		expect(await keysOf('Clear the cell, so that it is worked out')).toEqual(['Delete', 'Backspace']);
		expect(await keysOf('Delete the print')).toEqual(['Ctrl Delete', 'Ctrl Backspace']);
		expect(await keysOf('Type into it')).toEqual(['F2', 'any letter or figure']);
		expect(await keysOf('Down, up, from a selected cell')).toEqual([]);
		await sheet.getByRole('radio', { name: 'goes down' }).check();
		expect(await keysOf('Down, up, from a selected cell')).toEqual(['Enter', 'Shift Enter']);
		await sheet.getByRole('radio', { name: 'opens it' }).check();
		await press(page, 'Escape');
		expect(await activeCell(page)).toBe(at(0, 'title'));
	}));

test('a word of a list is chosen with the mouse while the focus stays in the cell', () =>
	play(async (page) => {
		await startTyping(page);
		await cell(page, 0, 'surface').click();
		await press(page, 'F2');
		const box = (await page.getByRole('option', { name: 'satin' }).boundingBox())!;
		await page.mouse.move(box.x + 20, box.y + box.height / 2);
		await page.mouse.down();
		expect(await page.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('combobox');
		await page.mouse.up();
		await expect.poll(() => seen(page, 0, 'surface')).toBe('satin typed');
		expect(await page.getByRole('option').count(), 'the list is not opened again').toBe(0);
		expect(await activeCell(page)).toBe(at(0, 'surface'));
	}));
