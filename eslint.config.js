import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import { defineConfig } from 'eslint/config';
import globals from 'globals';
import tseslint from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

/** Relative imports name the file as it is on disk. */
const importsWithEnding = {
	selector:
		':matches(ImportDeclaration, ExportNamedDeclaration, ExportAllDeclaration, ImportExpression)[source.value=/^\\.{1,2}\\u002F(?!.*\\.(ts|js|cjs|svelte|css|json|csv|svg|png)(\\?\\w+)?$)/]',
	message: 'Say the whole file name: `./length.ts`.',
};

const namedExports = { selector: 'ExportDefaultDeclaration', message: 'Export by name.' };

/** What makes a result depend on more than its arguments. */
const chance = [
	{ selector: 'NewExpression[callee.name="Date"]', message: 'core has no clock: pass the time in.' },
	{ selector: 'CallExpression[callee.name="Date"]', message: 'core has no clock: pass the time in.' },
];

/** What a cell says stands in the row's result: read again, it would soon be read another way. */
const readCells = '/^(edition|copies|shape|paper|surface|mount|board|inner board|frame|glazing|spacer|signed on)$/';
const secondReading = [
	{
		selector: `MemberExpression:matches([object.name="typed"], [object.property.name="typed"]):matches([computed=false][property.name=${readCells}], [property.value=${readCells}])`,
		message: 'Ask the result of the row, which has read the cell.',
	},
	{
		selector:
			'BinaryExpression[left.property.name="kind"][right.value="none"]:matches([left.object.name="mount"], [left.object.property.name="mount"])',
		message: 'Ask hasMount.',
	},
];

/** The page's policy allows no inline style; `style:name={value}` is set by script and is fine. */
const inlineStyle = {
	selector: 'SvelteAttribute[key.name="style"]',
	message: "The page's policy would drop it: use a class, or style:name={value}.",
};

const notReady = [
	{
		selector: 'CallExpression[callee.type="MemberExpression"][callee.property.name=/^(only|skip|todo|skipIf|fails)$/]',
		message: 'Every test runs, and all of them.',
	},
];

/** What Svelte compiles. */
const ofSvelte = ['**/*.svelte', '**/*.svelte.ts'];

export default defineConfig(
	{ ignores: ['dist/', 'dev-dist/', 'node_modules/', 'coverage/'] },
	{ linterOptions: { reportUnusedDisableDirectives: 'error' } },
	{
		// Of plain TypeScript these rules are looked for by oxlint (`.oxlintrc.json`).
		files: [...ofSvelte, '**/*.js', '**/*.cjs'],
		extends: [js.configs.recommended, tseslint.configs.strict, tseslint.configs.stylistic],
		rules: {
			eqeqeq: 'error',
			'@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
			'@typescript-eslint/no-non-null-assertion': 'off', // the house says `!` where a bound is known
			'@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
			'@typescript-eslint/no-invalid-void-type': 'off',
			'@typescript-eslint/consistent-indexed-object-style': 'off', // `[side: string]: Length` says what the key is
		},
	},
	{ files: ofSvelte, extends: [svelte.configs.recommended, svelte.configs.prettier] },
	{ files: ['**/*.ts'], languageOptions: { parser: tseslint.parser } },
	{
		rules: {
			'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx', 'hack'], location: 'anywhere' }],
			'no-restricted-syntax': ['error', importsWithEnding, namedExports],
		},
	},
	{
		files: ['src/**/*.ts'],
		rules: { 'no-restricted-syntax': ['error', importsWithEnding, namedExports, ...secondReading] },
	},
	{
		files: ['**/*.svelte', '**/*.svelte.ts'],
		languageOptions: {
			globals: globals.browser,
			parserOptions: { parser: tseslint.parser, svelteConfig },
		},
		rules: {
			'svelte/no-at-html-tags': 'error',
			'svelte/prefer-svelte-reactivity': 'off', // a Map that only remembers need not tell anyone
			'svelte/button-has-type': 'error',
			'no-restricted-syntax': ['error', importsWithEnding, namedExports, inlineStyle, ...secondReading],
			'prefer-const': 'off', // `$props()` and bindable state are let
			'svelte/prefer-const': ['error', { destructuring: 'all' }],
		},
	},
	{
		files: ['src/core/**/*.ts'],
		rules: {
			'no-restricted-syntax': ['error', importsWithEnding, namedExports, ...chance, ...secondReading],
			'no-restricted-properties': [
				'error',
				{ object: 'Math', property: 'random', message: 'core leaves nothing to chance: pass the number in.' },
				{ object: 'Date', property: 'now', message: 'core has no clock: pass the time in.' },
			],
			'no-restricted-globals': ['error', 'console', 'performance', 'crypto', 'process', 'setTimeout', 'fetch'],
		},
	},
	{
		files: ['src/core/{settings,show,row,merge}/**/*.ts'], // they read cells or settings, or carry texts from one show to another
		rules: { 'no-restricted-syntax': ['error', importsWithEnding, namedExports, ...chance] },
	},
	{
		files: ['tests/**/*.ts'],
		rules: { 'no-restricted-syntax': ['error', importsWithEnding, ...notReady] },
	},
	{
		// Tools ask these for a default export.
		files: ['*.config.ts', '*.config.js', 'tests/unit/browserCompile.ts'],
		rules: { 'no-restricted-syntax': ['error', importsWithEnding] },
	},
	{
		files: ['**/*.js', '**/*.cjs'],
		languageOptions: { globals: globals.node },
	},
);
