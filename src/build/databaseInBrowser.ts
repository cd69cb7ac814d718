import type { Plugin } from 'vite';

/** Where the wrapper of IndexedDB begins to let stores be gone through by `for await`, and where that ends. */
const begin = "const advanceMethodProps = ['advance', 'continue', 'continuePrimaryKey'];";
const end = 'export { deleteDB, openDB, unwrap, wrap };';

/** Builds the wrapper of IndexedDB without that: it lies in the first screen, and the one store that is gone through has a cursor. */
export const databaseInBrowser = (): Plugin => ({
	name: 'evenhang-database',
	apply: 'build',
	transform: {
		filter: { id: /node_modules[\\/]idb[\\/]build[\\/]index\.js$/ },
		handler(code) {
			const [from, to] = [code.indexOf(begin), code.indexOf(end)];
			if (from < 0 || to < from) this.error('idb goes through stores in another way');
			return code.slice(0, from) + code.slice(to);
		},
	},
});
