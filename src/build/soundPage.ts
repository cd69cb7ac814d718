import { createHash } from 'node:crypto';
import type { Plugin, Rolldown } from 'vite';

/**
 * Has the page run the app's scripts, those that come later too, and use its style sheet only as they were built, not
 * what a network puts in their place; puts the policy first in its head, and then what is to be fetched beside all else.
 * The development server needs inline scripts and goes without.
 *
 * @param policy what the page may do, by the hash of the one script that stands in it
 */
export const soundPage = (policy: (inPage: string) => string): Plugin => ({
	name: 'evenhang-sound-page',
	apply: 'build',
	generateBundle: {
		order: 'post', // the build writes into scripts until then
		handler(_options, bundle) {
			const page = bundle['index.html'];
			if (page?.type !== 'asset') return;
			const map = integrityMap(bundle);
			const head = `<head>
		<meta http-equiv="Content-Security-Policy" content="${policy(hashOf('sha256', map))}" />
		<script type="importmap">${map}</script>`;
			const html = withIntegrity(page.source.toString(), bundle);
			const built = Object.values(bundle);
			const hands = built.find((each) => each.type === 'chunk' && each.fileName.startsWith(handsFile));
			const font = built.find(({ fileName }) => fileName.startsWith(fontFile));
			const [entry] = entryScript.exec(html) ?? [];
			const scripts = [...html.matchAll(preload)].map(([link]) => link.trim());
			const sheets = [...html.matchAll(styleSheet)].map(([, attributes]) => attributes!);
			if (scripts.length === 0 || sheets.length === 0 || !entry || hands?.type !== 'chunk' || !font)
				return this.error('not all is named that the page loads first');
			const links = [
				...scripts,
				...[hands.fileName, ...hands.imports]
					.filter((file) => !scripts.some((link) => link.includes(file)))
					.map((file) => preloadOf(bundle[file]!)),
				entry.replace('script type="module"', 'link rel="modulepreload"').replace(' src=', ' href='),
				...sheets.map((attributes) => `<link rel="preload" as="style"${attributes}>`),
				`<link rel="preload" as="font" type="font/woff2" crossorigin href="./${font.fileName}">`,
			];
			page.source = html.replaceAll(preload, '').replace('<head>', [head, ...links].join('\n\t\t'));
		},
	},
});

/** The scripts that are named in the page because its first one loads them: no script that comes before is waited for. */
const preload = /\s*<link rel="modulepreload"[^>]+>/g;

/** The first script, and the style sheets: they stand behind `dist/start.js`, and would not be asked for before it has run. */
const entryScript = /<script type="module"[^>]+>/;
const styleSheet = /<link rel="stylesheet"([^>]*[^>/\s])\s*\/?>/g;

/** The letters of the first screen, which its style sheet asks for once there are words to be drawn. */
const fontFile = 'assets/public-sans-latin-wght-';

/** What the first key needs besides: it is loaded by the first script, and would come after it. */
const handsFile = 'assets/hands-';

const preloadOf = (built: Rolldown.OutputChunk | Rolldown.OutputAsset): string =>
	`<link rel="modulepreload" crossorigin href="./${built.fileName}" integrity="${integrityOf(built)}">`;

const withIntegrity = (html: string, bundle: Rolldown.OutputBundle): string =>
	html.replace(/ (?:src|href)="\.\/([^"]+)"/g, (attribute, file: string) => {
		const built = Object.hasOwn(bundle, file) ? bundle[file] : undefined;
		return built ? `${attribute} integrity="${integrityOf(built)}"` : attribute;
	});

/** What each script must be, for those that no tag of the page names. */
function integrityMap(bundle: Rolldown.OutputBundle): string {
	const scripts = Object.values(bundle).filter(({ type }) => type === 'chunk');
	const integrity = Object.fromEntries(scripts.map((built) => [`./${built.fileName}`, integrityOf(built)]));
	return JSON.stringify({ integrity });
}

const integrityOf = (built: Rolldown.OutputChunk | Rolldown.OutputAsset): string =>
	hashOf('sha384', built.type === 'chunk' ? built.code : built.source);

const hashOf = (method: 'sha256' | 'sha384', content: string | Uint8Array): string =>
	`${method}-${createHash(method).update(content).digest('base64')}`;
