import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { build, type Plugin, type ResolvedConfig, type Rolldown } from 'vite';

/**
 * Adds `start.js`, which speaks where the app does not start and must not depend on any other file, and has the page
 * run the app's script only as it was built.
 */
export function startScript(): Plugin {
	let config: ResolvedConfig;
	return {
		name: 'evenhang-start',
		apply: 'build',
		configResolved: (resolved) => void (config = resolved),
		transformIndexHtml: {
			order: 'post',
			handler: (html, { bundle = {} }) => ({
				html: withIntegrity(html, bundle),
				tags: [{ tag: 'script', attrs: { src: './start.js' }, injectTo: 'head-prepend' }],
			}),
		},
		writeBundle: () => bundleWhole(config, 'src/start/start.ts', 'start.js'),
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
): Promise<void> {
	await build({
		configFile: false,
		root,
		publicDir: false,
		logLevel: 'warn',
		build: {
			outDir,
			emptyOutDir: false,
			target,
			reportCompressedSize: false,
			rolldownOptions: { input: join(root, entry), output: { format: 'iife', entryFileNames: name } },
		},
	});
}
