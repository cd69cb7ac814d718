// How long 20,000 rows of CSV take to come in and to be compared again, and how much memory that is; then lists that are
// far too large for what they hold. Part of `npm run bench`.
import { performance } from 'node:perf_hooks';
import type { Page } from 'playwright-core';
import { chooseFile } from '../browser/harness/chooseFile.ts';
import { closeSharedBrowser, onStage } from '../browser/harness/stage.ts';

const rows = 20_000;

const csv = (isChanged: (at: number) => boolean) =>
	[
		'print id,number,title,picture width,picture height,note',
		...Array.from({ length: rows }, (_, at) =>
			[`p${at}`, at + 1, `Print ${at + 1}`, 200 + (at % 300), 150 + (at % 200), isChanged(at) ? 'seen' : ''].join(','),
		),
	].join('\n');

/** Begins to watch for the longest time in which the page answered nothing. */
const watchStalls = (page: Page): Promise<void> =>
	page.evaluate(() => {
		const watched = { longest: 0, last: performance.now() };
		Object.assign(window, { watched });
		setInterval(() => {
			const now = performance.now();
			watched.longest = Math.max(watched.longest, now - watched.last);
			watched.last = now;
		}, 5);
	});
const longestStall = (page: Page): Promise<number> =>
	page.evaluate(() => {
		const { watched } = window as unknown as { watched: { longest: number } };
		const { longest } = watched;
		watched.longest = 0;
		return longest;
	});

await onStage({ isSharp: true }, async (stage) => {
	const page = await stage.openShow();
	page.setDefaultTimeout(300_000);
	const debug = await stage.context.newCDPSession(page);
	const heapMb = async () => {
		await debug.send('HeapProfiler.collectGarbage');
		return (await debug.send('Runtime.getHeapUsage')).usedSize / 2 ** 20;
	};
	const tell = async (what: string, begun: number) => {
		const tookMs = performance.now() - begun;
		const stallMs = await longestStall(page);
		const heap = await heapMb();
		console.log(
			`${what}: ${(tookMs / 1000).toFixed(1)} s, longest stall ${stallMs.toFixed(0)} ms, heap ${heap.toFixed(0)} MB`,
		);
		await longestStall(page);
	};
	console.log(`${rows} rows of CSV; heap before ${(await heapMb()).toFixed(0)} MB`);
	await watchStalls(page);

	let begun = performance.now();
	await chooseFile(
		page,
		'Import a file',
		'many.csv',
		csv(() => false),
	);
	await page.getByRole('progressbar').waitFor();
	await page.getByRole('button', { name: 'Cancel' }).click();
	await page.getByRole('progressbar').waitFor({ state: 'detached' });
	await tell('begun and cancelled', begun);

	begun = performance.now();
	await chooseFile(
		page,
		'Import a file',
		'many.csv',
		csv(() => false),
	);
	await page.getByText(/rows read$/).waitFor();
	await page.getByRole('grid').waitFor();
	await tell('read, worked out and in the grid', begun);
	await page.getByText('Saved', { exact: true }).waitFor();
	await tell('and on disk', begun);

	await page.getByRole('button', { name: 'Close' }).first().click();
	await page.getByRole('button', { name: 'Files', exact: true }).click();
	begun = performance.now();
	await chooseFile(
		page,
		'Import rows',
		'again.csv',
		csv((at) => at % 10 === 0),
	);
	await page.getByRole('heading', { name: /^What differs/ }).waitFor();
	await tell('compared, a tenth of the rows changed', begun);
	begun = performance.now();
	await page.getByRole('button', { name: 'Import as chosen' }).click();
	await page.getByText(/rows read$/).waitFor();
	await tell('taken', begun);
});

/** Lists that are far too large for what they hold. */
const columns = Array.from({ length: 100_000 }, (_, place) => `column ${place}`).join(',');
const tooLarge: readonly (readonly [what: string, list: string])[] = [
	['100,000 columns', `title,side,${columns}\nPier,70,${columns}\n`],
	['a cell of 5 MB of words', `title,side\n${'word '.repeat(1_000_000)},70\n`],
	['a cell of 5 MB of lengths', `title,picture size\nPier,${'5 x '.repeat(1_250_000)}\n`],
	['5,000 equal ids', `print id,title\n${Array.from({ length: 5000 }, (_, at) => `same,Pier ${at}\n`).join('')}`],
];
for (const [what, list] of tooLarge)
	await onStage({ isSharp: true }, async (stage) => {
		const page = await stage.openShow();
		page.setDefaultTimeout(300_000);
		await watchStalls(page);
		const begun = performance.now();
		await chooseFile(page, 'Import a file', 'large.csv', list);
		await page.getByText(/rows? read$/).waitFor();
		await page.getByText('Saved', { exact: true }).waitFor();
		const seconds = (performance.now() - begun) / 1000;
		console.log(`${what}: ${seconds.toFixed(1)} s, longest stall ${(await longestStall(page)).toFixed(0)} ms`);
	});
await closeSharedBrowser();
