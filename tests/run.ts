// Runs everything and says the sum. `npm test` runs all of it, `npm run check` what needs no test, `npm run soak` the
// properties over many more rows, each time from another seed, `npm run browsers` the main job in other browsers.
import { spawn } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** How many of something went well and how many did not. */
interface Sum {
	readonly passed: number;
	readonly failed: number;
}

/** A tool that passes or fails as a whole; what it says is shown only when it fails. */
type Check = readonly [name: string, tool: string, ...args: string[]];

/** Those that keep one core busy come first, the longest before the others; the last fills both. */
const checks: readonly Check[] = [
	[
		'types of the app',
		'svelte-check',
		'--tsconfig',
		'tsconfig.json',
		'--fail-on-warnings',
		'--output',
		'human',
		'--tsgo',
	],
	['lint of Svelte', 'eslint', '.', '--max-warnings', '0'],
	['floors', 'depcruise', 'src', 'tests', '--config', '.dependency-cruiser.cjs'],
	['format', 'oxfmt', '--threads=1', '--check', '.'], // a second thread would load all of Prettier once more
	['types and lint of every floor', 'oxlint'],
];

/** What the plays in the browser open. */
const build: Check = ['build', 'vite', 'build'];

/** How a process ended, and what it said if it was not let speak for itself. */
interface Ended {
	readonly code: number;
	readonly said: string;
}

function run(tool: string, args: readonly string[], isShown: boolean, env: NodeJS.ProcessEnv = {}): Promise<Ended> {
	return new Promise((resolve) => {
		const child = spawn(join(root, 'node_modules/.bin', tool), args, {
			cwd: root,
			env: { ...process.env, ...env },
			stdio: ['ignore', isShown ? 'inherit' : 'pipe', isShown ? 'inherit' : 'pipe'],
		});
		let said = '';
		const listen = (text: string) => (said += text);
		child.stdout?.setEncoding('utf8').on('data', listen);
		child.stderr?.setEncoding('utf8').on('data', listen);
		child.on('error', (cause) => resolve({ code: 1, said: `${said}\n${cause.message}` }));
		child.on('close', (code) => resolve({ code: code ?? 1, said }));
	});
}

/** What the build tool says of something that is not as it should be; `npm start` says nothing of the kind. */
const warning = /\(!\)|\b[Ww]arn|externalized|\[[A-Z_]{5,}\]/;

async function passes(check: Check): Promise<boolean> {
	const [name, tool, ...args] = check;
	const start = performance.now();
	const { code, said } = await run(tool, args, false);
	const seconds = ((performance.now() - start) / 1000).toFixed(1);
	const isPassed = code === 0 && !(check === build && warning.test(said));
	console.log(`${isPassed ? 'passed' : 'FAILED'}  ${name} (${seconds} s)`);
	if (!isPassed) console.log(said.trimEnd());
	return isPassed;
}

/** Runs the checks, two at a time. @returns those that failed */
async function runChecks(list: readonly Check[]): Promise<Check[]> {
	const waiting = [...list];
	const failed: Check[] = [];
	const worker = async () => {
		for (let check = waiting.shift(); check; check = waiting.shift()) if (!(await passes(check))) failed.push(check);
	};
	await Promise.all([worker(), worker()]);
	return failed;
}

const sumOf = (list: readonly Check[], { length: failed }: readonly Check[]): Sum => ({
	passed: list.length - failed,
	failed,
});

/** Runs some of the vitest projects. A run that ends badly without a failed test counts as one failure. */
async function runTests(projects: readonly string[], env?: NodeJS.ProcessEnv, ...more: string[]): Promise<Sum> {
	const folder = await mkdtemp(join(tmpdir(), 'evenhang-tests-'));
	const report = join(folder, 'report.json');
	const args = ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`, ...more];
	const { code } = await run('vitest', [...args, ...projects.flatMap((name) => ['--project', name])], true, env);
	try {
		const { numPassedTests: passed, numTotalTests: total } = JSON.parse(await readFile(report, 'utf8')) as {
			numPassedTests: number;
			numTotalTests: number;
		};
		const notPassed = total - passed; // a test that was passed over did not pass
		return { passed, failed: notPassed === 0 && code !== 0 ? 1 : notPassed };
	} catch {
		console.log(`No report came from the tests of ${projects.join(', ')}.`);
		return { passed: 0, failed: 1 };
	} finally {
		await rm(folder, { recursive: true, force: true });
	}
}

/** All tests in one run, so that neither core waits for the last file of some before it begins with others. */
async function runAll(): Promise<Sum[]> {
	const all = [...checks, build];
	const failed = await runChecks(all);
	const projects = ['unit', 'published', 'house', ...(failed.includes(build) ? [] : ['browser'])];
	return [sumOf(all, failed), await runTests(projects)];
}

/** Builds, and runs a project against what was built. @param more files to run alone, or options */
async function runBuilt(project: string, env?: NodeJS.ProcessEnv, ...more: string[]): Promise<Sum[]> {
	const built = sumOf([build], await runChecks([build]));
	return built.failed === 0 ? [built, await runTests([project], env, ...more)] : [built];
}

/** The browser's tests that are harder in the soak: of a host and a device that fail, of long use, with contrast under axe, with plans. */
const inSoak = [
	'axe',
	'exchange.test.ts',
	'grid',
	'harness',
	'hostile.test.ts',
	'importWhileTyping.test.ts',
	'bench/fractions.test.ts',
	'bench/paper.test.ts',
	'bench/undoTick.test.ts',
	'bench/workedThrough.test.ts',
	'boards',
	'kills.test.ts',
	'lists',
	'longUse.test.ts',
	'lostShows.test.ts',
	'offline',
	'order',
	'paper',
	'pictures',
	'record',
	'screens',
	'serve.test.ts',
	'storageFaults.test.ts',
	'update.test.ts',
	'wall',
	'wholeJob.test.ts',
	'wholeShow.test.ts',
].map((name) => `tests/browser/${name}`);

/** The tests that are harder in the soak. */
async function runSoak(): Promise<Sum[]> {
	const env = { EVENHANG_SOAK: '1' };
	const patience = '--testTimeout=1800000';
	const sum = await runTests(['unit', 'published'], env, patience);
	return [sum, ...(await runBuilt('browser', env, patience, ...inSoak))];
}

async function runAsked(what: string): Promise<Sum[]> {
	if (what === 'all') return runAll();
	if (what === 'check') return [sumOf(checks, await runChecks(checks))];
	if (what === 'soak') return runSoak();
	if (what === 'browsers') return runBuilt('engines');
	throw new RangeError(`there is no run "${what}": all, check, soak or browsers`);
}

const start = performance.now();
const sums = await runAsked(process.argv[2] ?? 'all');
const passed = sums.reduce((sum, part) => sum + part.passed, 0);
const failed = sums.reduce((sum, part) => sum + part.failed, 0);
console.log(`${((performance.now() - start) / 1000).toFixed(0)} s`);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
