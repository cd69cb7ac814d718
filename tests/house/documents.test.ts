import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { columns } from '../../src/core/show/columns.ts';
import { defaultSettings } from '../../src/core/show/defaults.ts';
import { settingKeys } from '../../src/core/show/readSettings.ts';
import { resultLengths, resultTexts } from '../../src/files/headers.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Record<string, string> };

/** The part of a link that names a heading: lower case, words joined by hyphens. */
const anchorOf = (heading: string) =>
	heading
		.toLowerCase()
		.replace(/[^\p{L}\p{N}\s_-]/gu, '')
		.trim()
		.replace(/\s/g, '-');

/** A document without what stands between fences, where a `#` is no heading. */
const prose = (text: string) => text.replace(/^```[^]*?^```/gm, '');

const anchorsIn = (text: string) => [...prose(text).matchAll(/^#+ (.+)$/gm)].map(([, heading]) => anchorOf(heading!));

const linksIn = (text: string) =>
	[...text.matchAll(/\]\(([^)\s]+)\)|(?:src|href)="([^"]+)"/g)].map(([, link, source]) => (link ?? source)!);

/** The `npm run` scripts that a text names; `npm start` and `npm test` too. */
const commandsIn = (text: string) =>
	[...text.matchAll(/\bnpm (?:run (?:-s )?)?([a-z:]+)/g)]
		.map(([, name]) => name!)
		.filter((name) => !['ci', 'install', 'i'].includes(name));

/** Paths in the repository that a text names in code type. */
const pathsIn = (text: string) =>
	[...text.matchAll(/`((?:src|tests|static|shared|\.ci)\/[^`\s*<>{}]+|[\w.-]+\.(?:ts|cjs|js|md))`/g)].map(
		([, path]) => path!,
	);

/** The names of all files of ours, wherever they lie. */
const fileNames = new Set(
	['.', 'src', 'tests'].flatMap((folder) =>
		readdirSync(join(root, folder), { recursive: folder !== '.', encoding: 'utf8' }).map((path) => basename(path)),
	),
);

/** Whether a file exists that a text names by its path, or by its bare name; `your…` stands for one to be written. */
const isThere = (path: string) =>
	/^your[A-Z]/.test(basename(path)) || existsSync(join(root, path)) || fileNames.has(path);

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (name) => {
	const text = readFileSync(join(root, name), 'utf8');

	test('its commands exist', () => {
		const commands = commandsIn(text);
		expect(commands.length).toBeGreaterThan(0);
		expect(commands.filter((command) => !(command in scripts))).toEqual([]);
	});

	test('its links lead somewhere', () => {
		const links = linksIn(text).filter((link) => !/^https?:/.test(link));
		const broken = links.filter((link) => {
			const [path, anchor] = link.split('#');
			const file = path ? join(root, dirname(name), path) : join(root, name);
			if (!existsSync(file)) return true;
			return anchor !== undefined && !anchorsIn(readFileSync(file, 'utf8')).includes(anchor);
		});
		expect(broken).toEqual([]);
	});

	test('the files that it names exist', () => {
		expect(pathsIn(text).filter((path) => !isThere(path))).toEqual([]);
	});
});

test('every command is explained', () => {
	const texts = ['README.md', 'DEVELOPERS.md'].map((name) => readFileSync(join(root, name), 'utf8')).join('\n');
	const named = new Set(commandsIn(texts));
	expect(Object.keys(scripts).filter((name) => !named.has(name))).toEqual([]);
});

test('the tools that scripts start exist', () => {
	const files = Object.values(scripts).flatMap((script) => script.match(/\b(?:src|tests)\/[\w./-]+/g) ?? []);
	expect(files.filter((file) => !existsSync(join(root, file)))).toEqual([]);
});

describe('the tables of the README are those of the code', () => {
	const readme = readFileSync(join(root, 'README.md'), 'utf8');

	/** The rows of the table under a heading, cell by cell. */
	const tableUnder = (head: string) => {
		const lines = readme.split('\n');
		const start = lines.findIndex((line) => line.startsWith(`| ${head}`));
		expect(start, head).toBeGreaterThan(-1);
		const length = lines.slice(start).findIndex((line) => !line.startsWith('|'));
		return lines.slice(start + 2, start + length).map((line) =>
			line
				.split('|')
				.map((cell) => cell.trim())
				.slice(1, -1),
		);
	};
	const inCode = (text = '') => [...text.matchAll(/`([^`]+)`/g)].map(([, name]) => name!);

	test('columns that are typed', () => {
		expect(tableUnder('column').flatMap(([names]) => inCode(names))).toEqual(columns.map(({ name }) => name));
	});

	test('columns that are worked out', () => {
		const named = inCode(readme).filter((name) => name.startsWith('result '));
		expect(named).toEqual([...resultLengths.map(({ name }) => name), ...resultTexts]);
	});

	test('settings and what they are when left out', () => {
		const rows = tableUnder('key in').map((cells) => cells.map((cell) => inCode(cell)[0]));
		expect(rows.map(([key]) => key)).toEqual([...settingKeys]);
		for (const [column, unit] of [
			[1, 'mm'],
			[2, 'in'],
		] as const) {
			const told = rows
				.map((cells) => [cells[0], cells[column]])
				.filter(([key, text]) => key !== 'unit' && text !== undefined);
			expect(Object.fromEntries(told)).toEqual(defaultSettings(unit));
		}
	});
});

describe('the reading of documents', () => {
	test('finds links, commands, paths and headings', () => {
		const text =
			'# Two words, one\n[a](b.md#c) ![d](e.png) <img src="f.png">\n`npm run -s plan -- x`, npm test, `src/core/row`';
		expect(linksIn(text)).toEqual(['b.md#c', 'e.png', 'f.png']);
		expect(commandsIn(text)).toEqual(['plan', 'test']);
		expect(pathsIn(text)).toEqual(['src/core/row']);
		expect(anchorsIn(text)).toEqual(['two-words-one']);
	});
});
