import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { glazingWords, signedOnWords } from '../../src/core/row/rowWords.ts';
import { stageWords } from '../../src/core/row/rowStage.ts';
import { surfaceWords } from '../../src/core/settings/paper.ts';
import { columns } from '../../src/core/show/columns.ts';
import { defaultSettings } from '../../src/core/settings/defaults.ts';
import { settingKeys } from '../../src/core/settings/readSettings.ts';
import { resultCost, resultLengths, resultPlaces, resultTexts, resultWeight } from '../../src/files/headers.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Record<string, string> };

/** A text without its line ends. */
const inOneLine = (text: string) => text.replace(/\s+/g, ' ');

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

/** What ends the names of our files. */
const ending = String.raw`(?:ts|cjs|js|json|md|css|csv|svelte|svg|png|html|webmanifest)`;
/** `parts.ts`, `words/sentences.ts`, `src/core/row`: a name of a file, or folders with a slash between them. */
const pathInCode = new RegExp(String.raw`\`([\w.-]+\.${ending}|\.?[a-z][\w.-]+(?:/[\w.-]{2,})+/?)\``, 'g');

/** What is no file of the house: what the build and npm make, and the files that the README has a person make. */
const isNotOurs = (path: string) => /^(?:dist|node_modules)\/|^(?:rows\.csv|show\.json)$/.test(path);

/** Paths of the house that a text names in code type. */
const pathsIn = (text: string) =>
	[...text.matchAll(pathInCode)].map(([, path]) => path!).filter((path) => !isNotOurs(path));

/** Every file and folder of ours, by its path from the root. */
const allPaths = ['', 'src', 'tests', 'shared', 'static'].flatMap((folder) =>
	readdirSync(join(root, folder), { recursive: folder !== '', encoding: 'utf8' }).map((path) =>
		[folder, ...path.split(sep)].filter((part) => part !== '').join('/'),
	),
);

/**
 * What is wrong with a path that a document names; undefined where it leads to one file or folder: beside the document,
 * from the root, or by as much of its end as tells it from others. `your…` stands for a file to be written.
 */
function problemOf(path: string, document: string): string | undefined {
	const wanted = path.replace(/\/$/, '');
	if (/^your[A-Z]/.test(basename(wanted))) return undefined;
	if (existsSync(join(root, dirname(document), wanted)) || existsSync(join(root, wanted))) return undefined;
	const meant = allPaths.filter((each) => each.endsWith(`/${wanted}`));
	if (meant.length === 1) return undefined;
	return `${path}: ${meant.length === 0 ? 'no such file' : `one of ${meant.join(', ')}`}`;
}

/** The documents of the house: those at the root, and those of a folder with rules of its own. */
const documents = allPaths.filter((path) => /(?:^|\/)(?:README|DEVELOPERS)\.md$/.test(path));

describe.each(documents)('%s', (name) => {
	const text = readFileSync(join(root, name), 'utf8');

	test('its commands exist', () => {
		expect(commandsIn(text).filter((command) => !(command in scripts))).toEqual([]);
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

	test('each path that it names leads to one file', () => {
		expect(pathsIn(text).flatMap((path) => problemOf(path, name) ?? [])).toEqual([]);
	});
});

/** The decisions of a document that lack their date, the choice, why, or what would change it. */
const unfinished = (text: string) =>
	text.split('\n').filter((line) => {
		const cells = line.split('|').map((cell) => cell.trim());
		return /^\| \d{4}-\d\d/.test(line) && (cells.length !== 6 || cells.slice(1, 5).includes(''));
	});

test('each decision says when, what, why, and what would change it', () => {
	const texts = documents.map((name) => readFileSync(join(root, name), 'utf8'));
	expect(texts.join('\n').match(/^\| \d{4}-\d\d/gm)?.length).toBeGreaterThan(100);
	expect(texts.flatMap(unfinished)).toEqual([]);
	expect(unfinished('| 2026-11 | a | b |  |\n| 2026-11 | a | b | c |')).toHaveLength(1);
});

test('DEVELOPERS.md is read in one go: 12 kB at most', () => {
	expect(Buffer.byteLength(readFileSync(join(root, 'DEVELOPERS.md')))).toBeLessThanOrEqual(12_000);
});

test('DEVELOPERS.md names every document of a folder', () => {
	const linked = linksIn(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8'));
	expect(documents.filter((path) => path.includes('/') && !linked.includes(path))).toEqual([]);
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

const readme = readFileSync(join(root, 'README.md'), 'utf8');

test('what the README says to press stands on a screen', () => {
	const labels = [...readme.matchAll(/_([A-Z][^_]+)_/g)].map(([, label]) => inOneLine(label!));
	const screens = allPaths
		.filter((path) => /^src\/(?:pages|ui)\/.*\.(?:svelte|ts)$/.test(path))
		.map((path) => inOneLine(readFileSync(join(root, path), 'utf8')));
	expect(labels).toContain('Ready offline');
	expect(labels.filter((label) => !screens.some((text) => text.includes(label)))).toEqual([]);
});

describe('the tables of the README are those of the code', () => {
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
	const inCode = (text = '') => [...text.matchAll(/`([^`]+)`/g)].map(([, name]) => inOneLine(name!));

	test('columns that are typed', () => {
		expect(tableUnder('column').flatMap(([names]) => inCode(names))).toEqual(columns.map(({ name }) => name));
	});

	test('words that a cell may hold', () => {
		const held = new Map(tableUnder('column').map(([names, texts]) => [inCode(names)[0], inCode(texts)]));
		expect(held.get('surface')).toEqual(surfaceWords);
		expect(held.get('glazing')).toEqual(glazingWords);
		expect(held.get('signed on')).toEqual(signedOnWords);
		expect(held.get('stage')).toEqual(stageWords);
	});

	test('columns that are worked out', () => {
		const named = inCode(readme).filter((name) => name.startsWith('result '));
		expect(named).toEqual([
			...resultLengths.map(({ name }) => name),
			resultWeight,
			...resultPlaces,
			...resultTexts,
			resultCost,
		]);
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
			'# Two words, one\n[a](b.md#c) ![d](e.png) <img src="f.png">\n`npm run -s plan -- x`, npm test, `src/core/row`, `1/8 in`';
		expect(linksIn(text)).toEqual(['b.md#c', 'e.png', 'f.png']);
		expect(commandsIn(text)).toEqual(['plan', 'test']);
		expect(pathsIn(text)).toEqual(['src/core/row']);
		expect(anchorsIn(text)).toEqual(['two-words-one']);
	});

	test('finds names of files and folders, and nothing else', () => {
		const text =
			'`edit.ts`, `words/say.ts`, `words/`, `.ci/run.js`, `dist/sw.js`, `3/25`, `III/X`, `plus(top, bottom)`';
		expect(pathsIn(text)).toEqual(['edit.ts', 'words/say.ts', '.ci/run.js']);
	});

	test('says of a path that it leads nowhere, or to more than one file', () => {
		expect(problemOf('frame.ts', 'src/core/row/README.md')).toBeUndefined();
		expect(problemOf('core/show/edit.ts', 'README.md')).toBeUndefined();
		expect(problemOf('src/core/row/noSuch.ts', 'README.md')).toBe('src/core/row/noSuch.ts: no such file');
		expect(problemOf('frame.ts', 'README.md')).toBe(
			'frame.ts: one of src/core/findings/frame.ts, src/core/row/frame.ts, src/core/settings/frame.ts',
		);
	});
});
