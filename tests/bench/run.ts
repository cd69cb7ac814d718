// Runs every bench, one after the other, and last the one that is beside others, with its goals: `npm run bench`. One that
// fails does not keep the next from being run.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

const script = (name: string) => ['tsx', `tests/bench/${name}.ts`] as const;
const benches: readonly (readonly [tool: string, ...args: string[]])[] = [
	['vite', 'build', '--logLevel', 'error'],
	['vitest', 'bench', '--run', '--project', 'unit'],
	script('packing'),
	script('longTasks'),
	script('exchange'),
	script('pictures'),
	script('wallDrag'),
	script('sideBySide'),
];

/** Runs one, and lets it speak for itself. @returns whether it came to its end */
const ends = ([tool, ...args]: (typeof benches)[number]): Promise<boolean> =>
	new Promise((resolve) => {
		const child = spawn(join(root, 'node_modules/.bin', tool), args, { cwd: root, stdio: 'inherit' });
		child.on('error', () => resolve(false));
		child.on('close', (code) => resolve(code === 0));
	});

const secondsSince = (start: number) => ((performance.now() - start) / 1000).toFixed(0);

const start = performance.now();
const took: string[] = [];
for (const bench of benches) {
	const begun = performance.now();
	const isDone = await ends(bench);
	const [tool, name] = bench;
	took.push(`${tool === 'tsx' ? name : tool}${isDone ? '' : ' FAILED after'} ${secondsSince(begun)} s`);
	if (!isDone) process.exitCode = 1;
}
console.log(`\n${secondsSince(start)} s in all: ${took.join(', ')}`);
