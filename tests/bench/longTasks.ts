// How long the page answers nothing while something is worked out from 10,000 prints, on a machine four times slower.
// Part of `npm run bench`.
import { closeSharedBrowser, onStage } from '../browser/harness/stage.ts';
import { deeds, openLongShow } from './longShow.ts';
import { watchThread } from './watchThread.ts';

const count = Number(process.argv[2] ?? 10_000);
const slowdown = 4;

/** What may take no longer at a time, in milliseconds: longer is felt. */
const felt = 50;

await onStage({ isSharp: true }, async (stage) => {
	const page = await openLongShow(stage, count);
	const browser = stage.context.browser()!;
	const debug = await stage.context.newCDPSession(page);
	await debug.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
	console.log(`${count} prints, ${slowdown} times slower; the longest task, in ms (over ${felt} is felt)`);
	for (const [what, act] of deeds) {
		if (process.argv[3] !== undefined && !what.includes(process.argv[3])) continue;
		const end = await watchThread(browser, page);
		await act(page);
		const { wallMs, threadMs } = await end();
		console.log(`${what}: ${wallMs.toFixed(0)} by the clock, ${threadMs.toFixed(0)} of the processor`);
	}
});
await closeSharedBrowser();
