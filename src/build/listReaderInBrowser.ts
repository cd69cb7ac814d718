import type { Plugin } from 'vite';

/**
 * Makes a module of the reader of lists, which is written for every way of loading a script there has been: else the build
 * adds a loader for one of them, and puts each of its functions through that.
 */
export const listReaderInBrowser = (): Plugin => ({
	name: 'evenhang-list-reader',
	apply: 'build',
	transform: {
		filter: { id: /papaparse\.min\.js$/ },
		handler: (code) =>
			`const module = { exports: {} };\n((exports) => {\n${code}\n})(module.exports);\nexport default module.exports;`,
	},
});
