// How many frames a second a print of 300 on 12 walls is dragged at, on a machine four times as slow, and where the time goes.
import { chromium } from 'playwright-core';
import { serveFolder } from '../../src/cli/staticHost.ts';
import { findChromium } from '../browser/harness/findChromium.ts';
import { openFirstShow } from '../browser/harness/openShow.ts';
import { builtApp, landscapeTablet } from '../browser/harness/stage.ts';
import { paintedPicture } from '../browser/pictures/pictureFiles.ts';

const [walls, prints, pictures, moves, runs, slower] = [12, 300, 40, 200, 3, 4];

const host = await serveFolder(builtApp);
const browser = await chromium.launch({
	executablePath: findChromium(),
	args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'],
});

const sizes = ['500', '420', '380', '610', '450'];
const show = {
	format: 'evenhang-show' as const,
	version: 8,
	name: 'Long rooms',
	settings: {
		unit: 'mm',
		frames: [{ name: 'Ash', clearance: 2, moulding: 20, lip: 6, depth: 20, weight: 0.4 }],
		walls: Array.from({ length: walls }, (_, at) => ({
			name: `Wall ${at + 1}`,
			length: 20000,
			height: 3000,
			obstacles: [{ name: 'door', left: 9000, width: 1000, height: 2100 }],
		})),
	},
	rows: Array.from({ length: prints }, (_, at) => ({
		id: `r${at}`,
		order: at + 1,
		typed: {
			title: `Print ${at + 1}`,
			'picture width': '300',
			'picture height': '200',
			'mount width': sizes[at % sizes.length]!,
			'mount height': '400',
			frame: 'Ash',
			wall: `Wall ${1 + Math.floor((at * walls) / prints)}`,
			'picture file': `Bench ${at % pictures}.jpg`,
		},
	})),
};

const at = (of: readonly number[], share: number) => of.toSorted((a, b) => a - b)[Math.floor(share * (of.length - 1))]!;

try {
	const page = await browser.newPage({ viewport: landscapeTablet, reducedMotion: 'reduce', serviceWorkers: 'block' });
	await page.goto(host.address);
	await openFirstShow(page, show);
	const base = await paintedPicture(page, 1200, 800, 'image/jpeg');
	const files = Array.from({ length: pictures }, (_, each) => {
		const comment = Buffer.from(`${each}`.padEnd(16));
		const bytes = Buffer.concat([base.subarray(0, 2), Buffer.from([0xff, 0xfe, 0, 18]), comment, base.subarray(2)]);
		return { name: `Bench ${each}.jpg`, mimeType: 'image/jpeg', buffer: bytes };
	});
	await page.getByRole('button', { name: 'Files', exact: true }).click();
	const choosing = page.waitForEvent('filechooser');
	await page.getByRole('button', { name: 'Add pictures' }).click();
	await (await choosing).setFiles(files);
	await page.getByRole('button', { name: /^Add pictures: / }).click({ timeout: 300_000 });
	await page.getByText(/have a picture now/).waitFor();
	await page.goto(`${host.address}#wall`);
	await page
		.locator('image')
		.nth(prints - 1)
		.waitFor({ state: 'attached', timeout: 60_000 });

	const debug = await page.context().newCDPSession(page);
	await debug.send('Performance.enable', { timeDomain: 'threadTicks' });
	const metrics = async () => {
		const { metrics: all } = await debug.send('Performance.getMetrics');
		const of = (name: string) => all.find((each) => each.name === name)?.value ?? 0;
		return ['TaskDuration', 'ScriptDuration', 'LayoutDuration', 'RecalcStyleDuration'].map(of);
	};
	const mouse = (type: 'mousePressed' | 'mouseMoved' | 'mouseReleased', x: number, y: number) =>
		debug.send('Input.dispatchMouseEvent', { type, x, y, button: 'left', buttons: 1, clickCount: 1 });
	await debug.send('Emulation.setCPUThrottlingRate', { rate: slower });
	for (let run = 0; run < runs; run++) {
		const box = (await page.getByRole('button', { name: /^Print 7, on / }).boundingBox())!;
		const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
		await mouse('mousePressed', x, y);
		await mouse('mouseMoved', x + 10, y);
		await mouse('mouseMoved', x + 12, y);
		await page.evaluate(() => {
			const held = {
				frames: [] as number[],
				isOn: true,
				note(now: number) {
					held.frames.push(now);
					if (held.isOn) requestAnimationFrame((next) => held.note(next));
				},
			};
			Object.assign(globalThis, { held });
			requestAnimationFrame((now) => held.note(now));
		});
		const before = await metrics();
		for (let move = 0; move < moves; move++) await mouse('mouseMoved', x + 12 + 60 * Math.sin(move / 12), y);
		const after = await metrics();
		const frames = await page.evaluate(() => {
			const { held } = globalThis as unknown as { held: { frames: number[]; isOn: boolean } };
			held.isOn = false;
			return held.frames;
		});
		await page.keyboard.press('Escape');
		await mouse('mouseReleased', x, y);
		const spans = frames.slice(1).map((now, each) => now - frames[each]!);
		const [task, script, layout, style] = after.map((value, each) => (1000 * (value - before[each]!)) / spans.length);
		console.log(
			`run ${run + 1}: ${spans.length} frames; median ${at(spans, 0.5).toFixed(1)} ms, 95 of 100 within ${at(spans, 0.95).toFixed(1)} ms, over 20 ms ${((100 * spans.filter((span) => span > 20).length) / spans.length).toFixed(0)} %; the page's thread a frame ${task!.toFixed(1)} ms: script ${script!.toFixed(1)}, style ${style!.toFixed(1)}, layout ${layout!.toFixed(1)}`,
		);
	}
} finally {
	await browser.close();
	await host.stop();
}
