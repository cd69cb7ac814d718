import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { hangingCautions } from '../../../src/core/walls/wallWords.ts';
import { fingerOn, tapUntil } from '../grid/fingers.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { openFirstShow, showOf } from '../harness/openShow.ts';
import { resize } from '../harness/resize.ts';
import { phone } from '../harness/stage.ts';
import { oneStage } from '../screens/oneStage.ts';

const withFinger = oneStage({ isPlanned: false, isInOnePage: true, hasTouch: true, reducedMotion: 'reduce' });
// Where a print is drawn is measured to the pixel.
const withKeys = oneStage({ isPlanned: false, isInOnePage: true, reducedMotion: 'reduce', isSharp: true });

/** A show of six prints, 500 × 400 without frames, and two walls: three hang on North, three nowhere. */
const show = showOf(
	'Low water',
	{
		unit: 'mm',
		walls: [
			{ name: 'North', length: 4000, height: 2600 },
			{ name: 'South', length: 3000, height: 2600, obstacles: [{ name: 'door', left: 0, width: 900, height: 2000 }] },
		],
	},
	['Ebb', 'Quay', 'Weir', 'Sluice', 'Staithe', 'Groyne'].map((title, at) => ({
		...{ title, 'mount width': '500', 'mount height': '400' },
		...(at < 3 && { wall: 'North' }),
	})),
);

async function openWalls(page: Page): Promise<void> {
	await openFirstShow(page, show);
	await goByAddress(page, 'wall');
	await page.getByRole('heading', { name: 'Wall', exact: true }).waitFor();
}

const printOf = (page: Page, title: string) => page.getByRole('button', { name: new RegExp(`^${title}, on `) });
/** What is heard of a print: where it hangs. */
const heardOf = (page: Page, title: string) => printOf(page, title).getAttribute('aria-label');
/** The middle of a print on the page, once it stays there: a wall moves up as a report above it goes. */
const middleOf = async (page: Page, title: string) => {
	let middle: readonly [number, number] = [0, 0];
	await expect
		.poll(async () => {
			const box = (await printOf(page, title).boundingBox())!;
			const before = middle;
			middle = [box.x + box.width / 2, box.y + box.height / 2];
			return before[0] === middle[0] && before[1] === middle[1];
		})
		.toBe(true);
	return middle;
};

test('a show is hung by touch: given to walls, moved, put in order, swapped, and ticked off at the wall', () =>
	withFinger(async (page, stage) => {
		await openWalls(page);
		const finger = await fingerOn(page, stage);
		// (4000 − 1500) / 4 = 625
		expect(await heardOf(page, 'Quay')).toContain('on North, left 1750 mm, centre 1450 mm, 625 mm from “Ebb”');

		// From the list onto the wall, by its grip, between two that hang.
		const grip = page.getByRole('listitem').filter({ hasText: 'Sluice' }).locator('.grip');
		const [ebb, y] = await middleOf(page, 'Ebb');
		const [quay] = await middleOf(page, 'Quay');
		const from = (await grip.boundingBox())!;
		await finger.down(from.x + 10, from.y + 10);
		await finger.to((ebb + quay) / 2 + 40, y);
		await finger.to((ebb + quay) / 2, y);
		await finger.up();
		// (4000 − 2000) / 5 = 400
		await expect.poll(() => heardOf(page, 'Sluice')).toContain('on North, left 1300 mm');

		// Two at once.
		for (const name of ['Staithe', 'Groyne']) {
			const box = page.getByRole('checkbox', { name });
			await tapUntil(box, () => box.isChecked());
		}
		await page.getByRole('combobox', { name: 'Wall to hang them on' }).selectOption('South');
		await page.getByRole('button', { name: 'Hang 2' }).tap();
		// 900 to 3000, beside the door: (2100 − 1000) / 3
		await expect.poll(() => heardOf(page, 'Groyne')).toContain('on South, left 2133 mm');
		await page.getByText('All prints have a place.').waitFor();

		// Drawn a little it has a place of its own; past its neighbour, another order.
		const [x, up] = await middleOf(page, 'Quay');
		await finger.down(x, up);
		await finger.to(x + 8, up);
		await finger.to(x + 20, up);
		await finger.up();
		await expect.poll(() => heardOf(page, 'Quay')).toMatch(/on North, left 2\d{3} mm, .*left typed/);
		await tapUntil(page.getByRole('button', { name: 'Even spacing' }), async () =>
			((await heardOf(page, 'Quay')) ?? '').includes('left 2200 mm'),
		);
		const [to] = await middleOf(page, 'Weir');
		await finger.down(x, up);
		await finger.to(x + 30, up);
		await finger.to(to + 20, up);
		await finger.up();
		await expect.poll(() => heardOf(page, 'Quay')).toContain('left 3100 mm');
		await tapUntil(page.getByRole('button', { name: /^Undo/ }), async () =>
			((await heardOf(page, 'Quay')) ?? '').includes('left 2200 mm'),
		);
		await page.getByRole('combobox', { name: 'Swap with' }).selectOption({ label: 'Groyne' });
		await expect.poll(() => heardOf(page, 'Quay')).toContain('on South, left 2133 mm');

		await page.getByRole('link', { name: 'Start hanging' }).tap();
		await page.getByRole('heading', { name: /^Ebb/ }).waitFor();
		expect(await page.locator('.digits').allInnerTexts()).toEqual(['1650', '400']);
		const said = await page.getByRole('region', { name: 'This step', exact: true }).innerText();
		for (const caution of hangingCautions) expect(said).toContain(caution);
		await page.getByRole('button', { name: 'Hung', exact: true }).tap();
		await page.getByRole('heading', { name: /^Sluice.*1 of 6 hung/ }).waitFor();
		expect(await page.locator('.digits').allInnerTexts()).toEqual(['1650', '1300']);
		expect(await page.locator('.last').innerText()).toBe('From the last corner 900 mm');
		for (const area of await page.locator('.area, .tick, .go').all())
			expect((await area.boundingBox())!.height).toBeGreaterThanOrEqual(60);
		// The tick outlives the page, once it is on disk.
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await page.getByRole('heading', { name: /^Sluice.*1 of 6 hung/ }).waitFor();
	}));

test('the walls are zoomed and panned by fingers, a print is drawn up by one, and the walls stay', () =>
	withFinger(async (page, stage) => {
		await openWalls(page);
		const finger = await fingerOn(page, stage);
		const widthOf = async (title: string) => (await printOf(page, title).boundingBox())!.width;
		const fit = () => page.getByRole('button', { name: 'Fit', exact: true }).tap();
		const [before, [x, y]] = [await widthOf('Quay'), await middleOf(page, 'Quay')];
		// From 60 px apart to 220.
		await finger.pinch(x, y);
		await expect.poll(async () => (await widthOf('Quay')) / before).toBeGreaterThan(3);
		const [zoomed, above] = await middleOf(page, 'Quay');
		expect(Math.hypot(zoomed - x, above - y), 'it stays between the fingers').toBeLessThan(30);
		await fit();
		await expect.poll(() => widthOf('Quay')).toBe(before);
		const [left, high] = await middleOf(page, 'Quay');
		const box = (await page.getByRole('group', { name: /^Walls, drawn to scale/ }).boundingBox())!;
		await finger.down(box.x + 8, box.y + box.height - 8);
		for (const by of [10, 40, 50]) await finger.to(box.x + 8 + by, box.y + box.height - 8 - by);
		await finger.up();
		await expect
			.poll(async () => (await middleOf(page, 'Quay')).map(Math.round))
			.toEqual([left + 50, high - 50].map(Math.round));
		expect(await heardOf(page, 'Quay')).toContain('left 1750 mm, centre 1450 mm');
		await fit();
		const [at, from] = await middleOf(page, 'Quay');
		await finger.down(at, from);
		for (const [across, up] of [
			[1, 8],
			[3, 30],
			[20, 60],
		] as const)
			await finger.to(at + across, from - up);
		await finger.up();
		await expect.poll(() => heardOf(page, 'Quay')).toMatch(/left 1750 mm, centre (1[5-9]|2)\d+ mm, .*centre typed/);
	}));

test('prints are moved up and down by mouse, with the centre line shown, and back to it', () =>
	withKeys(async (page) => {
		await openWalls(page);
		/** Drags it by so many pixels to the right and down, from where it is. */
		const drag = async (...to: readonly (readonly [number, number])[]) => {
			const [x, y] = await middleOf(page, 'Quay');
			await page.mouse.move(x, y);
			await page.mouse.down();
			for (const [across, down] of to) await page.mouse.move(x + across, y + down);
		};
		// It begins upright: all of it is up and down.
		await drag([1, -8], [25, -60]);
		// The line, the middle above the floor, and how far that is from the line.
		await expect.poll(() => page.locator('.figures .snap').count()).toBe(1);
		await expect.poll(() => page.locator('.figures text').count()).toBe(2);
		const [middle, fromLine] = (await page.locator('.figures text').allTextContents()).map(Number) as [number, number];
		expect(middle - 1450).toBe(fromLine);
		expect(fromLine).toBeGreaterThan(100);
		await page.mouse.up();
		await expect
			.poll(() => heardOf(page, 'Quay'))
			.toMatch(new RegExp(`left 1750 mm, centre ${middle} mm, .*centre typed`));
		// It begins along the wall: its height stays, however far the hand slips.
		await drag([8, -1], [30, -60]);
		await page.mouse.up();
		await expect.poll(() => heardOf(page, 'Quay')).toMatch(new RegExp(`centre ${middle} mm, .*left typed`));
		await page.keyboard.press('Control+z');
		await expect.poll(() => heardOf(page, 'Quay')).toContain('left 1750 mm');
		// Near the line it is on it, and no height is typed.
		const [[, line], [, high]] = [await middleOf(page, 'Ebb'), await middleOf(page, 'Quay')];
		await drag([0, 8], [0, line - high - 4]);
		await expect.poll(() => page.locator('.figures .snap.on').count()).toBe(1);
		await page.mouse.up();
		await expect.poll(() => heardOf(page, 'Quay')).toMatch(/centre 1450 mm((?!typed).)*$/);
		await page.keyboard.press('Control+z');
		await expect.poll(() => heardOf(page, 'Quay')).toContain(`centre ${middle} mm`);
		// Let go beside all walls, nothing is meant.
		await drag([0, -8], [0, -2000]);
		await page.mouse.up();
		expect(await heardOf(page, 'Quay')).toContain(`centre ${middle} mm`);
	}));

const obstacleOf = (page: Page, name: string) => page.getByRole('button', { name: new RegExp(`^${name} on `) });

test('what is in the way is drawn, moved, resized, named and taken away: by finger', () =>
	withFinger(async (page, stage) => {
		await openWalls(page);
		const finger = await fingerOn(page, stage);
		const drawn = page.getByRole('button', { name: 'Draw obstacle' });
		await tapUntil(drawn, async () => (await drawn.getAttribute('aria-pressed')) === 'true');
		const ebb = (await printOf(page, 'Ebb').boundingBox())!;
		const quay = (await printOf(page, 'Quay').boundingBox())!;
		// Between two prints, down to the floor and below it.
		const [left, right] = [ebb.x + ebb.width + 5, quay.x - 5];
		await finger.down(left, ebb.y);
		await finger.to((left + right) / 2, ebb.y + 100);
		await finger.to(right, ebb.y + ebb.height * 4.4);
		await finger.up();
		const heard = () => obstacleOf(page, 'obstacle').getAttribute('aria-label');
		await expect
			.poll(heard)
			.toMatch(/^obstacle on North, \d+ mm from the left, \d+ mm wide, on the floor, 1\d{3} mm high$/);
		// It is selected: its name is typed, and it is moved where another would be panned over.
		const name = page.getByLabel('Name', { exact: true });
		await name.fill('lift');
		await name.press('Enter');
		const lift = obstacleOf(page, 'lift');
		await lift.waitFor();
		const before = (await lift.getAttribute('aria-label'))!;
		const at = async () => {
			const box = (await lift.locator('.body').boundingBox())!;
			return [box.x + box.width / 2, box.y + box.height / 2] as const;
		};
		const [x, y] = await at();
		await finger.down(x, y);
		await finger.to(x + 8, y + 1);
		await finger.to(x + 20, y + 15);
		await finger.up();
		await expect.poll(() => lift.getAttribute('aria-label')).not.toBe(before);
		const moved = (await lift.getAttribute('aria-label'))!;
		expect(moved.split(', ').slice(2)).toEqual(before.split(', ').slice(2));
		// By its right side.
		const side = (await page.getByRole('button', { name: 'right side of lift' }).boundingBox())!;
		expect(Math.min(side.width, side.height)).toBeGreaterThanOrEqual(43.5);
		await finger.down(side.x + 22, side.y + 22);
		await finger.to(side.x + 31, side.y + 22);
		await finger.to(side.x + 62, side.y + 22);
		await finger.up();
		await expect.poll(() => lift.getAttribute('aria-label')).not.toBe(moved);
		expect((await lift.getAttribute('aria-label'))!.split(', ')[1]).toBe(moved.split(', ')[1]);
		const tap = (button: string, isDone: () => Promise<boolean>) =>
			tapUntil(page.getByRole('button', { name: button }), isDone);
		await tap('Delete lift', async () => (await lift.count()) === 0);
		// Each is one step back, to the wall as it was measured.
		await tap('Undo: delete lift', async () => (await lift.count()) === 1);
		await tap('Undo: resize lift', async () => (await lift.getAttribute('aria-label')) === moved);
		await tap('Undo: move lift', async () => (await lift.getAttribute('aria-label')) === before);
	}));

test('and by keys alone', () =>
	withKeys(async (page) => {
		await openWalls(page);
		const press = async (...keys: readonly string[]) => {
			for (const key of keys) await page.keyboard.press(key);
		};
		await page.getByRole('button', { name: 'Add window to North' }).focus();
		await press('Enter');
		const heard = () => obstacleOf(page, 'window').getAttribute('aria-label');
		await expect
			.poll(heard)
			.toBe('window on North, 1400 mm from the left, 1200 mm wide, 900 mm above the floor, 1200 mm high');
		// Prints keep clear of it: two of them in the 1400 on its left, (1400 − 1000) / 3.
		await expect.poll(() => heardOf(page, 'Ebb')).toContain('left 133 mm');
		await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-obstacle'))).toBe('0');
		await press('ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowUp', 'ArrowDown');
		await expect.poll(heard).toContain('1411 mm from the left, 1200 mm wide, 909 mm above the floor');
		await press('Tab', 'Tab');
		await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-side'))).toBe('right');
		await press('Shift+ArrowLeft', 'Shift+ArrowLeft');
		await expect.poll(heard).toContain('1411 mm from the left, 1180 mm wide');
		await press('Tab', 'Shift+ArrowDown', 'Control+z');
		await expect.poll(heard).toContain('1180 mm wide, 909 mm above the floor, 1200 mm high');
		// A run of keys is one step.
		await press('Control+z', 'Control+z');
		await expect.poll(heard).toContain('1400 mm from the left, 1200 mm wide, 900 mm above');
		const width = page.getByRole('textbox', { name: 'Width' });
		await width.fill('wide');
		await width.press('Enter');
		await page.getByRole('alert').waitFor();
		await width.fill('1 m');
		await width.press('Enter');
		await expect.poll(heard).toContain('1000 mm wide');
		await obstacleOf(page, 'window').focus();
		await press('Delete');
		await expect.poll(() => obstacleOf(page, 'window').count()).toBe(0);
		await goByAddress(page, 'settings/walls');
		await page.getByRole('region', { name: 'In the way on South' }).getByText('door').waitFor();
	}));

/** The wheel zooms about the mouse, with Shift it pans; so do keys. */
async function zoomAndPan(page: Page): Promise<void> {
	const quay = async () => (await printOf(page, 'Quay').boundingBox())!;
	const [{ width }, [x, y]] = [await quay(), await middleOf(page, 'Quay')];
	await page.mouse.move(x, y);
	await page.mouse.wheel(0, -400);
	await expect.poll(async () => (await quay()).width / width).toBeGreaterThan(2);
	const [zoomed] = await middleOf(page, 'Quay');
	expect(Math.abs(zoomed - x), 'it stays under the mouse, to the width of its line').toBeLessThan(3);
	await page.keyboard.down('Shift');
	await page.mouse.wheel(0, 40);
	await page.keyboard.up('Shift');
	await expect.poll(async () => Math.round((await middleOf(page, 'Quay'))[0] - zoomed)).toBe(-40);
	await page.getByRole('group', { name: /^Walls, drawn to scale/ }).focus();
	await page.keyboard.press('0');
	await expect.poll(async () => (await quay()).width).toBe(width);
	for (const key of ['+', 'ArrowRight']) await page.keyboard.press(key);
	// By a quarter; its line is as thick as before.
	await expect.poll(async () => (await quay()).width / width).toBeGreaterThan(1.2);
	expect((await quay()).width / width).toBeLessThan(1.26);
	await page.keyboard.press('0');
}

test('a show is hung by keys alone, and dragged by mouse', () =>
	withKeys(async (page) => {
		await openWalls(page);
		const press = async (...keys: readonly string[]) => {
			for (const key of keys) await page.keyboard.press(key);
		};
		await page.getByRole('checkbox', { name: 'Sluice' }).focus();
		await press('Space');
		await page.getByRole('combobox', { name: 'Wall to hang them on' }).focus();
		await press('s');
		await page.getByRole('button', { name: 'Hang 1' }).focus();
		await press('Enter');
		await expect.poll(() => heardOf(page, 'Sluice')).toContain('on South, left 1700 mm');

		await zoomAndPan(page);
		await printOf(page, 'Quay').focus();
		await press('ArrowRight', 'ArrowRight', 'Shift+ArrowLeft', 'Shift+ArrowUp');
		await expect.poll(() => heardOf(page, 'Quay')).toContain('left 1742 mm, centre 1460 mm, 621 mm from “Ebb”, 629 mm');
		expect(await heardOf(page, 'Quay')).toContain('left typed, centre typed');
		// All of it is one step.
		await press('Control+z');
		await expect.poll(() => heardOf(page, 'Quay')).toContain('left 1750 mm, centre 1450 mm');
		await printOf(page, 'Quay').focus();
		await press('ArrowDown', 'Delete');
		await expect.poll(() => heardOf(page, 'Quay')).not.toContain('typed');
		await press('Enter');
		await page.getByRole('button', { name: 'Move left' }).focus();
		await press('Enter');
		await expect.poll(() => heardOf(page, 'Quay')).toContain('left 625 mm');

		await page.getByRole('button', { name: 'Even out' }).focus();
		await press('Enter');
		await page.getByRole('table').waitFor();
		await page.getByRole('button', { name: /^Apply to/ }).focus();
		await press('Enter');
		await page.getByText('All prints have a place.').waitFor();

		// The other arrangements are of one wall, shown first, and one step back.
		const walls = page.getByRole('combobox', { name: 'Walls shown' });
		await walls.selectOption('North');
		const onNorth = () => page.getByRole('button', { name: /^(?:Ebb|Quay|Weir|Sluice|Staithe|Groyne), on / }).all();
		const heardOnNorth = async () =>
			Promise.all((await onNorth()).map((print) => print.evaluate((each) => each.getAttribute('aria-label'))));
		const hung = await heardOnNorth();
		expect(hung.length).toBeGreaterThan(1);
		await page.getByRole('button', { name: 'Mirror', exact: true }).focus();
		await press('Enter');
		await page.getByRole('button', { name: /^Apply to/ }).focus();
		await press('Enter');
		await expect.poll(heardOnNorth).not.toEqual(hung);
		await press('Control+z');
		await expect.poll(heardOnNorth).toEqual(hung);
		// They are all as high: there is nothing to order.
		await page.getByRole('button', { name: 'By height', exact: true }).focus();
		await press('Enter');
		await page.getByText('The prints hang like this already.').waitFor();
		await page.getByRole('button', { name: 'Close', exact: true }).focus();
		await press('Enter');
		expect(await heardOnNorth()).toEqual(hung);
		await walls.selectOption('All walls');

		// By mouse, with what is beside it measured on the way.
		const [x, y] = await middleOf(page, 'Weir');
		await page.mouse.move(x, y);
		await page.mouse.down();
		await page.mouse.move(x + 10, y);
		await page.mouse.move(x + 14, y);
		await expect.poll(() => page.locator('.snap').count()).toBe(2);
		expect(await page.locator('.figures text').count()).toBe(2);
		await page.mouse.up();
		await expect.poll(() => heardOf(page, 'Weir')).toContain('left typed');

		await goByAddress(page, 'hang');
		await page.getByRole('heading', { name: /^Quay/ }).waitFor();
		await press('Space', 'ArrowRight');
		await page.getByRole('heading', { name: /1 of 6 hung/ }).waitFor();
		await press('Control+z');
		await page.getByRole('heading', { name: /0 of 6 hung/ }).waitFor();
	}));

test('on a phone each print has its number, and gaps that are alike one figure, clear of the height of a hook', () =>
	withFinger(async (page) => {
		await resize(page, phone);
		await page.getByRole('button', { name: 'Load the example' }).tap();
		await page.getByRole('button', { name: /^Places/ }).tap();
		await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Wall' }).tap();
		await page.getByRole('button', { name: 'Measures' }).tap();
		await page.getByRole('button', { name: /^3 Net store/ }).focus();
		await page.keyboard.press('Enter');
		const hook = page.locator('svg text').filter({ hasText: /^hook about \d/ });
		const { x, y, width, height } = (await hook.boundingBox())!;
		const gaps = page.locator('svg text.gap').filter({ hasText: /\d/ });
		expect(await gaps.allTextContents()).toEqual(['11 gaps 236–237']);
		// One wall at a time: its ten prints, each by its number.
		expect(await page.locator('svg text.number').allTextContents()).toEqual(
			Array.from({ length: 10 }, (_, at) => `${at + 1}`),
		);
		// It fills the height, and what has no room beside it comes into view once it is asked for.
		const nine = page.getByRole('button', { name: /^9 Salt pan III, on / });
		expect((await nine.boundingBox())!.x).toBeGreaterThan(390);
		await page.getByRole('list', { name: 'Marked prints' }).getByRole('button', { name: '9 Salt pan III' }).tap();
		await expect.poll(async () => (await nine.boundingBox())!.x).toBeLessThan(300);
		// What hangs nowhere is named with them: its own list is out of view.
		const nowhere = page.getByRole('listitem').filter({ hasText: /^\s*not placed/ });
		expect(await nowhere.getByRole('button').allInnerTexts()).toEqual(['29', '30']);
		await nowhere.getByRole('button', { name: '29 Pit lake, north face' }).tap();
		await page.getByRole('region', { name: '29 Pit lake' }).getByText('It hangs on no wall yet.').waitFor();
		const wideOf = async (part: string) => (await page.locator(`svg ${part}[data-place="3"]`).boundingBox())!.width;
		expect(await wideOf('.touched'), 'of a small print, for a finger').toBeGreaterThanOrEqual(43.5);
		expect(await wideOf('.print')).toBeLessThan(43.5);
		await page.getByRole('button', { name: 'Fit', exact: true }).tap();
		await expect.poll(async () => (await nine.boundingBox())!.width).toBeLessThan(30);
		await page.getByRole('combobox', { name: 'Walls shown' }).selectOption('All walls');
		await expect.poll(() => gaps.count()).toBe(4);
		for (const gap of await gaps.all()) {
			const box = (await gap.boundingBox())!;
			const isBeside = box.x >= x + width || box.x + box.width <= x;
			expect(isBeside || box.y >= y + height || box.y + box.height <= y).toBe(true);
		}
		// Nor does one lie over another on its line.
		const boxes = await gaps.evaluateAll((all) => all.map((each) => each.getBoundingClientRect().toJSON() as DOMRect));
		const over = boxes.filter((one, at) =>
			boxes.some(
				(other, place) =>
					place !== at && one.top === other.top && one.left < other.right - 0.5 && other.left < one.right - 0.5,
			),
		);
		expect(over).toEqual([]);
	}));
