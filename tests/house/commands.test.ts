import { spawnSync } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

let elsewhere: string;

beforeAll(async () => {
	elsewhere = await mkdtemp(join(tmpdir(), 'evenhang-elsewhere-'));
	await writeFile(join(elsewhere, 'rows.csv'), 'title,picture width (mm),picture height (mm)\nHarbour,456,306\n');
});

afterAll(() => rm(elsewhere, { recursive: true, force: true }));

describe('npm run plan, from another folder', () => {
	const plan = (...args: string[]) =>
		spawnSync('npm', ['--prefix', root, 'run', '-s', 'plan', '--', ...args], { cwd: elsewhere, encoding: 'utf8' });

	test('finds the file where it was asked from, and prints nothing but the rows', () => {
		const { stdout, stderr, status } = plan('rows.csv');
		expect([stderr, status]).toEqual(['', 0]);
		const [header, row] = stdout.split(/\r?\n/);
		expect(header).toContain('result mount width (mm)');
		expect(row).toContain('Harbour');
	});

	test('its exit is what the program says: 2 for wrong usage, 1 for a file that cannot be read', () => {
		expect(plan().status).toBe(2);
		expect(plan('missing.csv').status).toBe(1);
	});
});

test('an unknown run of the tests is refused', () => {
	const { stdout, stderr, status } = spawnSync('npx', ['tsx', 'tests/run.ts', 'nonsense'], {
		cwd: root,
		encoding: 'utf8',
	});
	expect(status).not.toBe(0);
	expect(`${stdout}${stderr}`).toContain('there is no run "nonsense"');
});
