import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import { defineConfig } from 'eslint/config';
import globals from 'globals';
import tseslint from 'typescript-eslint';
import house from './houseRules.js';
import svelteConfig from './svelte.config.js';

/** The rule compiles a component to find what it may ignore: done only where something is ignored, a tenth of them. */
const unusedIgnore = svelte.rules['no-unused-svelte-ignore'];
const svelteIgnore = {
	rules: {
		'no-unused': {
			...unusedIgnore,
			create: (context) => (context.sourceCode.text.includes('svelte-ignore') ? unusedIgnore.create(context) : {}),
		},
	},
};

const components = '**/*.svelte';

/** What Svelte compiles. */
const ofSvelte = [components, '**/*.svelte.ts'];

export default defineConfig(
	{ ignores: ['dist/', 'dev-dist/', '.svelte-check/', 'node_modules/', 'coverage/'] },
	{ linterOptions: { reportUnusedDisableDirectives: 'error' } },
	{
		// All that is TypeScript by itself is oxlint's (`.oxlintrc.json`): it has these rules too.
		files: [components, '**/*.js', '**/*.cjs'],
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
	{
		files: [components, '**/*.js', '**/*.cjs'],
		plugins: { house },
		rules: {
			'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx', 'hack'], location: 'anywhere' }],
			'house/whole-file-names': 'error',
		},
	},
	{
		files: [components],
		rules: {
			'house/named-exports': 'error',
			'house/no-inline-style': 'error',
			'house/no-second-reading': 'error',
			'house/ask-has-mount': 'error',
			'prefer-const': 'off', // `$props()` and bindable state are let
			'svelte/prefer-const': ['error', { destructuring: 'all' }],
		},
	},
	{
		files: ofSvelte,
		languageOptions: {
			globals: globals.browser,
			parserOptions: { parser: tseslint.parser, svelteConfig },
		},
		plugins: { 'svelte-ignore': svelteIgnore },
		rules: {
			'svelte/no-unused-svelte-ignore': 'off',
			'svelte-ignore/no-unused': 'error',
			'svelte/no-at-html-tags': 'error',
			'svelte/prefer-svelte-reactivity': 'off', // a Map that only remembers need not tell anyone
			'svelte/button-has-type': 'error',
		},
	},
	{ files: ['**/*.js', '**/*.cjs'], languageOptions: { globals: globals.node } },
);
