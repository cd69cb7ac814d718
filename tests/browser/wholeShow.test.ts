import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Papa from 'papaparse';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { testInSoak } from '../soak.ts';
import { goBehindName } from './harness/behindName.ts';
import { landscapeTablet, uprightTablet } from './harness/stage.ts';
import { oneStage } from './screens/oneStage.ts';
import { press, seen } from './screens/prints.ts';

// The thirty prints of the example show as they would be copied from a spreadsheet, and the settings that it has. Frames,
// papers and glazing by name are in no list here: `order/wholeJob.test.ts` types those too.
const file = fileURLToPath(new URL('../../shared/samples/example.csv', import.meta.url));
const listed = ['frame', 'mounting', 'spacer', 'backing', 'margin top', 'surface'];
const prints = Papa.parse<Record<string, string>>(readFileSync(file, 'utf8'), {
	header: true,
	skipEmptyLines: true,
}).data;
const plain = (column: string, text: string): string =>
	listed.includes(column)
		? ''
		: column === 'paper'
			? text.replace(/^[A-Z].*/, '594 x 420')
			: column === 'glazing'
				? text.replace('Clear acrylic', 'acrylic')
				: text;
const csv = Papa.unparse(
	prints.map((print) =>
		Object.fromEntries(Object.entries(print).map(([column, text]) => [column, plain(column, text)])),
	),
);
const settings = [
	['Mount size', '700 x 550'],
	['Border', '80'],
	['Bottom weight', '8 %'],
	['Overlap', '4'],
	['Uneven borders', '25 %'],
] as const;
/** Further than from any field of the settings round to the one before it. */
const mostTabs = 200;
const size = [
	['Name, new size', 'Small'],
	['Width, new size', '520'],
	['Height, new size', '420'],
] as const;

/** Writes down what the page is touched by. */
const watchHands = (page: Page): Promise<void> =>
	page.evaluate(() => {
		const seen = new Set<string>();
		addEventListener('pointerdown', ({ pointerType }) => seen.add(pointerType), true);
		addEventListener('keydown', () => seen.add('key'), true);
		Object.assign(window, { handsSeen: () => [...seen].sort() });
	});
const handsSeen = (page: Page) => page.evaluate(() => (window as unknown as { handsSeen: () => string[] }).handsSeen());

/** How many prints there are to stop for or to look at. */
async function open(page: Page): Promise<number> {
	const words = await page.locator('.checks').innerText();
	return [...words.matchAll(/(\d+)\s*(?:can’t be cut|to check)/g)].reduce((sum, [, count]) => sum + Number(count), 0);
}

async function isPlanned(page: Page): Promise<void> {
	await page.getByRole('heading', { name: 'Before you cut' }).waitFor();
	expect(await page.getByText('Not planned until put right').count()).toBe(0);
	const named = await page.locator('ol .name').evaluateAll((all) => all.map((each) => each.firstChild!.textContent)); // its blank follows
	expect(new Set(named).size, 'every print has its cuts').toBe(30);
}

const playByTouch = oneStage({ hasTouch: true, viewport: uprightTablet, reducedMotion: 'reduce' });

// By touch with frames and papers too: `order/wholeJob.test.ts`.
testInSoak('by touch alone: the example show is planned from the empty screen to the bench list', () =>
	playByTouch(async (page) => {
		await watchHands(page);
		const button = (name: string | RegExp) => page.getByRole('button', { name }).first();
		// What an on-screen keyboard types comes in as text, without keys.
		const type = async (label: string, text: string) => {
			const field = page.getByLabel(label, { exact: true }).first();
			await field.tap();
			await field.and(page.locator(':focus')).waitFor(); // a text put in comes faster than a tap
			await page.keyboard.insertText(text);
		};
		await goBehindName(page, 'Settings', (what) => what.tap());
		await page.getByRole('link', { name: 'Mount and window' }).tap();
		for (const [label, text] of [...settings, ...size]) await type(label, text);
		await button('Add size').tap();
		await page.getByRole('link', { name: 'Prints', exact: true }).tap();
		await button('Paste rows').tap();
		await page.locator('textarea:focus').waitFor();
		await page.keyboard.insertText(csv);
		await button('Import rows').tap();
		await page.locator('[role=grid][aria-rowcount="32"]').waitFor();
		expect(await open(page)).toBeGreaterThan(4);
		for (let turn = 0; turn < 24 && (await open(page)) > 0; turn++) {
			await page.locator('#checks').tap();
			await page.locator('.list li button').first().tap();
			await page.locator('#sentences .mends button').first().tap();
		}
		expect(await open(page)).toBe(0);
		expect(await seen(page, 0, 'side')).toBe('80 worked-out');
		await page.getByRole('link', { name: 'Bench', exact: true }).tap();
		await isPlanned(page);
		expect(await handsSeen(page)).toEqual(['touch']);
	}),
);

const playByKeys = oneStage({ viewport: landscapeTablet, reducedMotion: 'reduce' });

// By keyboard in parts: the places and a first print in `screens/firstSteps`, settings and sentences in `screens/hands`,
// the bench and the sheets there too.
testInSoak('by keyboard alone: the example show is planned from the empty screen to the bench list', () =>
	playByKeys(async (page) => {
		await watchHands(page);
		/** Goes on with Tab until the focus is on what has a name. */
		const tabTo = async (name: string, key = 'Tab') => {
			const passed: string[] = [];
			for (let turn = 0; turn < mostTabs; turn++) {
				await press(page, key);
				const label = await page.evaluate(() => {
					const element = document.activeElement as HTMLInputElement | null;
					const own = element?.getAttribute('aria-label') ?? element?.labels?.[0]?.textContent ?? element?.textContent;
					return own?.trim().replaceAll(/\s+/g, ' ') ?? '';
				});
				if (label.startsWith(name)) return;
				passed.push(label);
			}
			throw new Error(`Tab does not lead to ${name}, only to ${passed.join(', ')}`);
		};
		const type = async (label: string, text: string) => {
			await tabTo(label);
			await page.keyboard.insertText(text);
		};
		await tabTo('New show');
		await press(page, 'Enter');
		await tabTo('Settings');
		await press(page, 'Enter');
		await page.getByRole('heading', { name: 'Settings' }).waitFor();
		await tabTo('Mount and window');
		await press(page, 'Enter');
		await page.getByRole('heading', { name: 'Mount and window' }).waitFor();
		for (const [label, text] of settings) await type(label, text);
		for (const [label, text] of size) await type(label, text);
		await tabTo('Add size');
		await press(page, 'Enter');
		await press(page, 'Tab');
		await page.keyboard.press('Control+Home');
		await tabTo('Prints', 'Shift+Tab');
		await press(page, 'Enter');
		await tabTo('Paste rows');
		await press(page, 'Enter');
		await page.getByRole('textbox').waitFor();
		await page.keyboard.insertText(csv);
		await tabTo('Import rows');
		await press(page, 'Enter');
		await page.locator('[role=grid][aria-rowcount="32"]').waitFor();
		expect(await open(page)).toBeGreaterThan(4);
		for (let turn = 0; turn < 24 && (await open(page)) > 0; turn++) {
			await page.locator('[role=grid] [tabindex="0"]').waitFor();
			await press(page, 'F8', 'F6', 'Enter');
			await page.locator('#sentences:focus, #sentences :focus').waitFor();
			await press(page, 'F6');
			await page.locator('[role=grid] :focus').waitFor();
		}
		expect(await open(page)).toBe(0);
		expect(await seen(page, 0, 'side')).toBe('80 worked-out');
		await press(page, 'Escape', 'Escape'); // from the sentences into the grid, and out of it
		await tabTo('Bench', 'Shift+Tab');
		await press(page, 'Enter');
		await isPlanned(page);
		expect(await handsSeen(page)).toEqual(['key']);
	}),
);
