import { describe, expect, test } from 'vitest';
import { axeProblems } from './harness/axe.ts';
import { screens } from './harness/screens.ts';
import { landscapeTablet, phone, uprightTablet } from './harness/stage.ts';
import { oneStage } from './screens/oneStage.ts';

describe.each([
	{ size: 'a tablet held level', viewport: landscapeTablet, colorScheme: 'light' },
	{ size: 'a tablet held upright, in the dark', viewport: uprightTablet, colorScheme: 'dark' },
	{ size: 'a phone', viewport: phone, colorScheme: 'light' },
] as const)('axe, on $size', ({ viewport, colorScheme }) => {
	const play = oneStage({ viewport, colorScheme, hasTouch: true, reducedMotion: 'reduce' });
	const shown = screens.filter(({ needsGrid }) => !needsGrid || viewport !== phone);

	test.each(shown)('finds nothing on: $name', ({ open }) =>
		play(async (page) => {
			await open(page);
			expect(await axeProblems(page)).toEqual([]);
		}),
	);
});
