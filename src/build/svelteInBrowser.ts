import type { Plugin } from 'vite';

/**
 * What of Svelte is never used here: pages that a server has drawn, and its experiments and former ways. Each hangs on a
 * variable that only its own switch sets.
 */
const never: readonly (readonly [file: RegExp, name: string])[] = [
	[/svelte[\\/]src[\\/]internal[\\/]client[\\/]dom[\\/]hydration\.js$/, 'hydrating'],
	[/svelte[\\/]src[\\/]internal[\\/]flags[\\/]index\.js$/, 'async_mode_flag'],
	[/svelte[\\/]src[\\/]internal[\\/]flags[\\/]index\.js$/, 'legacy_mode_flag'],
	[/svelte[\\/]src[\\/]internal[\\/]flags[\\/]index\.js$/, 'tracing_mode_flag'],
];

/** Where Svelte asks whether a part of a component waits for something: that is one of its experiments, and none ever does. */
const waits = {
	file: /svelte[\\/]src[\\/]internal[\\/]client[\\/]reactivity[\\/]async\.js$/,
	asked: 'if (async.length === 0 && pending.length === 0) {',
	answered: 'if (true) {',
};

/** What a component does only for a page that a server has drawn: some thousand calls that do nothing here. */
const idle = /^\s*\$\.(?:reset|next|remove_input_defaults|remove_textarea_child)\([^()]*\);$/gm;

/** What only such a page has need of when a node is asked for: whether it is a text, which may be missing there. */
const ofText = /(\$\.(?:only_child|child|first_child)\([\w$]+|\$\.sibling\([^;\n]*?, \d+), true\)/g;

/** Events that most components listen for at the root: all of the page listens for them from the start, so none says so. */
const usual = {
	file: /svelte[\\/]src[\\/]internal[\\/]client[\\/]dom[\\/]elements[\\/]events\.js$/,
	asked: 'export const all_registered_events = new Set();',
	answered: "export const all_registered_events = new Set(['click', 'change', 'keydown']);",
	calls: /^\s*\$\.delegate\(\['(?:click|change|keydown)'(?:, '(?:click|change|keydown)')*\]\);$/gm,
};

/** Builds Svelte without what this app never uses of it: what is never true is a constant, and what hangs on it goes. */
export const svelteInBrowser = (): Plugin => ({
	name: 'evenhang-svelte',
	apply: 'build',
	transform: {
		filter: { id: [/\.svelte$/, waits.file, usual.file, ...never.map(([file]) => file)] },
		handler(code, id) {
			if (id.endsWith('.svelte')) {
				const needed = code.replaceAll(idle, '').replaceAll(usual.calls, '');
				return needed.replaceAll(ofText, '$1)').replaceAll('$.only_child(', '$.child(');
			}
			for (const [file, name] of never.filter(([each]) => each.test(id))) {
				if (!code.includes(`export let ${name} = false;`)) this.error(`${file} says in another way what ${name} is`);
				code = code
					.replaceAll(new RegExp(`^(\\s+)${name} = \\w+;`, 'gm'), '')
					.replace(`export let ${name} = false;`, `export const ${name} = false;`);
			}
			for (const { asked, answered } of [waits, usual].filter((each) => each.file.test(id))) {
				if (!code.includes(asked)) this.error(`${id} no longer says ${asked}`);
				code = code.replace(asked, answered);
			}
			return code;
		},
	},
});
