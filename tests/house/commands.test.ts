import { spawnSync } from 'node:child_process';
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
