// Ours beside a general-purpose grid and a page of text, in one table with the goals: the last part of `npm run bench`,
// after `npm run build`. `npx tsx tests/bench/sideBySide.ts 30` measures one length alone.
import { loadavg } from 'node:os';
import { closeSharedBrowser } from '../browser/harness/stage.ts';
import { measureColdStart } from './coldStart.ts';
import { tableOf } from './goals.ts';
import { loads, measureGrids, slowdown } from './grids.ts';

const asked = process.argv.slice(2).map(Number);
const counts = asked.length > 0 ? asked : [30, 1000, 10_000];
const begun = loadavg()[0]!;
const measured = [...(await measureGrids(counts)), ...(counts.includes(30) ? [await measureColdStart(30)] : [])];
console.log(`
Ours beside a library's grid; the cold start beside a page with the same rows as text. In milliseconds but for the memory;
medians of ${loads} loads, the browser ${slowdown} times slower than it is; load of the machine ${begun.toFixed(1)} at first, ${loadavg()[0]!.toFixed(1)} at last.
`);
for (const line of tableOf(measured)) console.log(line);
await closeSharedBrowser();
