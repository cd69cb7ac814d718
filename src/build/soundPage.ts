import { createHash } from 'node:crypto';
import type { Plugin, Rolldown } from 'vite';

/**
 * Has the page run the app's scripts, those that come later too, and use its style sheet only as they were built, not
 * what a network puts in their place; and puts the policy first in its head. The development server needs inline scripts
 * and goes without.
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
			page.source = withIntegrity(page.source.toString(), bundle).replace('<head>', head);
		},
	},
});

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
