// Our grid beside a general-purpose one, showing the same cells, in one run: Chromium, four times slower than it is.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import type { CDPSession, Page } from 'playwright-core';
import { build } from 'vite';
import { columnIndexOf } from '../../src/ui/grid/gridColumns.ts';
import { builtApp, Stage } from '../browser/harness/stage.ts';
import { cell, startTyping } from '../browser/screens/prints.ts';
import { openSettings } from '../browser/screens/settingsOf.ts';
import { type Measure, type Measured, median, shareOf } from './goals.ts';
import { printCells } from './printCells.ts';

/** How many times slower the page runs than this machine. */
export const slowdown = 4;
/** How often a page is loaded for each figure, which is their median. */
export const loads = 5;
const keysALoad = 3;
const framesALoad = 16;

type Figures = Readonly<Record<Exclude<Measure, 'offline cold start to typing'>, number>>;

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
	/** Takes back what was typed last; left out where nothing of it is kept when the page is loaded again. */
	readonly undo?: (page: Page) => Promise<void>;
}

/** Put into each page before its own scripts: tells when cells show something new, and when that has been painted. */
const watch = (follows: string): void => {
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
		/** From the beginning of the load to the first row, painted with what it works out. */
		firstPaint: changed(follows, '').then(painted),
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
	firstPaint: Promise<number>;
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
		await pause(2000); // where one is in the show is kept a moment after that: it has to open here
	},
	typed: `[data-row="0"][data-column="${columnIndexOf('picture width')}"]`,
	follows: `[data-row="0"][data-column="${columnIndexOf('window width')}"]`,
	scroller: '[role=grid]',
	// By way of another: a click on the cell that is active already would open it.
	open: async (page) => {
		for (const row of [1, 0]) await cell(page, row, 'picture width').click();
	},
	changeDefault: (page, turn) => page.keyboard.press(turn % 2 === 0 ? 'Control+z' : 'Control+y'),
	undo: (page) => page.keyboard.press('Control+z'),
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

/** Resolves when the page's thread has had next to nothing to do for a while. */
async function settled(debug: CDPSession): Promise<void> {
	const busyMs = async () => {
		const { metrics } = await debug.send('Performance.getMetrics');
		return 1000 * metrics.find(({ name }) => name === 'TaskDuration')!.value;
	};
	let last = await busyMs();
	for (let calm = 0, turns = 0; calm < 2; turns++) {
		if (turns > 800) throw new Error('the page never comes to rest');
		await pause(100);
		const now = await busyMs();
		calm = now - last < 10 ? calm + 1 : 0;
		last = now;
	}
}

/** What never comes is told, not waited for. */
const inTime = <Result>(awaited: Promise<Result>): Promise<Result> =>
	Promise.race([
		awaited,
		pause(120_000, undefined, { ref: false }).then(() => {
			throw new Error('nothing came of it in two minutes');
		}),
	]);

/** Does something to the page that a cell of its first row shows. @returns how long that takes, in milliseconds */
async function untilShown(page: Page, debug: CDPSession, side: Side, act: () => Promise<void>) {
	await settled(debug);
	await page.evaluate((selector) => window.watchCell(selector), side.follows);
	await act();
	return inTime(page.evaluate(() => window.watched));
}

async function measure(side: Side, count: number): Promise<Figures> {
	const stage = await Stage.set({ folder: side.folder, isSharp: true, viewport: { width: 1440, height: 900 } });
	try {
		const page = await stage.context.newPage();
		page.setDefaultTimeout(120_000);
		await page.addInitScript('globalThis.__name = (named) => named'); // the compiler of this file asks for it
		await page.addInitScript(watch, side.follows);
		const debug = await stage.context.newCDPSession(page);
		await debug.send('Performance.enable');
		const address = stage.address + side.search(count);
		await page.goto(address);
		await side.prepare(page, count);
		await debug.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
		const [paints, defaults, work, painted, frames, heaps]: number[][] = [[], [], [], [], [], []];
		for (let load = 0; load < loads; load++) {
			await page.goto(address);
			paints!.push(await inTime(page.evaluate(() => window.firstPaint)));
			await settled(debug);
			await side.open(page);
			for (const turn of [0, 1])
				defaults!.push((await untilShown(page, debug, side, () => side.changeDefault(page, turn))).painted);
			const keys: { work: number; painted: number }[] = [];
			for (let turn = 0; turn < keysALoad; turn++) {
				await side.open(page);
				await page.keyboard.type(`${310 + 2 * turn}`); // by two, for the window is on the ruler on both sides
				keys.push(await untilShown(page, debug, side, () => page.keyboard.press('Enter')));
			}
			work!.push(median(keys.map((key) => key.work)));
			painted!.push(median(keys.map((key) => key.painted)));
			// Typed again in the next load, they have to change something.
			const { undo } = side;
			for (let turn = 0; undo && turn < keysALoad; turn++) await untilShown(page, debug, side, () => undo(page));
			const height = await page.evaluate((selector) => document.querySelector(selector)?.scrollHeight, side.scroller);
			if (count > 30 && !(height! > count * 40)) throw new Error(`${side.scroller} is not what scrolls: ${height}`);
			await settled(debug);
			const scrolled = [side.scroller, framesALoad] as const;
			frames!.push(...(await page.evaluate(([selector, turns]) => window.frames(selector, turns), scrolled)));
			heaps!.push(await heapMb(debug));
		}
		return {
			'first paint': median(paints!),
			'work of a key': median(work!),
			'key to painted row': median(painted!),
			'default changed to painted': median(defaults!),
			'p95 frame, scrolling': shareOf(frames!, 0.95),
			'memory, MB': median(heaps!),
		};
	} finally {
		await stage.strike();
	}
}

/** Measures both grids with so many rows, one after the other. */
export async function measureGrids(counts: readonly number[]): Promise<readonly Measured[]> {
	const folder = await mkdtemp(join(tmpdir(), 'evenhang-library-'));
	try {
		await build({
			configFile: false,
			root: fileURLToPath(new URL('libraryGrid', import.meta.url)),
			base: './',
			logLevel: 'error',
			build: { outDir: folder, emptyOutDir: true, target: 'es2023' },
		});
		const measured: Measured[] = [];
		for (const rows of counts) {
			const [own, other] = [await measure(ours, rows), await measure(library(folder), rows)];
			for (const measure of Object.keys(own) as (keyof Figures)[])
				measured.push({ measure, rows, ours: own[measure], other: other[measure] });
		}
		return measured;
	} finally {
		await rm(folder, { recursive: true });
	}
}
