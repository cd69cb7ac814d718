// How long it takes from a browser that has just been opened, with the host switched off, to a show that is typed into:
// beside a page that shows the same rows as text and can be typed into. Four times slower than this machine.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import type { Page } from 'playwright-core';
import { build } from 'vite';
import { judgeRow } from '../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';
import { withCells } from '../../src/core/show/withCells.ts';
import { cellViews } from '../../src/ui/grid/cellView.ts';
import { gridColumns } from '../../src/ui/grid/gridColumns.ts';
import { builtApp, onStage } from '../browser/harness/stage.ts';
import { cell, paste, startTyping } from '../browser/screens/prints.ts';
import { type Measured, median } from './goals.ts';
import { loads, slowdown } from './grids.ts';
import { printCells } from './printCells.ts';

/** A page that opens without a host. */
interface Opening {
	readonly folder: string;
	/** What is kept on the device before. */
	readonly prepare: (page: Page) => Promise<void>;
	/** Types a figure as soon as the rows are there. */
	readonly type: (page: Page) => Promise<void>;
}

const ours = (rows: number): Opening => ({
	folder: builtApp,
	prepare: async (page) => {
		await startTyping(page);
		await page.keyboard.press('Home');
		const lines = Array.from({ length: rows }, (_, place) => {
			const cells = printCells(place);
			return [cells.number, cells.title, '', cells['picture width'], cells['picture height']].join('\t');
		});
		await paste(page, lines.join('\n'));
		await page.getByText('Saved', { exact: true }).waitFor();
	},
	type: async (page) => {
		await cell(page, 0, 'number').click();
		await page.keyboard.type('7');
		await page.getByRole('grid').getByRole('textbox').waitFor();
	},
});

const asText = (folder: string): Opening => ({
	folder,
	prepare: async (page) => {
		await page.evaluate(() => navigator.serviceWorker.ready);
		await page.reload(); // what came before there was a service worker is kept now
	},
	type: async (page) => {
		await page.locator('td').first().waitFor();
		await page.getByRole('textbox').click();
		await page.keyboard.type('7');
		await page.waitForFunction(() => document.querySelector('input')?.value === '7');
	},
});

/** The median of several cold starts, in milliseconds; the browser's own start is not counted. */
async function timeOf({ folder, prepare, type }: Opening): Promise<number> {
	const times: number[] = [];
	await onStage({ folder, isSharp: true, hasProfile: true }, async (stage) => {
		const first = await stage.openApp();
		await prepare(first);
		await stage.isKept(first);
		await stage.closeBrowser();
		await stage.stopHost();
		for (let start = 0; start < loads; start++) {
			await stage.openBrowser();
			const page = stage.context.pages()[0] ?? (await stage.context.newPage());
			const debug = await stage.context.newCDPSession(page);
			await debug.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
			const begun = performance.now();
			await page.goto(stage.address, { waitUntil: 'commit' });
			await type(page);
			times.push(performance.now() - begun);
			await stage.closeBrowser();
		}
	});
	return median(times);
}

/** What the grid shows of each row, cell by cell. */
function textsOf(rows: number): readonly (readonly string[])[] {
	const { settings } = readSettings({});
	return Array.from({ length: rows }, (_, order) => {
		const row = withCells({ id: `r${order}`, order, typed: {} }, printCells(order), settings);
		const views = cellViews({ row, result: judgeRow(row, settings), steps: [], settings }, gridColumns);
		return views.map(({ text }) => text);
	});
}

/** Measures the cold start of a show with so many rows, beside that of the page of text. */
export async function measureColdStart(rows: number): Promise<Measured> {
	const folder = await mkdtemp(join(tmpdir(), 'evenhang-blank-'));
	try {
		await build({
			configFile: false,
			root: fileURLToPath(new URL('blankPage', import.meta.url)),
			base: './',
			logLevel: 'error',
			plugins: [svelte()],
			define: { rowsAsText: JSON.stringify(textsOf(rows)) },
			build: { outDir: folder, emptyOutDir: true, target: 'es2023' },
		});
		const [own, other] = [await timeOf(ours(rows)), await timeOf(asText(folder))];
		return { measure: 'offline cold start to typing', rows, ours: own, other };
	} finally {
		await rm(folder, { recursive: true });
	}
}
