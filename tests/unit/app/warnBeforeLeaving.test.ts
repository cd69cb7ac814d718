import { expect, onTestFinished, test, vi } from 'vitest';
import { warnBeforeLeaving } from '../../../src/app/warnBeforeLeaving.ts';

test('the browser asks only while something is not on disk, and not after it was stopped', () => {
	const page = new EventTarget();
	vi.stubGlobal('window', page);
	onTestFinished(() => void vi.unstubAllGlobals());
	let isSaved = true;
	const stop = warnBeforeLeaving(() => isSaved);
	const isAsked = () => !page.dispatchEvent(new Event('beforeunload', { cancelable: true }));
	expect(isAsked()).toBe(false);
	isSaved = false;
	expect(isAsked()).toBe(true);
	stop();
	expect(isAsked()).toBe(false);
});
