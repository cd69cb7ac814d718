import { beforeEach, expect, onTestFinished, test, vi } from 'vitest';

/** What the browser is asked, by a page that has just been loaded. */
async function freshPage(persist?: () => Promise<boolean>) {
	vi.resetModules();
	vi.stubGlobal('navigator', persist ? { storage: { persist } } : {});
	onTestFinished(() => void vi.unstubAllGlobals());
	return (await import('../../../src/app/askToPersist.ts')).askToPersist;
}

beforeEach(() => void vi.restoreAllMocks());

test('the browser is asked once, however often something is kept', async () => {
	const persist = vi.fn(() => Promise.resolve(false));
	const askToPersist = await freshPage(persist);
	expect(persist).not.toHaveBeenCalled();
	askToPersist();
	askToPersist();
	expect(persist).toHaveBeenCalledTimes(1);
});

test('a browser that refuses, or has nothing to ask, changes nothing', async () => {
	const askToPersist = await freshPage(() => Promise.reject(new TypeError('not here')));
	expect(askToPersist).not.toThrow();
	const askOldBrowser = await freshPage();
	expect(askOldBrowser).not.toThrow();
});
