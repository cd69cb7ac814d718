import { createHash } from 'node:crypto';
import { cp, mkdtemp, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { inject } from 'vitest';
import type { BuiltFile } from '../../../src/serviceWorker/builtFiles.ts';
import { builtApp } from './stage.ts';

/** The version that a newer build says it is. */
export const newerVersion = '99.0.0';

/** Where a newer build has its parts, so that each has another address, as a change in it would give. */
export const newerParts = 'parts';

let made: Promise<string> | undefined;

/**
 * A newer build of the app, in a folder of its own: made of the one that is tried, byte for byte as the build tool would make it
 * of another version, which takes seven processor seconds (`harness.test.ts` does it in the soak).
 */
export const newerBuild = (): Promise<string> => (made ??= make());

async function make(): Promise<string> {
	const folder = await mkdtemp(join(inject('builds'), 'newer-'));
	await cp(builtApp, folder, { recursive: true });
	await rename(join(folder, 'assets'), join(folder, newerParts));
	const change = async (file: string, by: (text: string) => string) =>
		writeFile(join(folder, file), by(await readFile(join(folder, file), 'utf8')));
	await change('index.html', newerPage);
	const page = hashOf(await readFile(join(folder, 'index.html')));
	await change('sw.js', (text) => newerList(text, page));
	return folder;
}

const hashOf = (content: string | Uint8Array): string =>
	`sha256-${createHash('sha256').update(content).digest('base64')}`;

/** The page with the newer version, and its parts where they are now. */
function newerPage(older: string): string {
	const page = older
		.replaceAll('./assets/', `./${newerParts}/`)
		.replace(/(<meta name="version" content=")[^"]*/, `$1${newerVersion}`);
	const inPage = (html: string) => hashOf(/<script type="importmap">(.*)<\/script>/.exec(html)![1]!);
	return page.replace(inPage(older), inPage(page)); // the policy lets through no other
}

/** The service worker with the list of what is there now, in the order of its paths. */
function newerList(script: string, page: string): string {
	const list = /\[\{"integrity":.*?\}\]/.exec(script)![0];
	const files = (JSON.parse(list) as BuiltFile[])
		.map((file) => ({ ...file, url: file.url.replace(/^assets\//, `${newerParts}/`) }))
		.map((file) => (file.url === 'index.html' ? { ...file, integrity: page } : file))
		.toSorted((a, b) => (a.url < b.url ? -1 : 1));
	return script.replace(list, JSON.stringify(files));
}
