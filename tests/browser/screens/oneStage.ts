import type { Page } from 'playwright-core';
import { beforeAll } from 'vitest';
import { isSoak } from '../../soak.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { resize } from '../harness/resize.ts';
import { landscapeTablet, Stage, type StageOptions } from '../harness/stage.ts';

/** How a window is to be for a play. */
type WindowOptions = Pick<
	StageOptions,
	'viewport' | 'colorScheme' | 'hasTouch' | 'reducedMotion' | 'isSharp' | 'isPlanned'
>;

/** How long the window uses the files of the app that it has, in seconds: longer than the plays take. */
const aDay = 24 * 60 * 60;

/** The stages of this worker, for a mouse and for fingers, sharp or not, with plans or not. The files share them; they end with the process. */
const stages = new Map<string, Promise<Stage>>();

/** How a play begins. */
interface Beginning {
	/** Whether it goes on in the page as the play of the file before left it, if that one went well. Default false: an empty show. */
	readonly goesOn?: boolean;
}

/** How the plays of a file begin. */
interface Beginnings extends WindowOptions {
	/**
	 * Whether all plays but the first begin with a new show in the page of the one before, which takes a fifth of a second less
	 * than to open a page: for those that only look at what happens in a show. Default false: in an empty window.
	 */
	readonly isInOnePage?: boolean;
}

/**
 * One window for the plays of all files, for a window takes longer to open than most plays last; the app is not kept
 * on the device there, which other plays look at, and its files are asked for once. Each play begins in it with an empty
 * show, as its file asked for it; what goes wrong in the browser fails the play in which it does. A play that leaves
 * something in the window which a new page would not take away (`addInitScript`, a listener) closes it.
 */
export function oneStage({ isInOnePage = false, ...options }: Beginnings = {}) {
	const { hasTouch = false, isSharp = false } = options;
	const isPlanned = isSoak || (options.isPlanned ?? true); // in the soak other plays look on while plans come
	const kind = `${hasTouch} ${isSharp} ${isPlanned}`;
	let stage: Stage | undefined;
	let left: Page | undefined; // where the last play of this file has left well
	beforeAll(async () => {
		const set = stages.get(kind) ?? Stage.set({ hasTouch, isSharp, isPlanned, isKept: false, maxAge: aDay });
		stages.set(kind, set);
		stage = await set;
	});
	return async (
		play: (page: Page, stage: Stage) => Promise<void>,
		{ goesOn = false }: Beginning = {},
	): Promise<void> => {
		if (!stage) throw new Error('the browser was not opened');
		const before = (goesOn || isInOnePage) && !left?.isClosed() ? left : undefined;
		left = undefined;
		const page = before ?? (await emptyWindow(stage, options));
		try {
			if (before) {
				await asAsked(page, options);
				if (!goesOn) await beginNewShow(page);
			} else {
				await page.goto(stage.address);
				await page.getByRole('navigation', { name: 'Places' }).waitFor();
			}
			await play(page, stage);
		} catch (cause) {
			await page.close(); // nobody knows what it has left there
			throw cause;
		}
		left = page;
		const problems = stage.problems.splice(0);
		if (problems.length > 0) throw new Error(`went wrong in the browser:\n${problems.join('\n')}`);
	};
}

/** The window, with nothing in it and nothing kept of what was. */
async function emptyWindow(stage: Stage, options: WindowOptions): Promise<Page> {
	const [page = await stage.context.newPage(), ...others] = stage.context.pages();
	for (const other of others) await other.close();
	if (page.url() !== 'about:blank') await page.evaluate(() => (sessionStorage.clear(), localStorage.clear()));
	await page.goto('about:blank');
	await asAsked(page, options);
	const debug = await stage.context.newCDPSession(page);
	const origin = new URL(stage.address).origin;
	await debug.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb,cache_storage,local_storage' });
	await debug.detach();
	return page;
}

/** Gives the window the size and the look that a file asked for. */
async function asAsked(
	page: Page,
	{ viewport = landscapeTablet, colorScheme = 'light', reducedMotion = 'no-preference' }: WindowOptions,
): Promise<void> {
	await resize(page, viewport);
	await page.emulateMedia({ colorScheme, reducedMotion });
}

/** Begins a new show beside those that are there. */
async function beginNewShow(page: Page): Promise<void> {
	await page.keyboard.press('Escape'); // from a menu or a dialogue
	await goByAddress(page, 'shows');
	await page.locator('main .top').getByRole('button', { name: 'New show', exact: true }).click();
	await page.getByRole('button', { name: 'Start typing' }).waitFor();
}
