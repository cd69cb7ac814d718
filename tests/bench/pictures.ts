// How long 30 and 60 picture files of 24 megapixels take, how much memory, and what is kept of each.
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { serveFolder } from '../../src/cli/staticHost.ts';
import { findChromium } from '../browser/harness/findChromium.ts';
import { builtApp } from '../browser/harness/stage.ts';
import { paintedPicture } from '../browser/pictures/pictureFiles.ts';
import { type Busy, watchThread } from './watchThread.ts';

const said = ({ wallMs, threadMs }: Busy) => `${wallMs.toFixed(0)} ms (${threadMs.toFixed(0)} ms of processor)`;

const folder = await mkdtemp(join(tmpdir(), 'evenhang-pictures-'));
const host = await serveFolder(builtApp);
const browser = await chromium.launch({
	executablePath: findChromium(),
	args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'],
});

/** The greatest memory that the processes of pages have held, in MB; only Linux says it. */
async function peakMb(): Promise<number> {
	const debug = await browser.newBrowserCDPSession();
	const { processInfo } = (await debug.send('SystemInfo.getProcessInfo' as never)) as {
		processInfo: { type: string; id: number }[];
	};
	let peak = 0;
	for (const { type, id } of processInfo) {
		if (type !== 'renderer') continue;
		const status = await readFile(`/proc/${id}/status`, 'utf8').catch(() => '');
		peak = Math.max(peak, Number(/VmHWM:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024);
	}
	await debug.detach();
	return peak;
}

try {
	const painter = await browser.newPage();
	await painter.goto(host.address);
	const base = await paintedPicture(painter, 6000, 4000, 'image/jpeg', true);
	await painter.close();
	console.log(`6000 × 4000 JPEG files of ${(base.length / 1e6).toFixed(1)} MB`);
	for (const count of [30, 60]) {
		const files: string[] = [];
		for (let at = 0; at < count; at++) {
			// A comment of its own makes each another file.
			const comment = Buffer.from(`${count} ${at}`.padEnd(16));
			const bytes = Buffer.concat([base.subarray(0, 2), Buffer.from([0xff, 0xfe, 0, 18]), comment, base.subarray(2)]);
			files.push(join(folder, `Print ${count}-${at}.jpg`));
			await writeFile(files.at(-1)!, bytes);
		}
		const context = await browser.newContext({ serviceWorkers: 'block' });
		const page = await context.newPage();
		await page.goto(host.address);
		await page.getByRole('button', { name: 'Add pictures' }).waitFor();
		const idle = await peakMb();
		const whileComing = await watchThread(browser, page);
		const choosing = page.waitForEvent('filechooser');
		await page.getByRole('button', { name: 'Add pictures' }).click();
		const start = performance.now();
		await (await choosing).setFiles(files);
		const add = page.getByRole('button', { name: /^Add pictures: / });
		await add.waitFor({ timeout: 1_200_000 });
		const read = (performance.now() - start) / 1000;
		const coming = await whileComing();
		const whileAdded = await watchThread(browser, page);
		await add.click();
		await page.getByText('at the end of the list.').waitFor();
		await page.getByRole('gridcell').first().waitFor();
		const adding = await whileAdded();
		const kept = await page.evaluate(async () => {
			const opening = indexedDB.open('evenhang pictures');
			await new Promise((resolve) => (opening.onsuccess = resolve));
			const all = opening.result.transaction('pictures').objectStore('pictures').getAll();
			await new Promise((resolve) => (all.onsuccess = resolve));
			return (all.result as { size: number }[]).reduce((sum, { size }) => sum + size, 0) / all.result.length;
		});
		console.log(
			`${count} files: ${read.toFixed(1)} s, ${((1000 * read) / count).toFixed(0)} ms each; the page's thread busy at most ${said(coming)} while they come in, ${said(adding)} when they are added; memory of its process ${idle.toFixed(0)} MB before, ${(await peakMb()).toFixed(0)} MB at most; ${(kept / 1000).toFixed(0)} kB kept of each`,
		);
		await context.close();
	}
} finally {
	await browser.close();
	await host.stop();
	await rm(folder, { recursive: true, force: true });
}
