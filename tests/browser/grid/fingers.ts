import type { CDPSession, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Stage } from '../harness/stage.ts';
import { painted } from '../harness/resize.ts';

/** A finger on the screen, as the browser's debugger moves it: what it does is what a touch screen sends. */
export interface Finger {
	readonly down: (x: number, y: number) => Promise<void>;
	readonly to: (x: number, y: number) => Promise<void>;
	readonly up: () => Promise<void>;
	/** Goes down on one thing and is drawn to the middle of another. */
	readonly draw: (from: Locator, to: Locator) => Promise<void>;
	/** Goes down on something and stays there until something else is to be seen. */
	readonly hold: (on: Locator, until: Locator) => Promise<void>;
	/** Draws two fingers apart around a point. */
	readonly pinch: (x: number, y: number) => Promise<void>;
}

/** A finger for a page. */
export async function fingerOn(page: Page, stage: Stage): Promise<Finger> {
	const debug: CDPSession = await stage.context.newCDPSession(page);
	const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: { x: number; y: number; id?: number }[]) =>
		debug.send('Input.dispatchTouchEvent', { type, touchPoints });
	const middle = async (of: Locator) => {
		const box = (await of.boundingBox())!;
		return [box.x + box.width / 2, box.y + box.height / 2] as const;
	};
	const down = async (x: number, y: number) => void (await send('touchStart', [{ x, y }]));
	const to = async (x: number, y: number) => void (await send('touchMove', [{ x, y }]));
	const up = async () => void (await send('touchEnd', []));
	return {
		down,
		to,
		up,
		draw: async (from, target) => {
			// Where a finger scrolls and where it draws the browser knows from what it painted last.
			await painted(page);
			const [[x, y], [endX, endY]] = [await middle(from), await middle(target)];
			await down(x, y);
			for (const share of [0.3, 0.6, 0.9, 1]) await to(x + (endX - x) * share, y + (endY - y) * share);
			await up();
			await page.waitForTimeout(350); // a touch sooner after it the browser takes for part of it
		},
		hold: async (on, until) => {
			await down(...(await middle(on)));
			await until.waitFor();
			await up();
		},
		pinch: async (x, y) => {
			const apart = (by: number) => [-by, by].map((to, id) => ({ x: x + to, y, id }));
			await send('touchStart', apart(30));
			for (const by of [50, 70, 90, 110]) await send('touchMove', apart(by));
			await up();
		},
	};
}

/** Makes the page believe that an on-screen keyboard covers all but so many pixels of its height. */
export const coverAllBut = (page: Page, height: number): Promise<void> =>
	page.evaluate((seen) => {
		// A headless browser has no keyboard; what one does to a page is this: what is seen shrinks, the page does not.
		Object.defineProperty(window.visualViewport!, 'height', { configurable: true, get: () => seen });
		window.visualViewport!.dispatchEvent(new Event('resize'));
	}, height);

/** Takes that keyboard away again, for the play that goes on in the page. */
export const uncover = (page: Page): Promise<void> =>
	page.evaluate(() => {
		Reflect.deleteProperty(window.visualViewport!, 'height');
		window.visualViewport!.dispatchEvent(new Event('resize'));
	});

/**
 * Taps until something has come of it: a tap soon after a finger was drawn, or while the page is laid out again, can go
 * beside what it was meant for, as under a real finger.
 */
export const tapUntil = (what: Locator, isDone: () => Promise<boolean>): Promise<void> =>
	expect
		.poll(async () => {
			if (await isDone()) return true;
			await what.tap();
			return isDone();
		})
		.toBe(true);
