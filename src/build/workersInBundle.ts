import { basename, dirname, join } from 'node:path';
import type { Plugin } from 'vite';

/** How the app starts a worker. */
const start = /new URL\('(\.\/[\w.]+\.worker\.ts)', import\.meta\.url\)/g;

/**
 * Builds the workers together with the page. The build tool would make a bundle of its own for each, with the whole of
 * `core` in it once more; as entries of one bundle they load the parts that they share from the same files.
 */
export const workersInBundle = (): Plugin => ({
	name: 'evenhang-workers',
	apply: 'build',
	enforce: 'pre', // before the build tool sees a worker there
	transform: {
		filter: { id: /src[\\/]workers[\\/]\w+\.ts$/, code: start },
		handler(code, id) {
			return code.replace(start, (_start, file: string) => {
				const name = basename(file, '.ts');
				const reference = this.emitFile({ type: 'chunk', id: join(dirname(id), file), name });
				return `import.meta.ROLLUP_FILE_URL_${reference}`;
			});
		},
	},
});
