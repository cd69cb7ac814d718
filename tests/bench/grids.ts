// Our grid beside a general-purpose one, showing the same cells, in one run: Chromium, four times slower than it is.
// Part of `npm run bench`, after `npm run build`.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { CDPSession, Page } from 'playwright-core';
import { build } from 'vite';
import { columnIndexOf } from '../../src/ui/grid/gridColumns.ts';
import { builtApp, closeSharedBrowser, Stage } from '../browser/harness/stage.ts';
import { cell, startTyping } from '../browser/screens/prints.ts';
import { openSettings } from '../browser/screens/settingsOf.ts';
import { printCells } from './printCells.ts';

const counts = process.argv.slice(2).map(Number);
const slowdown = 4;
const loads = 5;
const keys = 5;

/** Milliseconds, but for the heap. */
interface Figures {
	readonly 'first paint': number;
	readonly 'key to painted row': number;
	readonly 'work of a key': number;
	readonly 'default changed to painted': number;
	readonly 'p95 frame, scrolling': number;
	readonly 'heap, MB': number;
}

/** What share of the library's figure ours may be at most, by how many rows there are; undefined where none is set. */
const goals: Readonly<Record<keyof Figures, (count: number) => number | undefined>> = {
	'first paint': (count) => (count >= 10_000 ? 0.5 : 1),
	'key to painted row': () => 0.7,
	'work of a key': () => 0.5,
	'default changed to painted': () => 0.4,
	'p95 frame, scrolling': () => 1,
	'heap, MB': () => 1,
};

/** What both grids are asked, each in its own way. */
interface Side {
	readonly folder: string;
	readonly search: (count: number) => string;
	readonly prepare: (page: Page, count: number) => Promise<void>;
	/** The cell of the first row in which a picture's width is typed, and one that follows from it. */
	readonly typed: string;
	readonly follows: string;
	readonly scroller: string;
	readonly open: (page: Page) => Promise<void>;
	readonly changeDefault: (page: Page, turn: number) => Promise<void>;
}

const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

/** Put into each page before its own scripts: tells when cells show something new, and when that has been painted. */
const watch = (): void => {
	const painted = () =>
		new Promise<number>((resolve) =>
			requestAnimationFrame(() => {
				const channel = new MessageChannel();
				channel.port1.onmessage = () => resolve(performance.now());
				channel.port2.postMessage(undefined);
			}),
		);
	const textOf = (selector: string) => document.querySelector(selector)?.textContent ?? '';
	const changed = async (selector: string, before: string) => {
		while (textOf(selector) === before)
			await new Promise<void>((resolve) => {
				const observer = new MutationObserver(() => {
					observer.disconnect();
					resolve();
				});
				observer.observe(document, { subtree: true, childList: true, characterData: true });
			});
		return performance.now();
	};
	let begun = 0;
	addEventListener('keydown', () => (begun = performance.now()), { capture: true });
	Object.assign(window, {
		firstPaint: async (selector: string) => {
			await changed(selector, '');
			return painted();
		},
		/** From the last key to a cell that shows something else: work until it is in the page, and until it is painted. */
		watchCell: (selector: string) => {
			const before = textOf(selector);
			Object.assign(window, {
				watched: changed(selector, before).then(async (at) => ({
					work: at - begun,
					painted: (await painted()) - begun,
				})),
			});
		},
		begin: () => (begun = performance.now()),
		frames: async (selector: string, turns: number) => {
			const scroller = document.querySelector(selector)!;
			const times: number[] = [];
			let last = await new Promise<number>(requestAnimationFrame);
			for (let turn = 0; turn < turns; turn++) {
				scroller.scrollTop += 300;
				const now = await new Promise<number>(requestAnimationFrame);
				times.push(now - last);
				last = now;
			}
			return times;
		},
	});
};

interface Watching {
	firstPaint: (selector: string) => Promise<number>;
	watchCell: (selector: string) => void;
	watched: Promise<{ work: number; painted: number }>;
	begin: () => number;
	frames: (selector: string, turns: number) => Promise<number[]>;
	changeDefault: (overlap: string) => void;
}
declare const window: Window & Watching;

const ours: Side = {
	folder: builtApp,
	search: () => '',
	prepare: async (page, count) => {
		await startTyping(page);
		await page.keyboard.press('Home');
		const lines = Array.from({ length: count }, (_, place) => {
			const cells = printCells(place);
			return [cells.number, cells.title, '', cells['picture width'], cells['picture height']].join('\t');
		});
		await page.evaluate((text) => {
			const clipboardData = new DataTransfer();
			clipboardData.setData('text/plain', text);
			document.activeElement!.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true }));
		}, lines.join('\n'));
		await page.getByText('Saved', { exact: true }).waitFor({ timeout: 120_000 });
		// A default that is changed once can be changed again and again by undo and redo, with the grid in view.
		await openSettings(page, 'Mount and window');
		await page.getByRole('textbox', { name: /^Overlap/ }).fill('4');
		await page.keyboard.press('Tab');
		await page.getByRole('link', { name: 'Prints', exact: true }).click();
		await page.getByRole('grid').waitFor();
		await page.getByText('Saved', { exact: true }).waitFor({ timeout: 120_000 });
	},
	typed: `[data-row="0"][data-column="${columnIndexOf('picture width')}"]`,
	follows: `[data-row="0"][data-column="${columnIndexOf('window width')}"]`,
	scroller: '[role=grid]',
	open: async (page) => void (await cell(page, 0, 'picture width').click()),
	changeDefault: (page, turn) => page.keyboard.press(turn % 2 === 0 ? 'Control+z' : 'Control+y'),
};

const library = (folder: string): Side => ({
	folder,
	search: (count) => `?rows=${count}`,
	prepare: () => Promise.resolve(),
	typed: '.ag-row[row-index="0"] [col-id="picture width"]',
	follows: '.ag-row[row-index="0"] [col-id="window width"]',
	scroller: '.ag-grid-viewport',
	open: async (page) => void (await page.locator('.ag-row[row-index="0"] [col-id="picture width"]').click()),
	changeDefault: (page, turn) =>
		page.evaluate(
			(overlap) => {
				window.begin();
				window.changeDefault(overlap);
			},
			turn % 2 === 0 ? '4' : '3',
		),
});

async function heapMb(debug: CDPSession): Promise<number> {
	await debug.send('HeapProfiler.collectGarbage');
	const { usedSize } = await debug.send('Runtime.getHeapUsage');
	return usedSize / 2 ** 20;
}

const watchedIn = (page: Page) => page.evaluate(() => window.watched);

async function measure(side: Side, count: number): Promise<Figures> {
	const stage = await Stage.set({ folder: side.folder, isSharp: true, viewport: { width: 1440, height: 900 } });
	try {
		const page = await stage.context.newPage();
		await page.addInitScript('globalThis.__name = (named) => named'); // the compiler of this file asks for it
		await page.addInitScript(watch);
		const debug = await stage.context.newCDPSession(page);
		const address = stage.address + side.search(count);
		await page.goto(address);
		await side.prepare(page, count);
		// A default is changed before the page is loaded anew: what undo knows is forgotten then.
		await debug.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
		const defaults: number[] = [];
		for (let turn = 0; turn < keys; turn++) {
			await page.evaluate((selector) => window.watchCell(selector), side.follows);
			await side.changeDefault(page, turn);
			defaults.push((await watchedIn(page)).painted);
			await page.waitForTimeout(1000);
		}
		const paints: number[] = [];
		for (let load = 0; load < loads; load++) {
			await page.goto(address);
			paints.push(await page.evaluate((selector) => window.firstPaint(selector), side.follows));
		}
		await page.waitForTimeout(3000);
		const painted: number[] = [];
		const work: number[] = [];
		for (let turn = 0; turn < keys; turn++) {
			await side.open(page);
			await page.keyboard.type(`${310 + 2 * turn}`); // by two, for the window is on the ruler on both sides
			await page.evaluate((selector) => window.watchCell(selector), side.follows);
			await page.keyboard.press('Enter');
			const { work: own, painted: all } = await watchedIn(page);
			work.push(own);
			painted.push(all);
			await page.waitForTimeout(500);
		}
		const before = await page.evaluate((selector) => document.querySelector(selector)?.scrollHeight, side.scroller);
		if (count > 30 && !(before! > count * 40)) throw new Error(`${side.scroller} is not what scrolls: ${before}`);
		const frames = await page.evaluate(([selector, turns]) => window.frames(selector, turns), [
			side.scroller,
			120,
		] as const);
		await page.waitForTimeout(500);
		return {
			'first paint': median(paints),
			'key to painted row': median(painted),
			'work of a key': median(work),
			'default changed to painted': median(defaults),
			'p95 frame, scrolling': [...frames].sort((a, b) => a - b)[Math.floor(frames.length * 0.95)]!,
			'heap, MB': await heapMb(debug),
		};
	} finally {
		await stage.strike();
	}
}

const folder = await mkdtemp(join(tmpdir(), 'evenhang-library-'));
await build({
	configFile: false,
	root: fileURLToPath(new URL('libraryGrid', import.meta.url)),
	base: './',
	logLevel: 'error',
	build: { outDir: folder, emptyOutDir: true, target: 'es2023' },
});
for (const count of counts.length > 0 ? counts : [30, 1000, 10_000]) {
	const [own, other] = [await measure(ours, count), await measure(library(folder), count)];
	const heads = ['ours', 'library', 'ratio', 'goal'].map((head) => head.padStart(10));
	console.log(`\n${count} rows`.padEnd(30) + heads.join(''));
	for (const key of Object.keys(own) as (keyof Figures)[]) {
		const ratio = own[key] / other[key];
		const goal = goals[key](count);
		const figures = [own[key].toFixed(1), other[key].toFixed(1), ratio.toFixed(2), goal?.toFixed(2) ?? ''];
		const isMissed = goal !== undefined && ratio > goal;
		console.log(key.padEnd(29) + figures.map((each) => each.padStart(10)).join('') + (isMissed ? '  missed' : ''));
	}
}
await rm(folder, { recursive: true });
await closeSharedBrowser();
