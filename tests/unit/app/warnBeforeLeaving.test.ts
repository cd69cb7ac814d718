import { expect, onTestFinished, test, vi } from 'vitest';
import { warnBeforeLeaving } from '../../../src/app/warnBeforeLeaving.ts';

test('the browser asks only while something is not on disk, and not after it was stopped', () => {
	const page = new EventTarget();
	vi.stubGlobal('window', page);
	onTestFinished(() => void vi.unstubAllGlobals());
	vi.stubGlobal('document', { activeElement: null });
	let isSaved = true;
	const stop = warnBeforeLeaving(() => isSaved);
	const isAsked = () => !page.dispatchEvent(new Event('beforeunload', { cancelable: true }));
	expect(isAsked()).toBe(false);
	isSaved = false;
	expect(isAsked()).toBe(true);
	stop();
	expect(isAsked()).toBe(false);
});

test.each([
	['input', true],
	['button', false],
])('what is typed in an %s is entered before it is asked whether all is saved', (kind, isAsked) => {
	const page = new EventTarget();
	let isSaved = true;
	const activeElement = { matches: (kinds: string) => kinds.split(', ').includes(kind), blur: () => (isSaved = false) };
	vi.stubGlobal('window', page);
	vi.stubGlobal('document', { activeElement });
	onTestFinished(() => void vi.unstubAllGlobals());
	onTestFinished(warnBeforeLeaving(() => isSaved));
	expect(page.dispatchEvent(new Event('beforeunload', { cancelable: true }))).toBe(!isAsked);
});
