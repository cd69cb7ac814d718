import { spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ESLint } from 'eslint';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

// A check that never bites is worth nothing: here every floor is breached on purpose, in a house of straw.

const root = fileURLToPath(new URL('../../', import.meta.url));
const tool = (name: string) => join(root, 'node_modules/.bin', name);

const houses: string[] = [];

/** Builds a house of straw of these files. @returns its folder */
async function build(files: Readonly<Record<string, string>>): Promise<string> {
	const house = await mkdtemp(join(tmpdir(), 'evenhang-house-'));
	houses.push(house);
	for (const name of ['node_modules', 'tsconfig.base.json', 'tsconfig.json', '.oxlintrc.json', 'houseRules.js'])
		await symlink(join(root, name), join(house, name));
	for (const [path, text] of Object.entries(files)) {
		await mkdir(dirname(join(house, path)), { recursive: true });
		await writeFile(join(house, path), text);
	}
	return house;
}

afterAll(() => Promise.all(houses.map((house) => rm(house, { recursive: true, force: true }))));

describe('imports', () => {
	/** The rooms of core: what each may import besides itself, and which it must not: those beside it, and the next above. */
	const rooms: readonly [room: string, below: readonly string[], breaches: readonly string[]][] = [
		['values', [], ['device', 'length', 'merge']],
		['device', [], ['values', 'length', 'show']],
		['length', ['values', 'device'], ['settings', 'show']],
		['settings', ['values', 'length'], ['stock', 'show', 'row', 'bench']],
		['stock', ['length', 'settings'], ['show', 'sheets']],
		[
			'show',
			['values', 'length', 'settings', 'stock'],
			['commands', 'imports', 'row', 'bench', 'sheets', 'grid', 'merge'],
		],
		['commands', ['settings', 'show'], ['imports', 'row', 'grid']],
		['imports', ['settings', 'show'], ['commands', 'row', 'merge']],
		[
			'row',
			['length', 'settings', 'stock', 'show'],
			['walls', 'findings', 'advice', 'reasons', 'harmonise', 'bench', 'sheets'],
		],
		['walls', ['settings', 'commands', 'row'], ['findings', 'bench', 'order', 'grid']],
		['findings', ['stock', 'show', 'row', 'walls'], ['advice', 'reasons', 'harmonise', 'bench', 'sheets', 'grid']],
		['advice', ['row', 'findings'], ['reasons', 'harmonise', 'bench']],
		['reasons', ['row', 'findings'], ['advice', 'harmonise', 'sheets']],
		['harmonise', ['row', 'findings'], ['advice', 'reasons', 'bench']],
		['frameChoice', ['row', 'findings'], ['advice', 'harmonise', 'sticks']],
		['bench', ['row', 'findings'], ['sheets', 'grid', 'merge']],
		['sheets', ['stock', 'row', 'findings'], ['bench', 'sticks', 'grid', 'merge']],
		['sticks', ['stock', 'row'], ['bench', 'sheets', 'order']],
		['order', ['row', 'sheets', 'sticks'], ['packing', 'record', 'grid', 'merge', 'pictures']],
		['packing', ['row', 'findings'], ['order', 'record', 'lists', 'grid']],
		['record', ['row', 'order'], ['lists', 'grid', 'merge', 'pictures']],
		['lists', ['row', 'walls', 'order', 'packing', 'record'], ['grid', 'labels', 'merge', 'pictures']],
		['labels', ['show', 'row', 'findings', 'record'], ['grid', 'merge']],
		['grid', ['commands', 'findings', 'bench', 'sheets'], ['labels', 'merge']],
		['merge', ['show', 'imports', 'bench', 'sheets'], ['grid']],
		['pictures', ['show', 'commands'], ['grid', 'merge']],
	];

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
		['src/app/e.ts', `import '../serviceWorker/protocol.ts';`],
		['src/app/i.ts', `import '../serviceWorker/ok.ts';`, 'floor-app'],
		['src/serviceWorker/a.ts', `import '../core/row/ok.ts';`, 'floor-serviceWorker'],
		['src/serviceWorker/b.ts', `import './ok.ts';`],
		['src/start/a.ts', `import '../app/ok.ts';`, 'floor-start'],
		['src/start/b.ts', `import 'svelte';`, 'floor-start'],
		['src/start/c.ts', `import '../files/ok.ts'; import '../core/row/ok.ts'; import '../app/download.ts';`],
		['src/app/f.ts', `import 'svelte/reactivity';`],
		['src/app/h.ts', `import text from '../../shared/samples/ok.csv?raw'; export const h = text;`],
		['src/ui/a.ts', `import '../app/ok.ts';`, 'floor-ui'],
		['src/ui/B.svelte', `<script lang="ts">import '../pages/Ok.svelte';</script>`, 'floor-ui'],
		['src/ui/C.svelte', `<script lang="ts">import '../storage/ok.ts';</script>`, 'floor-ui'],
		['src/ui/D.svelte', `<script lang="ts">import 'svelte'; import '../core/row/ok.ts';</script>`],
		['src/pages/A.svelte', `<script lang="ts">import '../storage/ok.ts';</script>`, 'floor-pages'],
		['src/pages/B.svelte', `<script lang="ts">import '../files/ok.ts';</script>`, 'floor-pages'],
		['src/pages/C.svelte', `<script lang="ts">import '../ui/D.svelte'; import '../app/ok.ts';</script>`],
		['src/build/a.ts', `import '../core/row/ok.ts';`, 'floor-build'],
		['src/build/b.ts', `import 'papaparse';`, 'floor-build'],
		['src/build/c.ts', `import 'node:fs'; import 'vite'; import '../cli/contentTypes.ts';`],
		['src/app/j.ts', `import '../build/ok.ts';`, 'floor-app'],
		['src/cli/a.ts', `import '../storage/ok.ts';`, 'floor-cli'],
		['src/cli/b.ts', `import 'svelte';`, 'floor-cli'],
		['src/cli/c.ts', `import 'node:fs'; import 'papaparse'; import '../files/ok.ts'; import '../core/row/ok.ts';`],
		['src/main.ts', `import './storage/ok.ts'; import './pages/C.svelte'; import './app/ok.ts';`],
		['src/core/findings/a.ts', `import '../row/readCells.ts';`, 'cells-are-read-once'],
		['src/core/grid/a.ts', `import '../row/rowWords.ts';`, 'cells-are-read-once'],
		['src/core/show/a.ts', `import '../row/edition.ts';`, 'cells-are-read-once'],
		['src/ui/E.svelte', `<script lang="ts">import '../core/row/readCount.ts';</script>`, 'cells-are-read-once'],
		['src/ui/f.ts', `import type { Ok } from '../core/row/readCells.ts'; export type F = Ok;`],
		['src/core/row/a.ts', `import './readCells.ts';`],
		...rooms.flatMap(([room, below, breaches]): [string, string, string?][] => [
			...breaches.map((other): [string, string, string] => [
				`src/core/${room}/to-${other}.ts`,
				`import '../${other}/ok.ts';`,
				`room-${room}`,
			]),
			[
				`src/core/${room}/type-of-${breaches[0]}.ts`,
				`import type { Ok } from '../${breaches[0]}/ok.ts'; export type T = Ok;`,
				`room-${room}`,
			],
			[`src/core/${room}/down.ts`, [room, ...below].map((other) => `import '../${other}/ok.ts';`).join(' ')],
		]),
		['src/core/circle/a.ts', `import './b.ts';`, 'no-cycles'],
		['src/core/circle/c.ts', `import type { D } from './d.ts'; export type C = D;`, 'no-cycles'],
		['src/app/g.ts', `import '../../tests/ok.ts';`, 'tests-stay-outside'],
		['src/core/g.ts', `import './missing.ts';`, 'resolves'],
		['src/cli/d.ts', `import 'no-such-package';`, 'resolves'],
	];

	let broken: ReadonlyMap<string, readonly string[]>;

	beforeAll(async () => {
		const ok = 'export type Ok = 1;\n';
		const others: [string, string][] = [
			'core/row',
			'files',
			'storage',
			'workers',
			'serviceWorker',
			'app',
			'ui',
			'build',
		].map((folder) => [`src/${folder}/ok.ts`, ok]);
		const house = await build({
			...Object.fromEntries(others),
			...Object.fromEntries(
				[
					...rooms.map(([room]) => `${room}/ok`),
					...['row/readCells', 'row/readCount', 'row/rowWords', 'row/edition'],
				].map((file) => [`src/core/${file}.ts`, ok]),
			),
			'src/pages/Ok.svelte': '<p>ok</p>',
			'src/workers/packing.worker.ts': ok,
			'src/serviceWorker/protocol.ts': ok,
			'src/app/download.ts': ok,
			'src/cli/contentTypes.ts': ok,
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
	}, 60_000);

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

	test('every room of core has its rule', async () => {
		const folders = (await readdir(join(root, 'src/core'), { withFileTypes: true })).filter((entry) =>
			entry.isDirectory(),
		);
		expect(folders.map(({ name }) => name).sort()).toEqual(rooms.map(([room]) => room).sort());
	});
});

describe('what compiles', () => {
	/** A file in a floor, and what is said of it; nothing: it may stay. */
	const compiled: readonly [file: string, text: string, ...said: RegExp[]][] = [
		...(
			[
				['core', ['document', 'fetch', 'setTimeout', 'console', 'process', 'self', 'indexedDB', 'performance']],
				['solver', ['document', 'localStorage', 'process']],
				['workers', ['document', 'localStorage', 'process']],
				['serviceWorker', ['document', 'localStorage', 'process']],
				['cli', ['document', 'self', 'indexedDB']],
			] as const
		).flatMap(([floor, names]) =>
			names.map((name): [string, string, RegExp] => [
				`src/${floor}/no-${name}.ts`,
				`${name};`,
				new RegExp(`Cannot find name '${name}'`),
			]),
		),
		['src/core/own.ts', 'Math.max(1, 2).toString();'],
		['src/solver/own.ts', 'self.postMessage(1);'],
		['src/workers/own.ts', 'self.postMessage(1);'],
		['src/serviceWorker/own.ts', 'self.caches.keys().catch(console.error);'],
		['src/cli/own.ts', 'console.log(process.argv.length);'],
		['src/core/entry.ts', 'const list: number[] = []; const first: number = list[0]; first;', /TS2322/],
		['src/core/absent.ts', 'const say: { what?: string } = { what: undefined }; say;', /TS2375/],
		['src/core/enum.ts', 'enum Side { Top } Side.Top;', /TS1294/],
		['src/core/type.ts', `import { Ok } from './row/ok.ts'; export type A = Ok;`, /TS1484/],
		['src/app/promise.ts', 'const ask = () => Promise.resolve(1); ask();', /no-floating-promises/],
		['tests/unit/any.ts', `const read: string = JSON.parse('1'); read;`, /no-unsafe-assignment/],
		['src/core/loose.ts', 'const same = (a: string) => a == a.trim(); same;', /eqeqeq/],
		['src/core/any.ts', 'export const any = (given: any) => given as string;', /no-explicit-any/],
		['src/core/unused.ts', 'const unused = 1;', /no-unused-vars/],
		['src/core/asType.ts', `import { Ok } from './row/ok.ts'; export type A = Ok;`, /consistent-type-imports/],
		[
			'src/app/asType.svelte.ts',
			`import { Ok } from '../core/row/ok.ts'; export type A = Ok;`,
			/consistent-type-imports/,
		],
		['src/app/none.svelte.ts', `export const a = mount.kind !== 'none';`, /ask-has-mount/],
		['src/app/file.svelte.ts', `await import('../core/row/ok');`, /whole-file-names/],
		['src/core/empty.ts', 'try { Math.max(1); } catch {}', /no-empty/],
		['src/app/inside.ts', `import 'svelte/internal/client';`, /no-restricted-imports/],
		['src/core/chance.ts', 'export const a = Math.random();', /no-restricted-properties/],
		['src/core/now.ts', 'export const a = Date.now();', /no-restricted-properties/],
		['src/core/newDate.ts', 'export const a = new Date();', /no-clock/],
		['src/core/date.ts', 'export const a = Date();', /no-clock/],
		['src/core/console.ts', 'console.log(1);', /no-restricted-globals/],
		['src/core/import.ts', `import { Ok } from './row/ok'; export const a: Ok = 1;`, /whole-file-names/],
		['src/core/reexport.ts', `export * from './row/ok';`, /whole-file-names/],
		['src/app/late.ts', `await import('../core/row/ok');`, /whole-file-names/],
		['src/core/whole.ts', 'export default 1;', /named-exports/],
		['src/core/sheets/second.ts', `export const a = row.typed.mount === 'none';`, /no-second-reading/],
		['src/core/bench/second.ts', `export const a = typed['inner board'];`, /no-second-reading/],
		['src/ui/across/second.ts', 'export const a = row.typed.edition;', /no-second-reading/],
		['src/core/findings/size.ts', `export const a = namedSize(row.typed[key] ?? '', sizes);`, /no-second-reading/],
		['src/core/record/money.ts', `export const a = readMoney(typed.net?.trim() ?? '', currency);`, /no-second-reading/],
		['src/core/grid/pixels.ts', 'export const a = parsePixels(typed.pixels);', /no-second-reading/],
		['src/core/findings/none.ts', `export const a = read.cells.mount.kind === 'none';`, /ask-has-mount/],
		['src/core/row/none.ts', `export const a = mount.kind !== 'none';`, /ask-has-mount/],
		['src/core/row/first.ts', `export const a = (typed: { mount: string }) => typed.mount;`],
		['src/core/formats.ts', 'const texts = new Intl.Collator(); texts;', /made-when-wanted/],
		['src/app/formats.ts', 'export const day = new Intl.DateTimeFormat();', /made-when-wanted/],
		['src/core/format.ts', 'export const texts = () => new Intl.Collator();'],
		['src/core/later.ts', '// TODO: later', /no-warning-comments/],
		['src/core/needless.ts', '// oxlint-disable-next-line house/named-exports', /[Uu]nused/],
		['tests/unit/skipped.ts', `import { test } from 'vitest'; test.skip('never', () => undefined);`, /every-test-runs/],
		['tests/unit/alone.ts', `import { test } from 'vitest'; test.only('alone', () => undefined);`, /every-test-runs/],
		['vite.config.ts', 'export default 1;'],
	];

	let said: ReadonlyMap<string, string>;

	beforeAll(async () => {
		const configs = ['src/core', 'src/solver', 'src/workers', 'src/serviceWorker', 'src/cli', 'tests'].map(
			(floor): [string, string] => [
				`${floor}/tsconfig.json`,
				JSON.stringify({ extends: join(root, floor, 'tsconfig.json'), include: ['**/*.ts'] }),
			],
		);
		const files = compiled.map(([file, text]): [string, string] => [file, `${text}\nexport {};\n`]);
		const house = await build({
			'src/core/row/ok.ts': 'export type Ok = 1;\n',
			...Object.fromEntries([...configs, ...files]),
		});
		const args = ['--format', 'json', ...compiled.map(([file]) => file)];
		const { stdout } = spawnSync(tool('oxlint'), args, { cwd: house, encoding: 'utf8', maxBuffer: 1 << 28 });
		const { diagnostics } = JSON.parse(stdout) as {
			diagnostics: { filename: string; code: string; message: string }[];
		};
		const lines = new Map<string, string>();
		for (const { filename, code, message } of diagnostics)
			lines.set(filename, `${lines.get(filename) ?? ''}${code} ${message}\n`);
		said = lines;
	});

	test.each(compiled)('%s with %s', (file, _text, ...expected) => {
		if (expected.length === 0) expect(said.get(file)).toBeUndefined();
		for (const each of expected) expect(said.get(file)).toMatch(each);
	});
});

describe('what ESLint says', () => {
	const eslint = new ESLint({ cwd: root });

	test.each([
		['src/app/session.svelte.ts', '$inspect(1);', 'svelte/no-inspect'],
		[
			'src/App.svelte',
			`<script lang="ts">import { Unit } from './reading.ts'; let { a }: { a: Unit } = $props();</script>{a}`,
			'@typescript-eslint/consistent-type-imports',
		],
		['src/pages/StartScreen.svelte', '<script>const a = row.typed.mount;</script>{a}', 'house/no-second-reading'],
		['src/App.svelte', `<script>import { a } from './a';</script>{a}`, 'house/whole-file-names'],
		['src/App.svelte', `{mount.kind === 'none'}`, 'house/ask-has-mount'],
		['src/App.svelte', '<p>{@html "<b>bold</b>"}</p>', 'svelte/no-at-html-tags'],
		['src/App.svelte', '<p style="color: red">red</p>', 'house/no-inline-style'],
		['src/App.svelte', '<script>// TODO: later</script>', 'no-warning-comments'],
		['eslint.config.js', `import './houseRules';`, 'house/whole-file-names'],
	])('of %s: %s', async (filePath, text, rule) => {
		const [result] = await eslint.lintText(text, { filePath: join(root, filePath) });
		expect(result?.messages.map(({ ruleId }) => ruleId)).toContain(rule);
	});

	test('nothing of plain TypeScript, which oxlint has', async () => {
		expect(await eslint.isPathIgnored(join(root, 'src/main.ts'))).toBe(true);
	});
});
