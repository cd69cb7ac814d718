import type { CDPSession, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { withNumbered } from './grid/cells.ts';
import { goByAddress } from './harness/goByAddress.ts';
import { onStage } from './harness/stage.ts';
import { cell, press, seen } from './screens/prints.ts';

/** How long the app is used: as long as a show is worked on. Run by `npm run soak` alone. */
const uses = { rows: 1000, undoSteps: 2000, shows: 300, editingMs: 300_000 };

/** By how much the heap may grow. */
const most = 1.1;

/**
 * Some of the same use beforehand: what is loaded and compiled only once is no growth. The browser compiles what runs often
 * by and by, for some minutes: half a megabyte in all.
 */
const warm = { undoSteps: 200, editingMs: 60_000 };

/** What is in use of the heap once all that nothing holds is collected, in MB. */
async function heapOf(debug: CDPSession): Promise<number> {
	for (let turn = 0; turn < 3; turn++) await debug.send('HeapProfiler.collectGarbage');
	const { usedSize } = await debug.send('Runtime.getHeapUsage');
	return usedSize / 1e6;
}

/** How long thousands of edits may take to be on disk after the last of them, where the machine is busy. */
const longestSavingMs = 300_000;

const isSaved = (page: Page) => page.getByText('Saved', { exact: true }).waitFor({ timeout: longestSavingMs });

/** Compares the heap before something is done with that after it, when all is saved. */
async function holdsHeap(page: Page, what: string, act: () => Promise<unknown>): Promise<void> {
	const debug = await page.context().newCDPSession(page);
	await isSaved(page);
	const before = await heapOf(debug);
	await act();
	await isSaved(page);
	const after = await heapOf(debug);
	await debug.detach();
	const figures = `${what}: ${before.toFixed(2)} MB before, ${after.toFixed(2)} MB after`;
	console.log(figures);
	expect(after / before, figures).toBeLessThan(most);
}

/** Pastes 1, 2, 3 … into the active cell, each a step of undo, and lets the page be drawn after each. */
const pasteNumbers = (page: Page, count: number): Promise<void> =>
	page.evaluate(async (steps) => {
		for (let step = 1; step <= steps; step++) {
			const clipboardData = new DataTransfer();
			clipboardData.setData('text/plain', `${step}`);
			const event = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
			document.activeElement?.dispatchEvent(event);
			await new Promise(requestAnimationFrame);
		}
	}, count);

/** Presses a key with Ctrl, over and over, and lets the page be drawn after each. */
const pressControl = (page: Page, key: string, count: number): Promise<void> =>
	page.evaluate(
		async ([pressed, times]) => {
			for (let turn = 0; turn < times; turn++) {
				const options = { key: pressed, ctrlKey: true, bubbles: true, cancelable: true };
				document.activeElement?.dispatchEvent(new KeyboardEvent('keydown', options));
				await new Promise(requestAnimationFrame);
			}
		},
		[key, count] as const,
	);

test(`${uses.undoSteps} steps are taken back, done again and taken back at ${uses.rows} rows, and the heap holds`, () =>
	onStage({}, async (stage) => {
		const page = await stage.openShow();
		await withNumbered(page, uses.rows);
		await cell(page, 0, 'note').click();
		const isNote = (note: string) => expect.poll(() => seen(page, 0, 'note')).toBe(note);
		const steps = async (count: number) => {
			await pasteNumbers(page, count);
			await isNote(`${count} typed`);
			await pressControl(page, 'z', count);
			await isNote('');
			await pressControl(page, 'y', count);
			await isNote(`${count} typed`);
			await pressControl(page, 'z', count);
			await isNote('');
		};
		await steps(warm.undoSteps);
		await holdsHeap(page, `${uses.undoSteps} steps`, () => steps(uses.undoSteps));
	}));

/** Begins shows, one after the other. */
const beginShows = async (page: Page, count: number): Promise<void> => {
	for (let show = 0; show < count; show++) {
		await goByAddress(page, 'shows');
		await page.getByRole('button', { name: 'New show', exact: true }).first().click();
		await page.getByRole('heading', { name: 'No prints in this show yet' }).waitFor();
	}
};

/** Opens all shows in turn, that which was not open for longest first; the last is the one that is open now. */
const openInTurn = async (page: Page, count: number): Promise<void> => {
	for (let show = 0; show < count; show++) {
		await goByAddress(page, 'shows');
		await page.locator('button.name').last().click();
		await page.locator('h1', { hasText: /^Shows$/ }).waitFor({ state: 'detached' });
	}
};

test(`${uses.shows} shows are opened one after the other, and the heap holds`, () =>
	onStage({}, async (stage) => {
		const page = await stage.openShow();
		await withNumbered(page, uses.rows);
		await beginShows(page, uses.shows);
		await openInTurn(page, 1);
		await page.locator(`[role=grid][aria-rowcount="${uses.rows + 2}"]`).waitFor();
		await holdsHeap(page, `${uses.shows} shows`, () => openInTurn(page, uses.shows + 1));
		await page.locator(`[role=grid][aria-rowcount="${uses.rows + 2}"]`).waitFor();
	}));

test(`cells are typed, filled and taken back for ${uses.editingMs / 1000} s at ${uses.rows} rows, and the heap holds`, () =>
	onStage({}, async (stage) => {
		const page = await stage.openShow();
		await withNumbered(page, uses.rows);
		let rounds = 0;
		const edit = async (forMs: number) => {
			for (const end = Date.now() + forMs; Date.now() < end; rounds++) {
				await press(page, 'Control+Home');
				await cell(page, 0, 'note').click();
				await page.keyboard.type(`note ${rounds}`);
				await press(page, 'Tab', 'Control+Home', 'Shift+ArrowDown', 'Control+d', 'Control+z', 'Control+End', 'Home');
				await page.keyboard.type(`${rounds}`);
				await press(page, 'Tab');
			}
		};
		await edit(warm.editingMs);
		await holdsHeap(page, `${uses.editingMs / 1000} s of editing`, () => edit(uses.editingMs));
		expect(await seen(page, uses.rows - 1, 'number'), 'all was typed').toBe(`${rounds - 1} typed`);
		console.log(`${rounds} rounds of editing`);
	}));
