import { spawnSync } from 'node:child_process';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../../', import.meta.url));

/**
 * Builds the app once more, stamped with another version, into a folder of its own; the caller removes it.
 * @param more for the build: `--assetsDir` gives every part another address, as a change in each of them would
 */
export async function buildVersion(version: string, ...more: string[]): Promise<string> {
	const folder = await mkdtemp(join(tmpdir(), `evenhang-${version}-`));
	const args = [join(root, 'node_modules/vite/bin/vite.js'), 'build', '--outDir', folder, '--emptyOutDir', ...more];
	const { status, stderr } = spawnSync(process.execPath, args, {
		cwd: root,
		env: { ...process.env, EVENHANG_VERSION: version, NODE_ENV: 'production' },
		encoding: 'utf8',
	});
	if (status !== 0) throw new Error(`the build of ${version} failed: ${stderr}`);
	return folder;
}
