import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

test('an unknown run of the tests is refused', () => {
	const { stdout, stderr, status } = spawnSync(process.execPath, ['--import', 'tsx', 'tests/run.ts', 'nonsense'], {
		cwd: root,
		encoding: 'utf8',
	});
	expect(status).not.toBe(0);
	expect(`${stdout}${stderr}`).toContain('there is no run "nonsense"');
});

test('whatever a file of plays leaves to the soak, the soak runs', () => {
	const runs = readFileSync(`${root}tests/run.ts`, 'utf8');
	const list = [.../const inSoak = \[([^\]]+)\]/.exec(runs)![1]!.matchAll(/'([^']+)'/g)].map(([, name]) => name!);
	const files = readdirSync(`${root}tests/browser`, { recursive: true })
		.map((file) => String(file).replaceAll('\\', '/'))
		.filter((file) => file.endsWith('.test.ts'))
		.filter((file) => readFileSync(`${root}tests/browser/${file}`, 'utf8').includes("/soak.ts'"));
	expect(files.length).toBeGreaterThan(20);
	const isRun = (file: string) => list.some((name) => file === name || file.startsWith(`${name}/`));
	expect(files.filter((file) => !isRun(file))).toEqual([]);
});
