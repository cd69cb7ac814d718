import type { Page } from 'playwright-core';
import { newerVersion } from './newerBuild.ts';

/** How long a newer version has to take over by itself, in milliseconds: a second where the browser has nothing else to do. */
const soonMs = 3000;

/**
 * The page is of the newer build, which was asked to start. Where a page needs a file just as the older service worker is
 * stopped for it, Chromium starts the older one again and waits until it has been at rest for half a minute. It never counts
 * as at rest while it is debugged, as it is here: then it is stopped, which the browser would do by itself.
 */
export async function isNewer(page: Page): Promise<void> {
	const isThere = page.locator(`meta[name=version][content="${newerVersion}"]`).waitFor({ state: 'attached' });
	const isLate = new Promise<boolean>((resolve) => setTimeout(resolve, soonMs, true));
	if (await Promise.race([isThere.then(() => false), isLate])) await stopWorkers(page);
	await isThere;
}

async function stopWorkers(page: Page): Promise<void> {
	const debug = await page.context().newCDPSession(page);
	await debug.send('ServiceWorker.enable');
	await debug.send('ServiceWorker.stopAllWorkers');
	await debug.detach();
}
