import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';

/** The styles that each short name stands for. */
const named = new Map();

/**
 * Scopes styles by four characters, where eight more would be in every element: over 1 kB of all scripts. Two of one name stop the
 * build: take another part of the hash then, as the first three characters had two.
 */
function cssHash({ hash, css, filename }) {
	const name = `_${hash(css).slice(1, 4)}`;
	if ((named.get(name) ?? css) !== css) throw new Error(`Two components have the style name ${name}: ${filename}`);
	named.set(name, css);
	return name;
}

/** @type {import('@sveltejs/vite-plugin-svelte').SvelteConfig} */
export default {
	preprocess: vitePreprocess({ script: false }),
	compilerOptions: { runes: true, cssHash, discloseVersion: false },
};
