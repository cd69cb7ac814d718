// Where the time goes when something is done: of the page's thread, by function, on a machine four times slower. Builds the
// app with its names left as they are: `npx tsx tests/bench/profile.ts WHAT [ROWS]`.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { closeSharedBrowser, onStage } from '../browser/harness/stage.ts';
import { deeds, openLongShow } from './longShow.ts';
import { type CpuProfile, timesOf } from './timesOf.ts';

const [what = '', rows = '10000', shown = '30'] = process.argv.slice(2);
const folder = await mkdtemp(join(tmpdir(), 'evenhang-profile-'));
await build({ logLevel: 'error', build: { outDir: folder, emptyOutDir: true, minify: false } });
await onStage({ folder, isSharp: true }, async (stage) => {
	const page = await openLongShow(stage, Number(rows));
	const debug = await stage.context.newCDPSession(page);
	await debug.send('Emulation.setCPUThrottlingRate', { rate: 4 });
	await debug.send('Profiler.enable');
	await debug.send('Profiler.setSamplingInterval', { interval: 500 });
	for (const [name, act] of deeds) {
		const isAsked = name.includes(what);
		if (isAsked) await debug.send('Profiler.start');
		await act(page);
		if (!isAsked) continue;
		const { profile } = (await debug.send('Profiler.stop')) as { profile: CpuProfile };
		console.log(`\n${name}: ms of itself, ms with what it calls`);
		for (const { name: of, selfMs, totalMs } of timesOf(profile).slice(0, Number(shown)))
			console.log(`${selfMs.toFixed(1).padStart(9)} ${totalMs.toFixed(1).padStart(9)}  ${of}`);
	}
});
await closeSharedBrowser();
await rm(folder, { recursive: true });
