import { join } from 'node:path';
import { build, type Plugin, type ResolvedConfig } from 'vite';

/**
 * Adds `start.js`, which speaks where the app does not start and must not depend on any other file.
 */
export function startScript(): Plugin {
	let config: ResolvedConfig;
	return {
		name: 'evenhang-start',
		apply: 'build',
		configResolved: (resolved) => void (config = resolved),
		transformIndexHtml: () => [{ tag: 'script', attrs: { src: './start.js' }, injectTo: 'head-prepend' }],
		writeBundle: () => bundleWhole(config, 'src/start/start.ts', 'start.js'),
	};
}

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
			rolldownOptions: {
				input: join(root, entry),
				checks: { bundlerTimings: false },
				output: { format: 'iife', entryFileNames: name },
			},
		},
	});
}
