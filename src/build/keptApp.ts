import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { contentType } from '../cli/contentTypes.ts';
import type { BuiltFile } from '../serviceWorker/builtFiles.ts';
import { webManifest } from './webManifest.ts';

/**
 * Makes the app one that is kept on the device: its manifest, and `sw.js`, the service worker in one file, which knows
 * the bytes of everything else that was built.
 */
export function keptApp(description: string): Plugin[] {
	let folder: string;
	return VitePWA({
		strategies: 'injectManifest',
		srcDir: 'src/serviceWorker',
		filename: 'sw.ts',
		injectRegister: null, // src/app/keepApp.ts registers
		manifest: webManifest(description),
		includeManifestIcons: false, // the pattern below has them already
		injectManifest: {
			rollupFormat: 'iife',
			globPatterns: ['**/*'],
			globIgnores: ['sw.js', '**/*.map'],
			maximumFileSizeToCacheInBytes: 6 * 2 ** 20, // the solver's WebAssembly is larger than what is kept by itself
			manifestTransforms: [
				async (entries) => {
					const inOrder = entries.toSorted((a, b) => (a.url < b.url ? -1 : 1));
					const files = inOrder.map(async (entry) => ({
						...entry,
						revision: null,
						...(await asBuilt(folder, entry.url)),
					}));
					return { manifest: await Promise.all(files) };
				},
			],
		},
		integration: {
			beforeBuildServiceWorker: ({ injectManifest }) => {
				folder = injectManifest.globDirectory;
				// The plugin would add the manifest once more, without its bytes: it has been built, and the pattern has it.
				delete injectManifest.additionalManifestEntries;
			},
		},
	});
}

async function asBuilt(folder: string, url: string): Promise<BuiltFile> {
	const hash = createHash('sha256').update(await readFile(join(folder, url)));
	return { url, type: contentType(url), integrity: `sha256-${hash.digest('base64')}` };
}
