import { spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ESLint } from 'eslint';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

// A check that never bites is worth nothing: here every floor is breached on purpose, in a house of straw.

const root = fileURLToPath(new URL('../../', import.meta.url));
const tool = (name: string) => join(root, 'node_modules/.bin', name);

let house: string;

/** Writes files into the house of straw. */
async function build(files: Readonly<Record<string, string>>): Promise<void> {
	for (const [path, text] of Object.entries(files)) {
		await mkdir(dirname(join(house, path)), { recursive: true });
		await writeFile(join(house, path), text);
	}
}

beforeAll(async () => {
	house = await mkdtemp(join(tmpdir(), 'evenhang-house-'));
	await symlink(join(root, 'node_modules'), join(house, 'node_modules'));
	await symlink(join(root, 'tsconfig.base.json'), join(house, 'tsconfig.base.json'));
	await symlink(join(root, 'tsconfig.json'), join(house, 'tsconfig.json'));
});

afterAll(() => rm(house, { recursive: true, force: true }));

describe('imports', () => {
	/** A file in a floor, what it imports, and the rule it breaks; no rule: it may. */
	const imports: readonly [file: string, text: string, rule?: string][] = [
		['src/core/a.ts', `import '../files/ok.ts';`, 'floor-core'],
		['src/core/b.ts', `import 'papaparse';`, 'floor-core'],
		['src/core/c.ts', `import type { Ok } from '../app/ok.ts'; export type C = Ok;`, 'floor-core'],
		['src/core/d.ts', `import 'node:fs';`, 'floor-core'],
		['src/core/e.ts', `export * from './row/ok.ts';`],
		['src/files/a.ts', `import '../storage/ok.ts';`, 'floor-files'],
		['src/files/b.ts', `import 'idb';`, 'floor-files'],
		['src/files/c.ts', `import 'papaparse'; import '../core/row/ok.ts';`],
		['src/files/d.ts', `import 'node:path';`, 'no-node-in-the-app'],
		['src/storage/a.ts', `import '../files/ok.ts';`, 'floor-storage'],
		['src/storage/b.ts', `import 'idb'; import '../core/row/ok.ts';`],
		['src/solver/a.ts', `import '../files/ok.ts';`, 'floor-solver'],
		['src/solver/b.ts', `import 'highs'; import '../core/row/ok.ts';`],
		['src/workers/a.ts', `import '../storage/ok.ts';`, 'floor-workers'],
		['src/workers/d.ts', `import 'highs';`, 'floor-workers'],
		['src/workers/b.ts', `import './packing.worker.ts';`, 'workers-are-started'],
		['src/workers/c.ts', `import '../files/ok.ts'; import '../core/row/ok.ts';`],
		['src/workers/e.ts', `import address from 'highs/runtime?url'; export const e = address;`],
		['src/app/a.ts', `import '../ui/ok.ts';`, 'floor-app'],
		['src/app/b.ts', `import '../workers/packing.worker.ts';`, 'workers-are-started'],
		['src/app/c.ts', `import 'idb';`, 'floor-app'],
		[
			'src/app/d.ts',
			`import 'svelte'; import '../storage/ok.ts'; import '../files/ok.ts'; import '../core/row/ok.ts';`,
		],
		['src/app/e.ts', `import 'virtual:pwa-register';`],
		['src/app/f.ts', `import 'svelte/reactivity';`],
		['src/app/h.ts', `import text from '../../shared/samples/ok.csv?raw'; export const h = text;`],
		['src/ui/a.ts', `import '../app/ok.ts';`, 'floor-ui'],
		['src/ui/B.svelte', `<script lang="ts">import '../pages/Ok.svelte';</script>`, 'floor-ui'],
		['src/ui/C.svelte', `<script lang="ts">import '../storage/ok.ts';</script>`, 'floor-ui'],
		['src/ui/D.svelte', `<script lang="ts">import 'svelte'; import '../core/row/ok.ts';</script>`],
		['src/pages/A.svelte', `<script lang="ts">import '../storage/ok.ts';</script>`, 'floor-pages'],
		['src/pages/B.svelte', `<script lang="ts">import '../files/ok.ts';</script>`, 'floor-pages'],
		['src/pages/C.svelte', `<script lang="ts">import '../ui/D.svelte'; import '../app/ok.ts';</script>`],
		['src/cli/a.ts', `import '../storage/ok.ts';`, 'floor-cli'],
		['src/cli/b.ts', `import 'svelte';`, 'floor-cli'],
		['src/cli/c.ts', `import 'node:fs'; import 'papaparse'; import '../files/ok.ts'; import '../core/row/ok.ts';`],
		['src/main.ts', `import './storage/ok.ts'; import './pages/C.svelte'; import './app/ok.ts';`],
		['src/core/circle/a.ts', `import './b.ts';`, 'no-cycles'],
		['src/core/circle/c.ts', `import type { D } from './d.ts'; export type C = D;`, 'no-cycles'],
		['src/app/g.ts', `import '../../tests/ok.ts';`, 'tests-stay-outside'],
		['src/core/g.ts', `import './missing.ts';`, 'resolves'],
		['src/cli/d.ts', `import 'no-such-package';`, 'resolves'],
	];

	let broken: ReadonlyMap<string, readonly string[]>;

	beforeAll(async () => {
		const ok = 'export type Ok = 1;\n';
		const others: [string, string][] = ['core/row', 'files', 'storage', 'workers', 'app', 'ui'].map((folder) => [
			`src/${folder}/ok.ts`,
			ok,
		]);
		await build({
			...Object.fromEntries(others),
			'src/pages/Ok.svelte': '<p>ok</p>',
			'src/workers/packing.worker.ts': ok,
			'tests/ok.ts': ok,
			'shared/samples/ok.csv': 'title\n',
			// a circle is told once, at the file that comes first
			'src/core/circle/b.ts': `import './a.ts';`,
			'src/core/circle/d.ts': `import type { C } from './c.ts'; export type D = C;`,
			...Object.fromEntries(imports.map(([file, text]): [string, string] => [file, text])),
		});
		const args = ['src', 'tests', '--config', join(root, '.dependency-cruiser.cjs'), '--preserve-symlinks'];
		const { stdout } = spawnSync(tool('depcruise'), [...args, '--output-type', 'json'], {
			cwd: house,
			encoding: 'utf8',
			maxBuffer: 1 << 28,
		});
		const { summary } = JSON.parse(stdout) as {
			summary: { violations: { from: string; rule: { name: string } }[] };
		};
		const rules = new Map<string, string[]>();
		for (const { from, rule } of summary.violations) rules.set(from, [...(rules.get(from) ?? []), rule.name]);
		broken = rules;
	});

	test.each(imports.filter(([, , rule]) => rule !== undefined))('%s with %s breaks %s', (file, _text, rule) => {
		expect(broken.get(file) ?? []).toContain(rule);
	});

	test.each(imports.filter(([, , rule]) => rule === undefined))('%s with %s may stay', (file) => {
		expect(broken.get(file) ?? []).toEqual([]);
	});

	test('every floor that exists has its rule', async () => {
		const folders = (await readdir(join(root, 'src'), { withFileTypes: true })).filter((entry) => entry.isDirectory());
		const tested = new Set(imports.map(([file]) => file.split('/')[1]));
		expect(folders.map(({ name }) => name).filter((name) => !tested.has(name))).toEqual([]);
	});
});

describe('what compiles', () => {
	/** What the compiler says of a file in a floor. */
	async function compile(floor: string, text: string): Promise<string> {
		const file = `src/${floor}/compiled.ts`;
		await build({ [file]: `${text}\nexport {};\n` });
		const config = relative(house, join(root, 'src', floor, 'tsconfig.json'));
		await build({ 'tsconfig.floor.json': JSON.stringify({ extends: `./${config}`, include: [], files: [file] }) });
		return spawnSync(tool('tsc'), ['-p', 'tsconfig.floor.json'], { cwd: house, encoding: 'utf8' }).stdout;
	}

	test.each([
		['core', ['document', 'fetch', 'setTimeout', 'console', 'process', 'self', 'indexedDB', 'performance']],
		['workers', ['document', 'localStorage', 'process']],
		['cli', ['document', 'self', 'indexedDB']],
	])('%s does not know the names of other run-times', async (floor, names) => {
		const said = await compile(floor, names.map((name) => `${name};`).join('\n'));
		for (const name of names) expect(said).toContain(`Cannot find name '${name}'`);
	});

	test.each([
		['core', 'Math.max(1, 2).toString();'],
		['workers', 'self.postMessage(1);'],
		['cli', 'console.log(process.argv.length);'],
	])('%s knows its own', async (floor, text) => {
		expect(await compile(floor, text)).toBe('');
	});

	test.each([
		['an entry that may not be there', 'const list: number[] = []; const first: number = list[0]; first;', 'TS2322'],
		['undefined where a key may only be absent', 'const say: { what?: string } = { what: undefined }; say;', 'TS2375'],
		['an enum, which is not only types', 'enum Side { Top } Side.Top;', 'TS1294'],
		['a type imported as a value', `import { Ok } from './row/ok.ts'; export type A = Ok;`, 'TS1484'],
	])('nowhere: %s', async (_what, text, code) => {
		expect(await compile('core', text)).toContain(code);
	});
});

describe('lint', () => {
	const eslint = new ESLint({ cwd: root });

	test.each([
		['src/core/length/length.ts', 'export const a = Math.random();', 'no-restricted-properties'],
		['src/core/length/length.ts', 'export const a = Date.now();', 'no-restricted-properties'],
		['src/core/length/length.ts', 'export const a = new Date();', 'no-restricted-syntax'],
		['src/core/length/length.ts', 'console.log(1);', 'no-restricted-globals'],
		['src/core/length/length.ts', `export * from './reading';`, 'no-restricted-syntax'],
		['src/core/length/length.ts', 'export default 1;', 'no-restricted-syntax'],
		[
			'src/core/length/length.ts',
			`import { Unit } from './reading.ts'; export type A = Unit;`,
			'@typescript-eslint/consistent-type-imports',
		],
		['src/core/length/length.ts', '// TODO: later', 'no-warning-comments'],
		['src/App.svelte', '<p>{@html "<b>bold</b>"}</p>', 'svelte/no-at-html-tags'],
		['src/App.svelte', '<p style="color: red">red</p>', 'no-restricted-syntax'],
		[
			'tests/house/floors.test.ts',
			`import { test } from 'vitest'; test.skip('never', () => undefined);`,
			'no-restricted-syntax',
		],
		[
			'tests/house/floors.test.ts',
			`import { test } from 'vitest'; test.only('alone', () => undefined);`,
			'no-restricted-syntax',
		],
	])('%s: %s', async (filePath, text, rule) => {
		const [result] = await eslint.lintText(text, { filePath: join(root, filePath) });
		expect(result?.messages.map(({ ruleId }) => ruleId)).toContain(rule);
	});
});
