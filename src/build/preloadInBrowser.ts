import type { Plugin } from 'vite';

/** Vite's module that loads a part of the app, and asks for all files that the part imports at once. */
const helper = /vite\/preload-helper\.js$/;

/** The same without what a build of one style sheet never needs: no part has a style of its own to wait for. */
const lighter = `const asked = new Set();
export const __vitePreload = (load, files, from) => {
	for (const file of files ?? []) {
		const { href } = new URL(file, from);
		if (asked.has(href)) continue;
		asked.add(href);
		const link = document.createElement('link');
		Object.assign(link, { rel: 'modulepreload', crossOrigin: '', href });
		document.head.append(link);
	}
	return load();
};`;

/** Builds parts that are loaded later with a loader that knows scripts only: 0.5 kB of the first screen. */
export const preloadInBrowser = (): Plugin => ({
	name: 'evenhang-preload',
	apply: 'build',
	transform: {
		filter: { id: helper },
		handler(code) {
			if (!code.includes('export const __vitePreload')) this.error('Vite calls what loads a part in another way');
			return lighter;
		},
	},
});
