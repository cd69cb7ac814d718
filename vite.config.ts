import { readFileSync } from 'node:fs';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';
import { compiledEarly } from './src/build/compiledEarly.ts';
import { databaseInBrowser } from './src/build/databaseInBrowser.ts';
import { exampleInBrowser } from './src/build/exampleInBrowser.ts';
import { keptApp } from './src/build/keptApp.ts';
import { listReaderInBrowser } from './src/build/listReaderInBrowser.ts';
import { preloadInBrowser } from './src/build/preloadInBrowser.ts';
import { sharedParts } from './src/build/sharedParts.ts';
import { solverInBrowser } from './src/build/solverInBrowser.ts';
import { soundPage } from './src/build/soundPage.ts';
import { startScript } from './src/build/startScript.ts';
import { svelteInBrowser } from './src/build/svelteInBrowser.ts';
import { workersInBundle } from './src/build/workersInBundle.ts';

const { version, description } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8')) as {
	version: string;
	description: string;
};

/**
 * What the built app may do: load its own files, and nothing else. Svelte writes its own templates as HTML through a
 * policy of its own; `default` is ours and lets through the service worker's address only (src/app/trustedUrls.ts).
 */
const contentSecurityPolicy = (inPage: string) =>
	[
		"default-src 'none'",
		// The boards' solver is WebAssembly; scripts made from text stay forbidden. In the page stands one script alone, which
		// is none: the list of what the others must be.
		`script-src 'self' 'wasm-unsafe-eval' '${inPage}'`,
		"style-src 'self'",
		"img-src 'self' blob:", // pictures that are kept on the device
		"font-src 'self'",
		"connect-src 'self'",
		"worker-src 'self'",
		"manifest-src 'self'",
		"base-uri 'none'",
		"form-action 'none'",
		"require-trusted-types-for 'script'",
		'trusted-types svelte-trusted-html default',
	].join('; ');

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
		modulePreload: {
			polyfill: false,
			// With a part come the files that it imports, but for those that the first screen is made of: they are there.
			resolveDependencies: (part, files, { hostType }) =>
				hostType === 'html' ? files : files.filter((file) => file !== part && !/\/(?:core|first|rolldown)-/.test(file)),
		},
		reportCompressedSize: false,
		cssCodeSplit: false, // one style sheet, which the page takes by its hash
		rolldownOptions: {
			optimization: { inlineConst: { mode: 'all', pass: 3 } }, // 0.4 kB of all scripts
			checks: { bundlerTimings: false }, // it says how long the build took, and nothing that is wrong
			output: { codeSplitting: { groups: sharedParts(import.meta.dirname) } },
		},
	},
	plugins: [
		versionInPage,
		svelte(),
		svelteInBrowser(),
		databaseInBrowser(),
		solverInBrowser(import.meta.dirname),
		preloadInBrowser(),
		listReaderInBrowser(),
		exampleInBrowser(),
		workersInBundle(),
		startScript(),
		compiledEarly(), // before the hashes of scripts are taken
		soundPage(contentSecurityPolicy),
		keptApp(description),
	],
});
