import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { fingerOn, tapUntil } from '../grid/fingers.ts';
import { oneStage } from '../screens/oneStage.ts';

const withFinger = oneStage({ hasTouch: true, reducedMotion: 'reduce' });
const withKeys = oneStage({ reducedMotion: 'reduce' });

/** A show of six prints, 500 × 400 without frames, and two walls: three hang on North, three nowhere. */
const show = {
	format: 'evenhang-show',
	version: 8,
	name: 'Low water',
	settings: {
		unit: 'mm',
		walls: [
			{ name: 'North', length: 4000, height: 2600 },
			{ name: 'South', length: 3000, height: 2600, obstacles: [{ name: 'door', left: 0, width: 900, height: 2000 }] },
		],
	},
	rows: ['Ebb', 'Quay', 'Weir', 'Sluice', 'Staithe', 'Groyne'].map((title, at) => ({
		id: `r${at}`,
		order: at + 1,
		typed: { title, 'mount width': '500', 'mount height': '400', ...(at < 3 && { wall: 'North' }) },
	})),
};

async function openShow(page: Page): Promise<void> {
	await page.getByRole('button', { name: 'Files' }).click();
	const asked = page.waitForEvent('filechooser');
	await page.getByRole('button', { name: 'Import rows' }).click();
	await (
		await asked
	).setFiles({ name: 'low.evenhang.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(show)) });
	await page.getByRole('grid').waitFor();
	await page.goto(`${page.url().split('#')[0]}#wall`);
	await page.getByRole('heading', { name: 'Wall', exact: true }).waitFor();
}

const printOf = (page: Page, title: string) => page.getByRole('button', { name: new RegExp(`^${title}, on `) });
/** What is heard of a print: where it hangs. */
const heardOf = (page: Page, title: string) => printOf(page, title).getAttribute('aria-label');
const middleOf = async (page: Page, title: string) => {
	const box = (await printOf(page, title).boundingBox())!;
	return [box.x + box.width / 2, box.y + box.height / 2] as const;
};

test('a show is hung by touch: given to walls, moved, put in order, swapped, and ticked off at the wall', () =>
	withFinger(async (page, stage) => {
		await openShow(page);
		const finger = await fingerOn(page, stage);
		// (4000 − 1500) / 4 = 625
		expect(await heardOf(page, 'Quay')).toContain('on North, left 1750 mm, centre 1450 mm, 625 mm from “Ebb”');

		// From the list onto the wall, by its grip, between two that hang.
		const grip = page.getByRole('listitem').filter({ hasText: 'Sluice' }).locator('.grip');
		const from = (await grip.boundingBox())!;
		const [ebb, y] = await middleOf(page, 'Ebb');
		const [quay] = await middleOf(page, 'Quay');
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
		await page.getByText('All prints hang.').waitFor();

		// Drawn a little it has a place of its own; past its neighbour, another order.
		const [x, up] = await middleOf(page, 'Quay');
		await finger.down(x, up);
		await finger.to(x + 8, up);
		await finger.to(x + 20, up);
		await finger.up();
		await expect.poll(() => heardOf(page, 'Quay')).toMatch(/on North, left 2\d{3} mm, .*left typed/);
		await tapUntil(page.getByRole('button', { name: 'Even place' }), async () =>
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
		await page.getByRole('button', { name: 'It hangs' }).tap();
		await page.getByRole('heading', { name: /^Sluice.*1 of 6 hung/ }).waitFor();
		expect(await page.locator('.digits').allInnerTexts()).toEqual(['1650', '1300', '900']);
		for (const area of await page.locator('.area, .tick, .go').all())
			expect((await area.boundingBox())!.height).toBeGreaterThanOrEqual(60);
		// The tick outlives the page.
		await page.reload();
		await page.getByRole('heading', { name: /^Sluice.*1 of 6 hung/ }).waitFor();
	}));

test('a show is hung by keys alone, and dragged by mouse', () =>
	withKeys(async (page) => {
		await openShow(page);
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
		await page.getByRole('button', { name: 'Earlier' }).focus();
		await press('Enter');
		await expect.poll(() => heardOf(page, 'Quay')).toContain('left 625 mm');

		await page.getByRole('button', { name: 'Even out' }).focus();
		await press('Enter');
		await page.getByRole('table').waitFor();
		await page.getByRole('button', { name: /^Apply to/ }).focus();
		await press('Enter');
		await page.getByText('All prints hang.').waitFor();

		// By mouse, with what is beside it measured on the way.
		const [x, y] = await middleOf(page, 'Weir');
		await page.mouse.move(x, y);
		await page.mouse.down();
		await page.mouse.move(x + 10, y);
		await page.mouse.move(x + 14, y);
		expect(await page.locator('.snap').count()).toBe(1);
		expect(await page.locator('text.figure').count()).toBeGreaterThanOrEqual(2);
		await page.mouse.up();
		await expect.poll(() => heardOf(page, 'Weir')).toContain('left typed');

		await page.goto(`${page.url().split('#')[0]}#hang`);
		await page.getByRole('heading', { name: /^Quay/ }).waitFor();
		await press('Space', 'ArrowRight');
		await page.getByRole('heading', { name: /1 of 6 hung/ }).waitFor();
		await press('Control+z');
		await page.getByRole('heading', { name: /0 of 6 hung/ }).waitFor();
	}));
