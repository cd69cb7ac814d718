import { readFile } from 'node:fs/promises';
import type { Plugin } from 'vite';

/** How the example is asked for as a text, besides the path of its file. */
const asText = '?raw';

/** Builds the example without the line ends and tabs that it has for those who read its file: 0.3 kB of all scripts. */
export const exampleInBrowser = (): Plugin => ({
	name: 'evenhang-example',
	apply: 'build',
	enforce: 'pre', // before the text is taken as it is
	load: {
		filter: { id: /example\.evenhang\.json\?raw$/ },
		async handler(id) {
			const file = await readFile(id.slice(0, -asText.length), 'utf8');
			return `export default ${JSON.stringify(JSON.stringify(JSON.parse(file)))};`;
		},
	},
});
