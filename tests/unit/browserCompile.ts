import type { Environment } from 'vitest/runtime';

/** Plain Node, with modules compiled as for a browser. */
export default {
	name: 'browser-compile',
	viteEnvironment: 'client',
	setup: () => ({ teardown: () => undefined }),
} satisfies Environment;
