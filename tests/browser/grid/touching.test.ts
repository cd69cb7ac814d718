import { expect, test } from 'vitest';
import { axeProblems } from '../harness/axe.ts';
import { resize } from '../harness/resize.ts';
import { landscapeTablet, uprightTablet } from '../harness/stage.ts';
import { oneStage } from '../screens/oneStage.ts';
import { activeCell, at, cell, press, seen, seenIn, withPrints } from '../screens/prints.ts';
import { grip, said, selected, withNumbered } from './cells.ts';
import { coverAllBut, fingerOn, tapUntil, uncover } from './fingers.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true, hasTouch: true, reducedMotion: 'reduce' });
const handle = (name: 'start' | 'end' | 'fill') => `[data-handle="${name}"]`;

test('handles draw the selection larger and smaller and fill from it; each can be touched on 44 px and shows a small mark', () =>
	play(async (page, stage) => {
		const finger = await fingerOn(page, stage);
		await withNumbered(page, 8);
		await cell(page, 2, 'picture width').tap();
		await page.keyboard.type('300');
		await press(page, 'F2');
		await finger.draw(page.locator(handle('fill')), cell(page, 5, 'picture width'));
		await expect
			.poll(() => Promise.all([3, 4, 5, 6].map((row) => seen(page, row, 'picture width'))))
			.toEqual(['300 typed', '300 typed', '300 typed', '376 worked-out']);
		const isUndone = async () => (await seen(page, 4, 'picture width')) === '376 worked-out';
		await tapUntil(page.getByRole('button', { name: 'Undo' }), isUndone);

		await finger.draw(page.locator(handle('end')), cell(page, 4, 'window width'));
		await expect.poll(() => selected(page)).toBe('2 picture width to 4 window width');
		await finger.draw(page.locator(handle('start')), cell(page, 3, 'picture height'));
		await expect.poll(() => selected(page)).toBe('3 picture height to 4 window width');
		const sizes = await page.locator('[data-handle]').evaluateAll((all) =>
			all.map((each) => {
				const mark = getComputedStyle(each, '::before');
				return [each.clientWidth, each.clientHeight, mark.width, mark.height];
			}),
		);
		expect(sizes).toEqual([1, 2, 3].map(() => [44, 44, '14px', '14px']));
	}));

test.each([
	{ held: 'landscape', viewport: landscapeTablet, last: 'Bottom border, mm' },
	{ held: 'upright', viewport: uprightTablet, last: 'Mount size' },
])('on a tablet held $held all columns up to $last are in view, their heads whole', ({ viewport, last }) =>
	play(async (page) => {
		await resize(page, viewport);
		await page.getByRole('button', { name: 'Load the example' }).tap();
		await cell(page, 0, 'title').waitFor();
		const cut = await page.getByRole('grid').evaluate((grid: HTMLElement, last) => {
			const heads = [...grid.querySelectorAll<HTMLElement>('[role=columnheader]:has(.word)')];
			const end = heads.findIndex(({ innerText }) => innerText.endsWith(last));
			const edge = grid.getBoundingClientRect().left + grid.clientWidth;
			const isCut = (head: HTMLElement) => {
				const word = head.querySelector<HTMLElement>('.word')!;
				return head.getBoundingClientRect().right > edge + 1 || word.scrollWidth > word.clientWidth;
			};
			return end < 9
				? ['not there']
				: heads
						.slice(0, end + 1)
						.filter(isCut)
						.map(({ innerText }) => innerText);
		}, last);
		expect(cut).toEqual([]);
		const shapes = page.locator('[role=row] [role=gridcell][data-column="2"]');
		await expect.poll(() => shapes.count(), { message: 'rows come a few at a time' }).toBeGreaterThan(5);
		const short = await shapes.evaluateAll((all) =>
			all.filter((each) => each.scrollWidth > each.clientWidth).map((each) => each.textContent),
		);
		expect(short, 'shapes cut short').toEqual([]);
	}),
);

test('a handle that is not drawn lets the tap through to the cell that it lies over', () =>
	play(async (page) => {
		await withNumbered(page, 5);
		await cell(page, 1, 'picture width').tap();
		const box = (await page.locator(handle('end')).boundingBox())!;
		await page.touchscreen.tap(box.x + 24, box.y + 24);
		await expect.poll(() => activeCell(page)).toBe(at(2, 'picture height'));
		const own = (await cell(page, 2, 'picture height').boundingBox())!;
		await page.touchscreen.tap(own.x + own.width - 6, own.y + own.height - 6); // its own handle lies there
		await page.getByRole('textbox', { name: 'Picture height, row 3' }).waitFor();
	}));

test('a long press opens the menu of the row, and on a head that of the column; lifting the finger leaves it open', () =>
	play(async (page, stage) => {
		const finger = await fingerOn(page, stage);
		await withNumbered(page, 4);
		await finger.hold(cell(page, 1, 'title'), page.getByRole('menuitem', { name: 'Duplicate' }));
		expect(await page.getByRole('menu', { name: '2 Print 2' }).count()).toBe(1);
		await page.getByRole('menuitem', { name: 'Move up' }).tap();
		await expect.poll(() => seen(page, 0, 'title')).toBe('Print 2 typed');
		await finger.hold(cell(page, -1, 'shape'), page.getByRole('menuitem', { name: 'Sort, smallest first' }));
		await page.getByRole('menuitem', { name: 'Hide' }).tap();
		await expect.poll(() => page.getByRole('columnheader', { name: 'Shape', exact: true }).count()).toBe(0);
	}));

test('rows and columns are taken by a tap, carried by a second touch, and a column’s edge is drawn', () =>
	play(async (page, stage) => {
		const finger = await fingerOn(page, stage);
		await withNumbered(page, 5);
		await grip(page, 1).tap(); // moves nothing
		expect(await seen(page, 1, 'number')).toBe('2 typed');
		await cell(page, 0, 'title').tap();
		await finger.draw(grip(page, 1), grip(page, 3)); // though its row is not selected
		await expect.poll(() => seen(page, 1, 'number')).toBe('3 typed');
		const head = (name: string) => page.getByRole('columnheader', { name, exact: true });
		await head('Shape').tap();
		const edge = page.locator('[data-edge].held');
		await edge.waitFor(); // only a head that is selected is carried; a finger on any other scrolls
		await finger.draw(head('Shape'), head('Window width, mm'));
		await expect.poll(() => head('Shape').getAttribute('aria-colindex')).toBe('5');
		const before = (await head('Shape').boundingBox())!.width;
		const box = (await edge.boundingBox())!;
		expect([box.width, box.height]).toEqual([44, 44]);
		await finger.down(box.x + 22, box.y + 20);
		await finger.to(box.x + 52, box.y + 20);
		await finger.to(box.x + 62, box.y + 20);
		await finger.up();
		await expect.poll(async () => (await head('Shape').boundingBox())!.width).toBe(before + 40);
		await head('Shape').tap();
		await page.getByRole('menuitem', { name: 'Narrower' }).tap();
		await expect.poll(async () => (await head('Shape').boundingBox())!.width).toBe(before + 28);
	}));

test('a keyboard that covers half the page never covers the active cell, and a row of keys stands above it', () =>
	play(async (page) => {
		await resize(page, { width: 820, height: 1180 });
		await withNumbered(page, 40);
		await press(page, 'Control+End', 'Home', 'ArrowRight', 'ArrowRight', 'ArrowRight');
		await cell(page, 39, 'picture width').tap();
		await coverAllBut(page, 620);
		const editor = page.getByRole('textbox', { name: 'Picture width, row 40' });
		const isClear = async () => {
			const box = (await editor.boundingBox())!;
			const keys = (await page.getByRole('toolbar', { name: 'Keys for lengths' }).boundingBox())!;
			return box.y + box.height <= keys.y + 1 && keys.y + keys.height <= 621;
		};
		await expect.poll(isClear).toBe(true);
		expect(await editor.getAttribute('inputmode')).toBe('decimal');
		await page.keyboard.type('12');
		for (const key of ['½', 'space', 'in']) await page.getByRole('button', { name: key, exact: true }).tap();
		await expect.poll(() => editor.inputValue()).toBe('12½ in');
		expect(await editor.evaluate((input) => document.activeElement === input), 'the keyboard stays').toBe(true);
		await page.getByRole('button', { name: 'Enter and go right' }).tap();
		await expect.poll(() => seen(page, 39, 'picture width')).toBe('317.5 typed');
		const next = page.getByRole('textbox', { name: 'Picture height, row 40' });
		expect(await next.evaluate((input) => document.activeElement === input)).toBe(true);
		expect(await axeProblems(page)).toEqual([]);
		await page.keyboard.type('210');
		await page.keyboard.press('Enter'); // what the keyboard calls Next
		expect(await seen(page, 39, 'picture height')).toBe('210 typed');
		expect(await activeCell(page)).toBe(at(39, 'window width'));
		const keys = page.getByRole('toolbar', { name: 'Keys for lengths' });
		await press(page, 'Escape');
		for (const touch of ['click', 'tap', 'click'] as const) {
			const width = cell(page, touch === 'tap' ? 38 : 39, 'picture width');
			for (const _time of ['select', 'edit']) await width[touch]();
			await page.getByRole('textbox', { name: /^Picture width, row/ }).waitFor();
			expect(await keys.count(), `keys for a ${touch}`).toBe(touch === 'tap' ? 1 : 0);
			await press(page, 'Escape');
		}
		await uncover(page);
	}));

test('copy, cut and paste by buttons keep what was typed and what was not; refused, it is said and nothing is lost', () =>
	play(async (page, stage) => {
		const { origin } = new URL(stage.address);
		await stage.context.grantPermissions(['clipboard-read', 'clipboard-write'], { origin });
		await withPrints(page, [
			['Low water', '300', '200'],
			['Salt road', '310', '210'],
		]);
		const button = (name: string) => page.getByRole('button', { name, exact: true });
		await cell(page, 0, 'picture width').tap();
		await press(page, 'Shift+ArrowRight', 'Shift+ArrowRight');
		await button('Copy').tap();
		await expect.poll(() => said(page)).toBe('Copied: 3 cells');
		expect(await page.evaluate(() => navigator.clipboard.readText())).toBe('300\t200\t294\n');
		await cell(page, 1, 'picture width').tap();
		await button('Paste').tap();
		await expect
			.poll(() => seenIn(page, 1, 'picture width', 'picture height', 'window width'))
			.toEqual([...['300 typed', '200 typed', '294 worked-out']]);
		await button('Cut cells').tap();
		await expect.poll(() => seen(page, 1, 'picture width')).not.toContain('typed');
		await page.evaluate(() => navigator.clipboard.writeText('45 cm'));
		await cell(page, 0, 'picture width').tap();
		await button('Paste').tap();
		await expect.poll(() => seen(page, 0, 'picture width')).toBe('450 typed');

		await stage.context.clearPermissions();
		await page.evaluate(() => {
			const refuse = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
			Object.assign(navigator.clipboard, { read: refuse, readText: refuse, writeText: refuse });
		});
		await button('Paste').tap();
		await page.getByText('did not let the app see what was copied').first().waitFor();
		await button('Cut cells').tap();
		await page.getByText('did not let the app copy').first().waitFor();
		expect(await seen(page, 0, 'picture width'), 'nothing is cut that was not copied').toBe('450 typed');
		expect(await axeProblems(page)).toEqual([]);
	}));

test('what can be touched in the grid and over it is 44 px high and wide', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await page.getByRole('button', { name: 'Filter' }).tap();
		const small = () =>
			page
				.locator(
					'main button, main select, main input:not([type=radio], [type=checkbox]), main label.column, [role=grid] [data-row], [data-handle]',
				)
				.evaluateAll((all) =>
					all
						.map((each) => ({ each, box: each.getBoundingClientRect() }))
						.filter(({ box }) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
						.map(({ each, box }) => `${each.outerHTML.slice(0, 80)} is ${box.width} x ${box.height}`),
				);
		await cell(page, 0, 'picture width').tap();
		expect(await small()).toEqual([]);
		await page.getByRole('button', { name: 'Columns' }).tap();
		await cell(page, 0, 'picture width').tap();
		await cell(page, 0, 'picture width').tap();
		await page.getByRole('toolbar', { name: 'Keys for lengths' }).waitFor();
		expect(await small()).toEqual([]);
	}));

// The last: the page stays enlarged.
test('two fingers enlarge the page, which is not laid out again, and select nothing', () =>
	play(async (page, stage) => {
		await withNumbered(page, 20);
		await cell(page, 1, 'title').tap();
		const height = () => page.evaluate(() => document.getElementById('app')!.offsetHeight);
		const before = await height();
		const box = (await page.getByRole('grid').boundingBox())!;
		await (await fingerOn(page, stage)).pinch(box.x + 300, box.y + 300);
		await expect.poll(() => page.evaluate(() => window.visualViewport!.scale)).toBeGreaterThan(1.2);
		expect(await height()).toBe(before);
		expect([await activeCell(page), await selected(page)]).toEqual([at(1, 'title'), '1 title to 1 title']);
		expect(await page.getByRole('textbox', { name: /row/ }).count()).toBe(0);
	}));
