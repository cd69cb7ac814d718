import { expect, onTestFinished, test, vi } from 'vitest';
import { keepAwake } from '../../../src/app/keepAwake.ts';

/** A page with a screen that can be kept awake, or refuses to be. */
function seenPage() {
	const page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
	const screen = { isRefusing: false, asked: 0, held: [] as { released: boolean }[] };
	const request = async () => {
		screen.asked++;
		await Promise.resolve();
		if (screen.isRefusing) throw new DOMException('', 'NotAllowedError');
		const lock = { released: false, release: () => Promise.resolve(void (lock.released = true)) };
		screen.held.push(lock);
		return lock;
	};
	vi.stubGlobal('document', page);
	vi.stubGlobal('navigator', { wakeLock: { request } });
	onTestFinished(() => void vi.unstubAllGlobals());
	const happens = async (name: string) => {
		page.dispatchEvent(new Event(name));
		await settled();
	};
	return { page, screen, happens };
}
const settled = () => new Promise((resolve) => setTimeout(resolve));
const awake = (held: readonly { released: boolean }[]) => held.filter(({ released }) => !released).length;

test.each(['pointerup', 'keydown'])(
	'a screen that refuses until it is touched is asked again at the next %s',
	async (act) => {
		const { screen, happens } = seenPage();
		screen.isRefusing = true;
		const stop = keepAwake();
		await settled();
		await happens(act);
		expect([screen.asked, awake(screen.held)]).toEqual([2, 0]);
		screen.isRefusing = false;
		await happens(act);
		expect([screen.asked, awake(screen.held)]).toEqual([3, 1]);
		// What is held is not asked for once more at each touch.
		await happens(act);
		expect(screen.asked).toBe(3);
		stop();
		expect(awake(screen.held)).toBe(0);
		await happens(act);
		expect(screen.asked).toBe(3);
	},
);

test('a touch after the end, or while the page is hidden, asks for nothing', async () => {
	const { page, screen, happens } = seenPage();
	screen.isRefusing = true;
	const stop = keepAwake();
	await settled();
	page.visibilityState = 'hidden';
	await happens('pointerup');
	expect(screen.asked).toBe(1);
	stop();
	page.visibilityState = 'visible';
	await happens('pointerup');
	expect(screen.asked).toBe(1);
});

test('a page that is hidden and seen again while it asks holds the screen once', async () => {
	const { page, screen, happens } = seenPage();
	const stop = keepAwake();
	page.dispatchEvent(new Event('visibilitychange'));
	await settled();
	expect(awake(screen.held)).toBe(1);
	// The platform takes it away when the page is hidden.
	screen.held[0]!.released = true;
	await happens('visibilitychange');
	expect(awake(screen.held)).toBe(1);
	stop();
	expect(awake(screen.held)).toBe(0);
});
