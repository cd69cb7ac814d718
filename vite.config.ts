import { readFileSync } from 'node:fs';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

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
	transformIndexHtml: () => [
		{
			tag: 'meta',
			attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
			injectTo: 'head-prepend',
		},
	],
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
	plugins: [
		policyInPage,
		versionInPage,
		svelte(),
		VitePWA({
			registerType: 'prompt',
			injectRegister: null, // src/app/update.svelte.ts registers, because the policy allows no inline script
			manifest: {
				name: 'Evenhang',
				short_name: 'Evenhang',
				description,
				lang: 'en',
				start_url: './',
				scope: './',
				display: 'standalone',
				theme_color: '#f6f2ea',
				background_color: '#f6f2ea',
				// Another app's "share", and a file's "open with". The service worker takes what is shared: static/shareTarget.js.
				share_target: {
					action: './share-target',
					method: 'POST',
					enctype: 'multipart/form-data',
					params: {
						text: 'text',
						files: [
							{
								name: 'files',
								accept: [
									'text/csv',
									'.csv',
									'text/tab-separated-values',
									'.tsv',
									'text/plain',
									'.txt',
									'application/json',
									'.json',
								],
							},
						],
					},
				},
				file_handlers: [
					{
						action: './',
						accept: {
							'text/csv': ['.csv'],
							'text/tab-separated-values': ['.tsv'],
							'application/json': ['.json'],
						},
					},
				],
				launch_handler: { client_mode: 'navigate-new' },
				icons: [
					{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
					{ src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
					{ src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
					{ src: 'maskable-192.png', sizes: '192x192', type: 'image/png', purpose: 'maskable' },
					{ src: 'maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
				],
			},
			includeManifestIcons: false, // the pattern below has them already
			workbox: {
				globPatterns: ['**/*'],
				maximumFileSizeToCacheInBytes: 6 * 2 ** 20, // the solver's WebAssembly is larger than what is kept by itself
				globIgnores: ['sw.js', 'workbox-*.js', '**/*.map', 'manifest.webmanifest'], // the plugin adds the manifest
				// A plain static host has one page; nothing pretends that other addresses are it.
				navigateFallback: null,
				ignoreURLParametersMatching: [/./],
				// The first visit already works with the connection gone, without a reload between.
				clientsClaim: true,
				cleanupOutdatedCaches: true,
				importScripts: ['shareTarget.js'],
			},
		}),
	],
});
