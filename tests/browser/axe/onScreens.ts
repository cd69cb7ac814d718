import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { isSoak } from '../../soak.ts';
import { axeProblems } from '../harness/axe.ts';
import { enlargeText, lostText } from '../harness/lostText.ts';
import type { Screen } from '../harness/screens.ts';
import { smallTargets } from '../harness/smallTargets.ts';
import { landscapeTablet, phone, uprightTablet } from '../harness/stage.ts';
import { oneStage } from '../screens/oneStage.ts';

/** All rows of the grid but the head and the first three: behind a panel these stand for the others, which are alike. */
const furtherRows = `[role=grid] [aria-rowindex]${[1, 2, 3, 4].map((row) => `:not([aria-rowindex="${row}"])`).join('')}`;

const narrowestPhone = { width: 320, height: 640 };
/** What is left of the landscape tablet's page at a zoom of 200 %. */
const enlargedTablet = { width: landscapeTablet.width / 2, height: landscapeTablet.height / 2 };

/**
 * What axe finds in one form of a screen: in `npm test` it looks at a screen in one form only, by turns, since it takes longer
 * than all else here. The colours of both schemes are held by the test of the tokens.
 */
const foundIn = async (page: Page, isLookedAt: boolean, without: string | undefined): Promise<string[]> =>
	isSoak || isLookedAt ? axeProblems(page, { without }) : [];

/** Tests that axe finds nothing on some screens, and that a finger hits whatever can be pressed there. */
export function onScreens(shown: readonly Screen[]): void {
	const play = oneStage({ viewport: landscapeTablet, hasTouch: true, reducedMotion: 'reduce' });
	// What only looks at a show shares a page: to open one took longer than to look at it.
	const sorted = (['at the example', 'at the paper show', undefined] as const).flatMap((what) =>
		shown.filter(({ onlyLooks }) => onlyLooks === what),
	);

	test.each(
		sorted.map((screen, place) => ({
			...screen,
			isTablets: place % 2 === 0,
			goesOn: screen.onlyLooks !== undefined && screen.onlyLooks === sorted[place - 1]?.onlyLooks,
		})),
	)(
		'axe finds nothing on: $name, on a tablet held level or on a phone in the dark; a finger hits everything; no words are lost on a small page or where they are large',
		({ name, isTablets, open, needsGrid = false, goesOn }) =>
			play(
				async (page) => {
					const without = name === 'prints' ? undefined : furtherRows;
					await open(page);
					expect(await foundIn(page, isTablets, without), 'a tablet held level').toEqual([]);
					expect(await smallTargets(page), 'a tablet held level').toEqual([]);
					await page.setViewportSize(uprightTablet);
					expect(await smallTargets(page), 'a tablet held upright').toEqual([]);
					await page.emulateMedia({ colorScheme: 'dark' });
					if (!needsGrid) await page.setViewportSize(phone);
					expect(
						await foundIn(page, !isTablets, without),
						needsGrid ? 'held upright, in the dark' : 'a phone, in the dark',
					).toEqual([]);
					if (!needsGrid) {
						expect(await smallTargets(page), 'a phone').toEqual([]);
						for (const [what, viewport] of [
							['the narrowest phone', narrowestPhone],
							['the tablet, enlarged to 200 %', enlargedTablet],
						] as const) {
							await page.setViewportSize(viewport);
							await expect.poll(() => lostText(page), { message: what }).toEqual([]);
						}
					}
					await page.setViewportSize(landscapeTablet);
					await enlargeText(page, 2);
					await expect.poll(() => lostText(page), { message: 'words twice as large' }).toEqual([]);
					await enlargeText(page, 1); // for the screen that comes next in this page
				},
				{ goesOn },
			),
	);
}
