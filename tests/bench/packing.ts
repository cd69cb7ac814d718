// How many board plans are proven, and how fast: here and in the worker of the built app, beside a general-purpose packer.
// Part of `npm run bench`. A folder with published instances may be named after `--`; it holds
// shows.json and instances.json: lists of { name, sheet: [w, h], blanks: [[w, h, copies]], least, best }.
import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import type * as MaxRects from 'maxrects-packer';
import type { Page } from 'playwright-core';
import type { BoardPlan } from '../../src/core/sheets/boardPlan.ts';
import { packBoard } from '../../src/core/sheets/packBoard.ts';
import type { PackingJob } from '../../src/core/sheets/packingJob.ts';
import { openHighs } from '../../src/solver/openHighs.ts';
import type { PackingReply } from '../../src/workers/protocol.ts';
import { builtApp, closeSharedBrowser, onStage } from '../browser/harness/stage.ts';
import { problemsOfLayout } from '../unit/core/sheets/checkLayout.ts';
import { madeUpPricedShow, madeUpShow, wasteless } from '../unit/core/sheets/madeUpJobs.ts';
import { jobOf, sheetOf, type SizeMm } from '../unit/core/sheets/packingOf.ts';

const { MaxRectsPacker } = createRequire(import.meta.url)('maxrects-packer') as typeof MaxRects;

/** A job, and the count that is known to be possible. */
interface Case {
	readonly job: PackingJob;
	readonly best?: number;
}

interface Set {
	readonly name: string;
	readonly seconds: number;
	readonly isForBrowser: boolean;
	readonly cases: readonly Case[];
}

interface Published {
	readonly sheet: readonly [number, number];
	readonly blanks: readonly SizeMm[];
	readonly best: number;
}

const seeds = (count: number) => Array.from({ length: count }, (_, index) => index + 1);

async function published(folder: string | undefined, file: string, seconds: number): Promise<readonly Set[]> {
	const path = folder === undefined ? undefined : join(folder, file);
	if (path === undefined || !existsSync(path)) {
		console.log(`${file}: not measured, no folder with it is named`);
		return [];
	}
	const cases = (JSON.parse(await readFile(path, 'utf8')) as readonly Published[]).map(({ sheet, blanks, best }) => ({
		job: jobOf([sheetOf(...sheet)], blanks),
		best,
	}));
	return [{ name: file, seconds, isForBrowser: seconds <= 2, cases }];
}

const folder = process.argv.slice(2).find((argument) => argument !== '--');
const sets: readonly Set[] = [
	...(await published(folder, 'shows.json', 2)),
	{
		name: 'made-up shows, one sheet',
		seconds: 2,
		isForBrowser: true,
		cases: seeds(20).map((seed) => ({ job: madeUpShow(seed) })),
	},
	{
		name: 'made-up shows, priced sheets and offcuts',
		seconds: 2,
		isForBrowser: true,
		cases: seeds(20).map((seed) => ({ job: madeUpPricedShow(seed) })),
	},
	{
		name: 'sheets cut without waste',
		seconds: 10,
		isForBrowser: false,
		cases: seeds(25).map((seed) => {
			const { job, count } = wasteless(seed);
			return { job, best: count };
		}),
	},
	...(await published(folder, 'instances.json', 10)),
];

interface Run {
	readonly plan: BoardPlan;
	readonly firstMs: number;
	readonly ms: number;
}

const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

function report(where: string, { name, cases }: Set, runs: readonly Run[]): void {
	const times = runs.map(({ ms }) => ms);
	const plans = runs.map(({ plan }) => plan);
	for (const { layouts } of plans)
		for (const layout of layouts) {
			const [problem] = problemsOfLayout(layout.stock, layout);
			if (problem !== undefined) throw new Error(`${name}: ${problem}`);
		}
	const known = cases.filter(({ best }) => best !== undefined);
	const over = plans.map(({ count }, place) => count - (cases[place]!.best ?? count));
	const wrong = plans.filter(({ leastCount }, place) => leastCount > (cases[place]!.best ?? Infinity)).length;
	const words = [
		`${plans.filter(({ proven }) => proven).length} of ${plans.length} proven`,
		`median ${median(times).toFixed(0)} ms, slowest ${Math.max(...times).toFixed(0)} ms`,
		`first plan after ${Math.max(...runs.map(({ firstMs }) => firstMs)).toFixed(0)} ms at most`,
		`${plans.reduce((sum, { count }) => sum + count, 0)} sheets`,
		...(known.length === 0
			? []
			: [
					`best known ${known.reduce((sum, { best }) => sum + best!, 0)}`,
					`${over.filter((sheets) => sheets > 0).length} over it, by ${Math.max(...over)} at most`,
					`${wrong} wrong bounds`,
				]),
	];
	console.log(`${where}: ${name}: ${words.join('; ')}`);
}

/** The same blanks in the same sheets by a packer that knows no knife: its layouts cannot all be cut edge to edge. */
function reportOther({ name, cases }: Set): void {
	const start = performance.now();
	const count = cases.reduce((sum, { job: { stock, blanks } }) => {
		const scale = 100_000; // a hundredth of a millimetre
		const { width, height } = stock[0]!;
		const options = { smart: false, pot: false, square: false, allowRotation: true, tag: false, border: 0 };
		const packer = new MaxRectsPacker(width / scale, height / scale, 0, options);
		for (const blank of [...blanks].sort((a, b) => b.width * b.height - a.width * a.height))
			packer.add(blank.width / scale, blank.height / scale, blank);
		return sum + packer.bins.length;
	}, 0);
	const ms = (performance.now() - start) / cases.length;
	console.log(
		`maxrects-packer: ${name}: ${count} sheets, not all to be cut edge to edge, none proven; ${ms.toFixed(0)} ms each`,
	);
}

const openProgram = await openHighs();

function runHere({ job }: Case, seconds: number): Run {
	const start = performance.now();
	let firstMs: number | undefined;
	const secondsLeft = () => seconds - (performance.now() - start) / 1000;
	const onPlan = () => (firstMs ??= performance.now() - start);
	const plan = packBoard(job, { openProgram, secondsLeft, onPlan });
	return { plan, firstMs: firstMs!, ms: performance.now() - start };
}

/** One job in a worker of its own, its start and the loading of the solver counted. */
const runThere = (page: Page, worker: string, { job }: Case, seconds: number): Promise<Run> =>
	page.evaluate(
		({ worker, job, seconds }) =>
			new Promise<Run>((resolve, reject) => {
				const start = performance.now();
				let firstMs: number | undefined;
				const packing = new Worker(worker, { type: 'module' });
				packing.onerror = ({ message }) => reject(new Error(message));
				packing.onmessage = ({ data }: MessageEvent<PackingReply>) => {
					const ms = performance.now() - start;
					if ('news' in data) {
						firstMs ??= ms;
						return;
					}
					packing.terminate();
					if ('answer' in data) resolve({ plan: data.answer[0]!, firstMs: firstMs!, ms });
					else reject(new Error(data.problem));
				};
				packing.postMessage({ jobs: [job], seconds });
			}),
		{ worker, job, seconds },
	);

console.log(`load ${loadavg()[0]!.toFixed(1)} on ${cpus().length} cores at the start`);
for (const set of sets) {
	report(
		'Node',
		set,
		set.cases.map((one) => runHere(one, set.seconds)),
	);
	if (set.cases[0]!.job.stock.length === 1) reportOther(set);
}
console.log(`load ${loadavg()[0]!.toFixed(1)}, ${(process.memoryUsage().rss / 2 ** 20).toFixed(0)} MiB in Node`);
const assets = await readdir(join(builtApp, 'assets'));
const worker = assets.find((file) => file.startsWith('packing.worker'));
if (worker === undefined) throw new Error('the built app has no worker for boards');
await onStage({ isSharp: true }, async (stage) => {
	const page = await stage.openApp();
	for (const set of sets.filter(({ isForBrowser }) => isForBrowser)) {
		const runs: Run[] = [];
		for (const one of set.cases) runs.push(await runThere(page, `assets/${worker}`, one, set.seconds));
		report('Chromium', set, runs);
	}
});
console.log(`load ${loadavg()[0]!.toFixed(1)} at the end`);
await closeSharedBrowser();
