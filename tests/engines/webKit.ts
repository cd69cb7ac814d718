import { mkdir, writeFile } from 'node:fs/promises';
import { createServer, type AddressInfo } from 'node:net';
import { join } from 'node:path';
import { called, problemsWritten, writeDownProblems } from './inPage.ts';
import { orEnd, start } from './started.ts';
import { type Folders, type Tab, windowSize } from './tab.ts';

/** A port of this machine that is free now. */
const freePort = (): Promise<number> =>
	new Promise((resolve) => {
		const server = createServer().listen(0, '127.0.0.1', () => {
			const { port } = server.address() as AddressInfo;
			server.close(() => resolve(port));
		});
	});

/**
 * Opens the small browser of WebKitGTK on a screen that nobody sees, by WebDriver.
 * @param program the one that speaks WebDriver
 * @param screen the program that gives another one a screen
 */
export async function openWebKit(program: string, screen: string, { profile, downloads }: Folders): Promise<Tab> {
	const port = await freePort();
	const config = join(profile, 'config');
	await mkdir(config, { recursive: true });
	await writeFile(join(config, 'user-dirs.dirs'), `XDG_DOWNLOAD_DIR="${downloads}"\n`);

	const driver = driverAt(port);
	const args = ['-a', '-s', '-screen 0 1280x1000x24', program, `--port=${port}`];
	const env = { XDG_CONFIG_HOME: config, XDG_DATA_HOME: join(profile, 'data'), XDG_CACHE_HOME: join(profile, 'cache') };
	const started = await start(screen, args, env, async () => {
		const { ready } = await driver<{ ready: boolean }>('GET', '/status');
		return ready || undefined;
	});
	return orEnd(started, () => tabOver(driver, started.end));
}

/** Sends a command to the driver. What it gives is named by the caller, after the standard. */
type Driver = <Result>(method: 'GET' | 'POST' | 'DELETE', path: string, body?: object) => Promise<Result>;

const driverAt = (port: number): Driver =>
	async function send<Result>(method: string, path: string, body?: object) {
		const response = await fetch(`http://127.0.0.1:${port}${path}`, {
			method,
			...(body && { body: JSON.stringify(body) }),
		});
		const { value } = (await response.json()) as { value: unknown };
		if (response.ok) return value as Result;
		const { error, message } = value as { error: string; message: string };
		throw new Error(`${error}: ${message}`);
	};

/** What a script in the page leaves: what it gives as JSON, or why it failed. */
interface Done {
	readonly value?: string | null;
	readonly cause?: string;
}

async function tabOver(send: Driver, end: () => Promise<void>): Promise<Tab> {
	const { sessionId } = await send<{ sessionId: string }>('POST', '/session', { capabilities: {} });
	const session = `/session/${sessionId}`;
	await send('POST', `${session}/window/rect`, windowSize);
	await send('POST', `${session}/timeouts`, { script: 120_000, pageLoad: 120_000 });

	const loaded = () => tab.ask(writeDownProblems, undefined);
	const tab: Tab = {
		async go(url) {
			await send('POST', `${session}/url`, { url });
			await loaded();
		},
		async reload() {
			await send('POST', `${session}/refresh`, {});
			await loaded();
		},
		async ask<Result>(work: (given: never) => unknown, given: unknown) {
			const script = `const done = arguments[arguments.length - 1];
				(async () => JSON.stringify(await ${called(work, given)}))()
					.then((value) => done({ value }), (cause) => done({ cause: String(cause) }));`;
			const { value, cause } = await send<Done>('POST', `${session}/execute/async`, { script, args: [] });
			if (cause !== undefined) throw new Error(cause);
			return JSON.parse(value ?? 'null') as Result;
		},
		perform: async (source) => void (await send('POST', `${session}/actions`, { actions: [source] })),
		problems: () => problemsWritten(tab),
		async close() {
			await send('DELETE', session).catch(() => undefined); // what is left is ended below
			await end();
		},
	};
	return tab;
}
