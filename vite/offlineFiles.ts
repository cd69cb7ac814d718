import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative, resolve, sep } from 'node:path';
import { build, type Plugin, type ResolvedConfig, type Rolldown } from 'vite';
import { contentType } from '../src/cli/contentTypes.ts';
import type { BuiltFile } from '../src/serviceWorker/builtFiles.ts';

/** What the service worker is called; it cannot know its own bytes. */
const serviceWorker = 'sw.js';

/**
 * Adds the two files that must not depend on any other: `start.js`, which speaks where the app does not start, and
 * `sw.js`, the service worker, which knows the bytes of everything else that was built.
 */
export function offlineFiles(): Plugin {
	let config: ResolvedConfig;
	return {
		name: 'evenhang-offline-files',
		apply: 'build',
		configResolved: (resolved) => void (config = resolved),
		transformIndexHtml: {
			order: 'post',
			handler: (html, { bundle = {} }) => ({
				html: withIntegrity(html, bundle),
				tags: [{ tag: 'script', attrs: { src: './start.js' }, injectTo: 'head-prepend' }],
			}),
		},
		writeBundle: {
			sequential: true,
			order: 'post',
			async handler() {
				const folder = resolve(config.root, config.build.outDir);
				await bundleWhole(config, 'src/start/start.ts', 'start.js');
				const files = await builtFiles(folder);
				const version = hash(JSON.stringify(files)).slice(0, 16);
				await bundleWhole(config, 'src/serviceWorker/serviceWorker.ts', serviceWorker, {
					builtApp: JSON.stringify({ version, files }),
				});
			},
		},
	};
}

/** Has the page take its script and its style sheet only as they were built, not what a network puts in their place. */
const withIntegrity = (html: string, bundle: Rolldown.OutputBundle): string =>
	html.replace(/ (?:src|href)="\.\/([^"]+)"/g, (attribute, file: string) => {
		const built = Object.hasOwn(bundle, file) ? bundle[file] : undefined;
		if (!built) return attribute;
		const content = built.type === 'chunk' ? built.code : built.source;
		return `${attribute} integrity="sha384-${createHash('sha384').update(content).digest('base64')}"`;
	});

/** Makes one file of a script and all that it imports. */
async function bundleWhole(
	{ root, build: { outDir, target } }: ResolvedConfig,
	entry: string,
	name: string,
	define: Readonly<Record<string, string>> = {},
): Promise<void> {
	await build({
		configFile: false,
		root,
		publicDir: false,
		logLevel: 'warn',
		define,
		build: {
			outDir,
			emptyOutDir: false,
			target,
			reportCompressedSize: false,
			rolldownOptions: { input: join(root, entry), output: { format: 'iife', entryFileNames: name } },
		},
	});
}

/** Every file in a folder, in the order of their names. */
async function builtFiles(folder: string): Promise<readonly BuiltFile[]> {
	const entries = await readdir(folder, { recursive: true, withFileTypes: true });
	const files = entries
		.filter((entry) => entry.isFile() && entry.name !== serviceWorker)
		.map(({ parentPath, name }) => join(parentPath, name));
	return Promise.all(
		files.toSorted().map(async (file) => ({
			path: relative(folder, file).split(sep).join('/'),
			type: contentType(file),
			sha256: hash(await readFile(file)),
		})),
	);
}

const hash = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex');
