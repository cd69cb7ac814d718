import { expect, test } from 'vitest';
import { axeProblems } from './harness/axe.ts';
import { screens } from './harness/screens.ts';
import { smallTargets } from './harness/smallTargets.ts';
import { landscapeTablet, phone, uprightTablet } from './harness/stage.ts';
import { oneStage } from './screens/oneStage.ts';

const play = oneStage({ viewport: landscapeTablet, hasTouch: true, reducedMotion: 'reduce' });

test.each(screens)(
	'axe finds nothing on: $name, held level, and upright in the dark; a finger hits everything',
	({ open }) =>
		play(async (page) => {
			await open(page);
			expect(await axeProblems(page), 'a tablet held level').toEqual([]);
			expect(await smallTargets(page)).toEqual([]);
			await page.emulateMedia({ colorScheme: 'dark' });
			await page.setViewportSize(uprightTablet);
			expect(await axeProblems(page), 'held upright, in the dark').toEqual([]);
		}),
);

const playOnPhone = oneStage({ viewport: phone, hasTouch: true, reducedMotion: 'reduce' });

test.each(screens.filter(({ needsGrid }) => !needsGrid))(
	'axe finds nothing on a phone on: $name; a finger hits everything',
	({ open }) =>
		playOnPhone(async (page) => {
			await open(page);
			expect(await axeProblems(page)).toEqual([]);
			expect(await smallTargets(page)).toEqual([]);
		}),
);
