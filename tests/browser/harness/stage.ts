import { existsSync } from 'node:fs';
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { serveFolder, type StaticHost } from '../../../src/cli/staticHost.ts';
import { findChromium, findShell } from './findChromium.ts';
import { planNothing } from './planNothing.ts';

/** The built app. */
export const builtApp = fileURLToPath(new URL('../../../dist/', import.meta.url));

/** A landscape tablet, held as at the bench. */
export const landscapeTablet = { width: 1180, height: 820 };
/** The same tablet, upright. */
export const uprightTablet = { width: 820, height: 1180 };
/** A phone, upright. */
export const phone = { width: 390, height: 844 };
/** A small laptop. */
export const laptop = { width: 1440, height: 900 };

/** How the stage is set; all of it has a default. */
export interface StageOptions {
	/** The folder that is served. Default: the built app. */
	readonly folder?: string;
	/** Path under which the app appears, with a slash at both ends. Default `/`. */
	readonly under?: string;
	/** Default: a landscape tablet. */
	readonly viewport?: { readonly width: number; readonly height: number };
	readonly colorScheme?: 'light' | 'dark';
	/** Whether fingers are used. Default false. */
	readonly hasTouch?: boolean;
	readonly reducedMotion?: 'reduce' | 'no-preference';
	readonly locale?: string;
	/** Serves the folder. Default: the small host of `npm start`. */
	readonly serve?: typeof serveFolder;
	/** Whether the app is kept on the device by its service worker, which costs each opening a good part of its time. Default true. */
	readonly isKept?: boolean;
	/** Whether boards, sticks and the order of the bench are planned, in workers, after each change. Default true. */
	readonly isPlanned?: boolean;
	/** How long the browser may use a file of the host without asking for it again, in seconds. Default 0: it asks each time. */
	readonly maxAge?: number;
	/** Whether the browser has a profile of its own on disk, and so can be closed and opened again. Default false. */
	readonly hasProfile?: boolean;
	/**
	 * Whether a browser with a profile is the whole Chromium that people have, not its headless shell: the same engine, which
	 * takes twice the processor time to start. Default false.
	 */
	readonly isWhole?: boolean;
	/**
	 * Whether every pixel of the page is drawn, for a picture of it. Default false: plays look for words and places, which
	 * are the same on a screen of half as many pixels each way, drawn in a tenth less of the processor's time.
	 */
	readonly isSharp?: boolean;
}

/** What a browser does besides showing pages; two of these draw their own pages in each new window. */
const notNeeded = [
	...['WebUIOmniboxPopup', 'WebUIOmniboxAimPopup', 'AimEnabled', 'MediaRouter', 'OptimizationHints', 'HttpsUpgrades'],
	...['PaintHolding', 'AvoidUnnecessaryBeforeUnloadCheckSync'], // as playwright has them, whose own list this replaces
];

const args = [
	'--no-sandbox',
	'--disable-gpu',
	'--disable-quic',
	'--no-first-run',
	'--disable-background-networking',
	'--disable-component-update',
	'--disable-sync',
	`--disable-features=${notNeeded.join(',')}`,
	'--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1', // no name leads anywhere
];

/** The browser that stages without a profile share; it ends with the tests' process. */
let shared: Promise<Browser> | undefined;
const sharedBrowser = () => (shared ??= chromium.launch({ executablePath: findShell(), args }));

/** Closes the browser that stages share: a program that is no test does not end before. */
export async function closeSharedBrowser(): Promise<void> {
	await (await shared)?.close();
	shared = undefined;
}

/** Removes a profile. The processes of a browser end one after the other, and the last may still write there. */
const removeProfile = (profile: string): Promise<void> => rm(profile, { recursive: true, force: true, maxRetries: 20 });

/** A static host, and on the same machine a browser that has never seen it. Whatever goes wrong there is written down. */
export class Stage {
	/** Everything that must not happen: requests to elsewhere, errors in the console, breaches of the page's policy. */
	readonly problems: string[] = [];
	readonly options: StageOptions;
	readonly #profile: string | undefined;
	readonly #origin: string;
	#host: StaticHost;
	#context: BrowserContext | undefined;
	#isServed = true;
	/** Whether the host was ever switched off: what the browser says of that may come once it is on again. */
	#wasOff = false;
	#expected: RegExp | undefined;
	#allowed: RegExp | undefined;

	private constructor(options: StageOptions, profile: string | undefined, host: StaticHost) {
		this.options = options;
		this.#profile = profile;
		this.#host = host;
		this.#origin = new URL(host.address).origin;
	}

	/** Serves the app and opens a browser that has never seen it. */
	static async set(options: StageOptions = {}): Promise<Stage> {
		const folder = options.folder ?? builtApp;
		if (!existsSync(join(folder, 'index.html'))) throw new Error(`${folder} is not built: run "npm run build" first`);
		const { under = '/', maxAge = 0, serve = serveFolder } = options;
		const host = await serve(folder, { under, maxAge });
		const hasProfile = options.hasProfile ?? false;
		const profile = hasProfile ? await mkdtemp(join(tmpdir(), 'evenhang-profile-')) : undefined;
		const stage = new Stage(options, profile, host);
		await stage.openBrowser();
		return stage;
	}

	/** The address of the app. */
	get address(): string {
		return this.#host.address;
	}

	get context(): BrowserContext {
		if (!this.#context) throw new Error('the browser is closed: call openBrowser() first');
		return this.#context;
	}

	/** The folder of the browser's profile, for who spoils what lies there while the browser is closed. */
	get profile(): string {
		if (this.#profile === undefined) throw new Error('the browser has no profile: set the stage with hasProfile');
		return this.#profile;
	}

	/** Opens the browser, with whatever its profile has kept. */
	async openBrowser(): Promise<void> {
		const { viewport = landscapeTablet, colorScheme = 'light', hasTouch = false } = this.options;
		const options = {
			acceptDownloads: true,
			viewport,
			deviceScaleFactor: (this.options.isSharp ?? false) ? 1 : 0.5,
			colorScheme,
			hasTouch,
			reducedMotion: this.options.reducedMotion ?? 'no-preference',
			locale: this.options.locale ?? 'en-GB',
			serviceWorkers: (this.options.isKept ?? true) ? ('allow' as const) : ('block' as const),
		};
		this.#context =
			this.#profile === undefined
				? await (await sharedBrowser()).newContext(options)
				: await chromium.launchPersistentContext(this.#profile, { executablePath: this.#program, args, ...options });
		this.#context.setDefaultTimeout(20_000);
		await this.#watch(this.#context);
	}

	get #program(): string {
		return this.options.isWhole ? findChromium() : findShell();
	}

	/** Closes the browser as a person does; what it keeps on disk stays in the profile. */
	async closeBrowser(): Promise<void> {
		await this.#context?.close();
		this.#context = undefined;
	}

	/** Kills the browser as a power cut would; what it has kept on disk stays in the profile. */
	async killBrowser(): Promise<void> {
		const context = this.context;
		const isGone = new Promise<void>((resolve) => context.once('close', () => resolve()));
		const page = context.pages()[0] ?? (await context.newPage());
		const debug = await context.newCDPSession(page);
		debug.send('Browser.crash').catch(() => undefined); // nobody is left to answer
		await isGone;
		this.#context = undefined;
	}

	/** A new window with the app in it. */
	async openApp(): Promise<Page> {
		const blank = this.context.pages().find((page) => page.url() === 'about:blank');
		const page = blank ?? (await this.context.newPage());
		await page.bringToFront(); // behind another page it would be drawn once a second
		await page.goto(this.address);
		return page;
	}

	/** A new window with the show open in it. */
	async openShow(): Promise<Page> {
		const page = await this.openApp();
		await page.getByRole('navigation', { name: 'Places' }).waitFor();
		return page;
	}

	/** Resolves when the whole app is kept on the device and answers for the page. */
	async isKept(page: Page): Promise<void> {
		await page.waitForFunction(async () => {
			const { active } = await navigator.serviceWorker.ready;
			return active?.state === 'activated' && navigator.serviceWorker.controller !== null;
		});
	}

	/** Switches the host off: the address answers no more. */
	async stopHost(): Promise<void> {
		this.#isServed = false;
		this.#wasOff = true;
		await this.#host.stop();
	}

	/** Switches the host on again at the same address, with another folder if one is given. */
	async startHost(folder = this.options.folder ?? builtApp): Promise<void> {
		this.#wasOff = true;
		if (this.#isServed) await this.#host.stop();
		const { under = '/', maxAge = 0, serve = serveFolder } = this.options;
		this.#host = await serve(folder, { under, maxAge, port: this.#host.port });
		this.#isServed = true;
	}

	/** The paths of every file in the folder that is served, the service worker left out. */
	async filesServed(): Promise<string[]> {
		const folder = this.options.folder ?? builtApp;
		const entries = await readdir(folder, { recursive: true, withFileTypes: true });
		return entries
			.filter((entry) => entry.isFile())
			.map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
			.filter((file) => file !== 'sw.js')
			.map((file) => new URL(file, this.address).pathname);
	}

	/** Says that problems like this are made on purpose: at the end there must be some, and no others. */
	expectProblems(like: RegExp): void {
		this.#expected = like;
	}

	/** Says that problems like this may come, by what the play does: whether they do is the browser's own business. */
	allowProblems(like: RegExp): void {
		this.#allowed = like;
	}

	/**
	 * Ends it all.
	 * @throws Error naming everything that must not have happened and did
	 */
	async strike(): Promise<void> {
		await this.closeBrowser();
		if (this.#isServed) await this.#host.stop();
		if (this.#profile !== undefined) await removeProfile(this.#profile);
		const unexpected = this.problems.filter(
			(problem) => !this.#expected?.test(problem) && !this.#allowed?.test(problem),
		);
		if (unexpected.length > 0) throw new Error(`went wrong in the browser:\n${unexpected.join('\n')}`);
		if (this.#expected && this.problems.length === 0) throw new Error(`no problem like ${this.#expected.source}`);
	}

	async #watch(context: BrowserContext): Promise<void> {
		context.on('request', (request) => {
			const url = request.url();
			if (!/^(data|blob|about):/.test(url) && new URL(url).origin !== this.#origin)
				this.problems.push(`a request to elsewhere: ${url}`);
		});
		context.on('console', (message) => {
			if (message.type() === 'error') this.#note('console', `${message.text()} (${message.location().url})`);
		});
		context.on('weberror', (error) => this.#note('error', error.error().stack ?? error.error().message));
		if (this.options.isPlanned === false) await context.addInitScript(planNothing);
		await context.addInitScript(() => {
			document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample }) =>
				console.error(`policy breached: ${violatedDirective} ${blockedURI} ${sample}`),
			);
		});
	}

	#note(where: string, what: string) {
		// With the host switched off the browser itself may say that it could not look for a newer version, or that a part
		// which was on its way broke off.
		const ofHost = /ERR_(CONNECTION_(REFUSED|RESET|CLOSED)|EMPTY_RESPONSE|CONTENT_LENGTH_MISMATCH)|fetching the script/;
		if (this.#wasOff && ofHost.test(what)) return;
		this.problems.push(`${where}: ${what}`);
	}
}

/** Sets a stage, plays on it and strikes it. Fails if the play fails or if anything went wrong in the browser. */
export async function onStage(options: StageOptions, play: (stage: Stage) => Promise<void>): Promise<void> {
	const stage = await Stage.set(options);
	try {
		await play(stage);
	} catch (cause) {
		const problems = [...stage.problems];
		await stage.strike().catch(() => undefined); // the play's own failure is what is told
		if (problems.length > 0) throw new Error(`and in the browser: ${problems.join('\n')}`, { cause });
		throw cause;
	}
	await stage.strike();
}
