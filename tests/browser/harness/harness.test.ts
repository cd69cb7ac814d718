import { spawnSync } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, expect, inject, test, vi } from 'vitest';
import { testInSoak } from '../../soak.ts';
import { axeProblems } from './axe.ts';
import { findChromium, findShell } from './findChromium.ts';
import { newerBuild, newerParts, newerVersion } from './newerBuild.ts';
import { onStage } from './stage.ts';

const head = '<!doctype html><html lang="en"><title>Page</title><link rel="icon" href="data:,">';

/** A folder with one page in it, served while `use` runs. */
async function withPage(html: string, use: (folder: string) => Promise<void>): Promise<void> {
	const folder = await mkdtemp(join(tmpdir(), 'evenhang-page-'));
	await writeFile(join(folder, 'index.html'), `${head}${html}</html>`);
	try {
		await use(folder);
	} finally {
		await rm(folder, { recursive: true, force: true });
	}
}

test.each([
	['a request to elsewhere', '<img alt="" src="http://elsewhere.example/dot.png">', 'http://elsewhere.example/dot.png'],
	['an error in the console', '<script>console.error("broken hinge")</script>', 'broken hinge'],
	['an error that nothing catches', '<script>throw new Error("torn corner")</script>', 'torn corner'],
	[
		'a breach of the policy',
		`<meta http-equiv="Content-Security-Policy" content="default-src 'none'"><p style="color: red">red</p>`,
		'policy breached: style-src',
	],
])('a play fails for %s', (_what, html, told) =>
	withPage(html, async (folder) => {
		const play = onStage({ folder }, async (stage) => {
			const page = await stage.openApp();
			await expect.poll(() => stage.problems).not.toEqual([]); // `strike` tells of them
			await page.close();
		});
		await expect(play).rejects.toThrow(told);
	}),
);

test('axe finds a picture without words', () =>
	withPage('<main><h1>Prints</h1><img src="data:image/gif;base64,R0lGODlhAQABAAAAACw="></main>', (folder) =>
		onStage({ folder }, async (stage) => {
			const problems = await axeProblems(await stage.openApp());
			expect(problems.map((line) => line.split(':')[0])).toContain('image-alt');
		}),
	));

afterEach(() => void vi.unstubAllEnvs());

test('the Chromium that CHROME_PATH names is taken, and one that is not there is told', () => {
	vi.stubEnv('CHROME_PATH', process.execPath);
	expect(findChromium()).toBe(process.execPath);
	expect(findShell()).toBe(process.execPath);
	vi.stubEnv('CHROME_PATH', '/no/such/chromium');
	expect(findChromium).toThrow('CHROME_PATH is "/no/such/chromium", and there is no such file');
});

/** Every file of a folder, with its bytes. */
async function filesOf(folder: string): Promise<Map<string, string>> {
	const entries = await readdir(folder, { recursive: true, withFileTypes: true });
	const files = entries.filter((entry) => entry.isFile()).map(({ parentPath, name }) => join(parentPath, name));
	const texts = files.map(async (file) => [relative(folder, file), await readFile(file, 'latin1')] as const);
	return new Map(await Promise.all(texts));
}

// In parts: `update.test.ts`, in which a browser changes to it, with all its hashes.
testInSoak('the newer build is what the build tool makes of a newer version, byte for byte', async () => {
	const folder = join(inject('builds'), 'by the tool');
	const tool = fileURLToPath(new URL('../../../node_modules/vite/bin/vite.js', import.meta.url));
	const { status, stderr } = spawnSync(
		process.execPath,
		[tool, 'build', '--outDir', folder, '--emptyOutDir', '--assetsDir', newerParts],
		{ env: { ...process.env, EVENHANG_VERSION: newerVersion, NODE_ENV: 'production' }, encoding: 'utf8' },
	);
	expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
	const [byTool, made] = [await filesOf(folder), await filesOf(await newerBuild())];
	expect([...made.keys()].sort()).toEqual([...byTool.keys()].sort());
	expect([...made].filter(([file, bytes]) => byTool.get(file) !== bytes).map(([file]) => file)).toEqual([]);
});
