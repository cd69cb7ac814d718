import { expect, test } from 'vitest';
import { allOr, isSoak } from '../../soak.ts';
import { axeProblems } from '../harness/axe.ts';
import { enlargeText, lostText } from '../harness/lostText.ts';
import { resize } from '../harness/resize.ts';
import { openExample, type Screen } from '../harness/screens.ts';
import { ofEveryKind } from '../harness/someOfExample.ts';
import { smallTargets } from '../harness/smallTargets.ts';
import { landscapeTablet, phone, uprightTablet } from '../harness/stage.ts';
import { oneStage } from '../screens/oneStage.ts';

/** All rows of the grid but the head and the first three: these stand for the others, which are alike. */
const furtherRows = `[role=grid] [aria-rowindex]${[1, 2, 3, 4].map((row) => `:not([aria-rowindex="${row}"])`).join('')}`;

const narrowestPhone = { width: 320, height: 640 };
/** What is left of the landscape tablet's page at a zoom of 200 %. */
const enlargedTablet = { width: landscapeTablet.width / 2, height: landscapeTablet.height / 2 };

/**
 * Tests that axe finds nothing on some screens, and that a finger hits whatever can be pressed there: in `npm test` each in one
 * form, by turns on a tablet held level or on a phone in the dark, since nothing else takes longer; in the soak in all.
 */
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
		({ name, isTablets, onlyLooks, open, leave, needsGrid = false, goesOn }) =>
			play(
				async (page) => {
					const isAll = isSoak && name === 'prints'; // in `npm test` further rows are looked at by `grid/states.test.ts`
					const options = { without: isAll ? undefined : furtherRows, hasContrast: true };
					if (!isSoak && onlyLooks === 'at the example' && !goesOn) await openExample(page, ofEveryKind);
					await open(page);
					if (isSoak || isTablets) {
						expect(await axeProblems(page, options), 'a tablet held level').toEqual([]);
						expect(await smallTargets(page), 'a tablet held level').toEqual([]);
						await enlargeText(page, 2);
						await expect.poll(() => lostText(page), { message: 'words twice as large' }).toEqual([]);
						await enlargeText(page, 1); // for what comes next in this page
					}
					if (isSoak || !isTablets) {
						await page.emulateMedia({ colorScheme: 'dark' });
						if (isSoak || needsGrid) {
							await resize(page, uprightTablet);
							expect(await smallTargets(page), 'a tablet held upright').toEqual([]);
						}
						if (!needsGrid) await resize(page, phone);
						const form = needsGrid ? 'held upright, in the dark' : 'a phone, in the dark';
						expect(await axeProblems(page, options), form).toEqual([]);
						if (!needsGrid) {
							expect(await smallTargets(page), 'a phone').toEqual([]);
							for (const [what, viewport] of allOr(
								[
									['the narrowest phone', narrowestPhone],
									['the tablet, enlarged to 200 %', enlargedTablet],
								] as const,
								[['the narrowest phone', narrowestPhone]] as const,
							)) {
								await resize(page, viewport);
								await expect.poll(() => lostText(page), { message: what }).toEqual([]);
							}
						}
					}
					await resize(page, landscapeTablet); // as it was opened
					await leave?.(page);
				},
				{ goesOn },
			),
	);
}
