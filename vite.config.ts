import { readFileSync } from 'node:fs';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';
import { keptApp } from './src/build/keptApp.ts';
import { startScript } from './src/build/startScript.ts';

const { version, description } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8')) as {
	version: string;
	description: string;
};

/**
 * What the built app may do: load its own files, and nothing else. Svelte writes its own templates as HTML through a
 * policy of its own; `default` is ours and lets through the service worker's address only (src/app/trustedUrls.ts).
 */
const contentSecurityPolicy = [
	"default-src 'none'",
	"script-src 'self' 'wasm-unsafe-eval'", // the boards' solver is WebAssembly; scripts made from text stay forbidden
	"style-src 'self'",
	"img-src 'self'",
	"font-src 'self'",
	"connect-src 'self'",
	"worker-src 'self'",
	"manifest-src 'self'",
	"base-uri 'none'",
	"form-action 'none'",
	"require-trusted-types-for 'script'",
	'trusted-types svelte-trusted-html default',
].join('; ');

/** Puts the policy first in the head of the built page; the development server needs inline scripts and goes without. */
const policyInPage: Plugin = {
	name: 'evenhang-policy',
	apply: 'build',
	transformIndexHtml: {
		order: 'post',
		handler: () => [
			{
				tag: 'meta',
				attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
				injectTo: 'head-prepend',
			},
		],
	},
};

/** Says in the page which version it is, for bug reports. The browser tests build with a stamp of their own. */
const versionInPage: Plugin = {
	name: 'evenhang-version',
	transformIndexHtml: () => [
		{ tag: 'meta', attrs: { name: 'version', content: process.env.EVENHANG_VERSION ?? version }, injectTo: 'head' },
	],
};

export default defineConfig({
	base: './', // every address is relative, so that the folder works wherever a static host puts it
	publicDir: 'static',
	build: {
		target: 'es2023',
		assetsInlineLimit: 0, // a `data:` address would need a hole in the policy
		modulePreload: { polyfill: false },
		reportCompressedSize: false,
	},
	plugins: [versionInPage, svelte(), startScript(), policyInPage, keptApp(description)],
});
