// How long the app takes to a grid that can be typed in, with thirty prints and the host switched off; and how large
// everything is that it keeps on the device. Part of `npm run bench`, after `npm run build`.
import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { builtApp, closeSharedBrowser, onStage } from '../browser/harness/stage.ts';

const starts = 5;

const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

/** Bytes of the files that the service worker keeps: all that was built but itself. */
async function bytesKept(): Promise<number> {
	const entries = await readdir(builtApp, { recursive: true, withFileTypes: true });
	const files = entries.filter((entry) => entry.isFile() && entry.name !== 'sw.js');
	const sizes = await Promise.all(files.map(async ({ parentPath, name }) => (await stat(join(parentPath, name))).size));
	return sizes.reduce((sum, size) => sum + size, 0);
}

const opened: number[] = [];
const typedIn: number[] = [];
let prints = 0;

await onStage({ isSharp: true }, async (stage) => {
	const first = await stage.openShow();
	await first.getByRole('button', { name: 'Load the example' }).click();
	await first.getByRole('grid').waitFor();
	await first.getByText('Saved', { exact: true }).waitFor();
	await stage.isKept(first);
	await stage.closeBrowser();
	await stage.stopHost();
	for (let start = 0; start < starts; start++) {
		await stage.openBrowser();
		const [page] = stage.context.pages();
		const begun = performance.now();
		await page!.goto(stage.address, { waitUntil: 'commit' });
		await page!.getByRole('grid').getByRole('row').nth(1).waitFor();
		opened.push(performance.now() - begun);
		prints = Number(await page!.getByRole('grid').getAttribute('aria-rowcount'));
		await page!.keyboard.press('Control+Home');
		await page!.getByRole('grid').getByRole('rowheader').first().click();
		await page!.keyboard.type('7');
		await page!.getByRole('grid').getByRole('textbox').waitFor();
		typedIn.push(performance.now() - begun);
		await page!.keyboard.press('Escape');
		await stage.closeBrowser();
	}
});
console.log(`kept on the device: ${((await bytesKept()) / 1024).toFixed(0)} KiB`);
console.log(
	`cold start without a host, median of ${starts}: grid of ${prints} rows after ${median(opened).toFixed(0)} ms,`,
);
console.log(`typed into after ${median(typedIn).toFixed(0)} ms (the browser's own start not counted)`);
await closeSharedBrowser();
