import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { BiDi } from './biDi.ts';
import { called, problemsWritten, writeDownProblems } from './inPage.ts';
import { orEnd, start } from './started.ts';
import { type Folders, type Tab, windowSize } from './tab.ts';

interface Evaluated {
	readonly type: 'success' | 'exception';
	readonly result: { readonly value?: string };
	readonly exceptionDetails: { readonly text: string };
}

/** Opens Firefox without a screen, over WebDriver BiDi, which it speaks by itself. */
export async function openFirefox(program: string, { profile, downloads }: Folders): Promise<Tab> {
	const preferences = {
		'browser.download.folderList': 2, // the folder that is named
		'browser.download.dir': downloads,
		'browser.download.useDownloadDir': true,
	};
	const lines = Object.entries(preferences).map(
		(each) => `user_pref(${each.map((part) => JSON.stringify(part)).join(', ')});`,
	);
	await writeFile(join(profile, 'user.js'), lines.join('\n'));
	const args = ['--headless', '--no-remote', '--remote-debugging-port=0', '--profile', profile];
	const started = await start(program, args, {}, async () => {
		const { ws_port: port } = JSON.parse(await readFile(join(profile, 'WebDriverBiDiServer.json'), 'utf8')) as {
			ws_port: number;
		};
		return await BiDi.connect(port);
	});
	return orEnd(started, () => tabOver(started.ready, started.end));
}

async function tabOver(biDi: BiDi, end: () => Promise<void>): Promise<Tab> {
	const { contexts } = await biDi.send<{ contexts: { context: string }[] }>('browsingContext.getTree', {});
	const { context } = contexts[0]!;
	await biDi.send('browsingContext.setViewport', { context, viewport: windowSize });
	await biDi.send('script.addPreloadScript', { functionDeclaration: writeDownProblems.toString() });

	const tab: Tab = {
		go: async (url) => void (await biDi.send('browsingContext.navigate', { context, url, wait: 'complete' })),
		reload: async () => void (await biDi.send('browsingContext.reload', { context, wait: 'complete' })),
		async ask<Result>(work: (given: never) => unknown, given: unknown) {
			const { type, result, exceptionDetails } = await biDi.send<Evaluated>('script.evaluate', {
				expression: `(async () => JSON.stringify(await ${called(work, given)}))()`,
				target: { context },
				awaitPromise: true,
			});
			if (type === 'exception') throw new Error(exceptionDetails.text);
			return JSON.parse(result.value ?? 'null') as Result;
		},
		perform: async (source) => void (await biDi.send('input.performActions', { context, actions: [source] })),
		problems: () => problemsWritten(tab),
		async close() {
			await biDi.send('browser.close', {}).catch(() => undefined); // what is left is ended below
			biDi.close();
			await end();
		},
	};
	return tab;
}
