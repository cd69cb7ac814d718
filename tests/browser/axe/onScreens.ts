import { expect, test } from 'vitest';
import { axeProblems } from '../harness/axe.ts';
import type { Screen } from '../harness/screens.ts';
import { smallTargets } from '../harness/smallTargets.ts';
import { landscapeTablet, phone, uprightTablet } from '../harness/stage.ts';
import { oneStage } from '../screens/oneStage.ts';

/** Tests that axe finds nothing on some screens, and that a finger hits whatever can be pressed there. */
export function onScreens(shown: readonly Screen[]): void {
	const play = oneStage({ viewport: landscapeTablet, hasTouch: true, reducedMotion: 'reduce' });

	test.each(shown)(
		'axe finds nothing on: $name, held level, upright in the dark, and on a phone; a finger hits everything',
		({ open, needsGrid = false }) =>
			play(async (page) => {
				await open(page);
				expect(await axeProblems(page), 'a tablet held level').toEqual([]);
				expect(await smallTargets(page), 'a tablet held level').toEqual([]);
				await page.emulateMedia({ colorScheme: 'dark' });
				await page.setViewportSize(uprightTablet);
				expect(await axeProblems(page), 'held upright, in the dark').toEqual([]);
				if (needsGrid) return;
				await page.emulateMedia({ colorScheme: 'light' });
				await page.setViewportSize(phone);
				expect(await axeProblems(page), 'a phone').toEqual([]);
				expect(await smallTargets(page), 'a phone').toEqual([]);
			}),
	);
}
