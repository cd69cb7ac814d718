import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { inject, vi } from 'vitest';

const root = fileURLToPath(new URL('../../../', import.meta.url));

/** The version that a newer build says it is. */
export const newerVersion = '99.0.0';

/** What the build tool says of something that is not as it should be; `npm start` says nothing of the kind. */
const warning = /\(!\)|\b[Ww]arn|externalized|\[[A-Z_]{5,}\]/;

let built: Promise<string> | undefined;

/** A newer build of the app, in a folder of its own: every part of it has another address, as a change in each would give. */
export const newerBuild = (): Promise<string> => (built ??= build());

/** Has it built beside the first plays, for those that ask for it later. */
export function beginNewerBuild(): void {
	newerBuild().catch(() => undefined); // who asks for it is told
}

/** Builds it, or waits for the process of other files that has begun to: once is enough for all. */
async function build(): Promise<string> {
	const [folder, failed] = [join(inject('builds'), 'newer'), join(inject('builds'), 'failed')];
	const unfinished = join(inject('builds'), 'unfinished');
	// A folder of its own says that one has begun, and stays: the unfinished build gets its name at the end.
	const isMine = await mkdir(join(inject('builds'), 'begun')).then(
		() => true,
		() => false,
	);
	if (!isMine) {
		await vi.waitUntil(() => existsSync(folder) || existsSync(failed), { timeout: 120_000 });
		if (existsSync(failed)) throw new Error('the newer build failed, as the other process says');
		return folder;
	}
	try {
		await runBuild(unfinished);
		await rename(unfinished, folder);
		return folder;
	} catch (cause) {
		await mkdir(failed);
		throw cause;
	}
}

async function runBuild(folder: string): Promise<void> {
	const tool = join(root, 'node_modules/vite/bin/vite.js');
	const args = [tool, 'build', '--outDir', folder, '--emptyOutDir', '--assetsDir', 'parts'];
	const env = { ...process.env, EVENHANG_VERSION: newerVersion, NODE_ENV: 'production' };
	await new Promise<void>((resolve, reject) => {
		const child = spawn(process.execPath, args, { cwd: root, env, stdio: ['ignore', 'pipe', 'pipe'] });
		let said = '';
		for (const stream of [child.stdout, child.stderr])
			stream.setEncoding('utf8').on('data', (text: string) => (said += text));
		child.on('error', reject);
		child.on('close', (code) =>
			code === 0 && !warning.test(said) ? resolve() : reject(new Error(`the newer build failed or warns: ${said}`)),
		);
	});
}
