import type { Plugin } from 'vite';

const isNode = `globalThis.process?.versions?.node&&globalThis.process?.type!="renderer"`;
const nodeModule = 'await import("node:module")';

/** Builds the solver of the plans without what it does under Node: the browser has none of what that asks for. */
export const solverInBrowser = (): Plugin => ({
	name: 'evenhang-solver',
	apply: 'build',
	transform: {
		filter: { id: /node_modules[\\/]highs[\\/].+\.mjs$/ },
		handler(code) {
			if (!code.includes(isNode) || !code.includes(nodeModule))
				this.error('highs asks in another way whether it runs under Node');
			return code.replace(isNode, 'false').replace(nodeModule, '{}');
		},
	},
});
