import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const source = fileURLToPath(new URL('../../src/', import.meta.url));

/**
 * Words that nobody at a bench would say, or that mean here what they mean nowhere else, and what is said instead.
 * They are looked for in what screens, paper and the command line say; comments have words of their own, but for those below.
 */
const notSaid: readonly (readonly [words: RegExp, instead: string])[] = [
	[/\bone (?:sees|has to|can|may|must|should)\b/i, 'you, or the figure alone'],
	[/\bin hand\b/i, 'selected, in stock'],
	[/\bat hand\b/i, 'in stock'],
	[/\b(?:way|ways) out\b/i, 'ways to fix it'],
	[/\baccept as it is\b/i, 'leave it'],
	[/\bfold drawing\b/i, 'hide drawing'],
	[/\b(?:go to|go on at|at|to) the knife\b/i, 'cutting sheets'],
	[/\bno knife\b/i, 'ready cut'],
	[/\bplanned anew\b/i, 'planned again'],
	[/\bslip board\b/i, 'waste strip'],
	[/\bgreatest first\b/i, 'largest first'],
	[/\blies (?:wide|tall)\b/i, 'landscape, portrait'],
	[/\bproven least\b/i, 'no cheaper plan exists'],
	[/\bbare numbers\b/i, 'units'],
	[/\bin no file\b/i, 'not backed up'],
	[/\bhand on\b/i, 'pass on'],
	[/\bto stop for\b/i, 'can’t be cut yet'],
	[/\bmendable\b/i, 'can be put right'],
];

/** Forms that comments had, and that are gone from them too. */
const notWritten = /\b(?:in|at) hand\b|\bone (?:sees|types)\b|\bkeys take\b|\bTakes (?:an edit|the settings)\b/i;

/** A source text without its comments and style sheet: what is left may be said. */
const said = (text: string) =>
	text
		.replace(/<style>[^]*?<\/style>/g, '')
		.replace(/<!--[^]*?-->/g, '')
		.replace(/\/\*[^]*?\*\//g, '')
		.replace(/(^|[\s;{}(),])\/\/ .*$/gm, '$1');

const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((path) =>
	/\.(?:ts|svelte)$/.test(path),
);

test('nothing that is said has words that nobody at a bench would say', () => {
	expect(files.length).toBeGreaterThan(500);
	const found = files.flatMap((path) => {
		const lines = said(readFileSync(join(source, path), 'utf8')).split('\n');
		return lines.flatMap((line) =>
			notSaid.flatMap(([words, instead]) => (words.test(line) ? [`${path}: ${line.trim()} (${instead})`] : [])),
		);
	});
	expect(found).toEqual([]);
});

test('comments have none of the forms that are gone', () => {
	const found = files.flatMap((path) => {
		const lines = readFileSync(join(source, path), 'utf8').split('\n');
		return lines.filter((line) => notWritten.test(line)).map((line) => `${path}: ${line.trim()}`);
	});
	expect(found).toEqual([]);
	expect('/** The order at hand. */').toMatch(notWritten);
});

/** Texts of a source that read as a sentence: words, and a full stop at the end of one. */
const sentencesIn = (text: string) =>
	[...said(text).matchAll(/(['`])((?:(?!\1|\n).)*)\1/g)]
		.map(([, , words]) => words!)
		.filter((words) => /[a-z}] [a-z$].*[.!](?:\s|$)/.test(words));

test('what finds something writes no sentence of it: those stand in one folder', () => {
	const finders = files.filter((path) => /^core\/findings\/\w+\.ts$/.test(path.replaceAll('\\', '/')));
	expect(finders.length).toBeGreaterThan(30);
	const found = finders.flatMap((path) => sentencesIn(readFileSync(join(source, path), 'utf8')));
	expect(found).toEqual([]);
	expect(sentencesIn(readFileSync(join(source, 'core/findings/words/sentences.ts'), 'utf8')).length).toBeGreaterThan(
		20,
	);
});

test('comments are left out, and what is said is not', () => {
	const text =
		"<!-- one sees -->\nconst a = 1; // in hand\n/** at hand */\nconst b = 'Borders that one sees: https://x';";
	expect(said(text)).not.toMatch(/in hand|at hand|<!--/);
	expect(said(text)).toMatch(/one sees: https:\/\/x/);
});
