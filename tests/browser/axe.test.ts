import { describe, expect, test } from 'vitest';
import { axeProblems } from './harness/axe.ts';
import { screens } from './harness/screens.ts';
import { landscapeTablet, onStage, phone, uprightTablet } from './harness/stage.ts';

describe.each([
	{ size: 'a tablet held level', viewport: landscapeTablet, colorScheme: 'light' },
	{ size: 'a tablet held upright, in the dark', viewport: uprightTablet, colorScheme: 'dark' },
	{ size: 'a phone', viewport: phone, colorScheme: 'light' },
] as const)('axe, on $size', ({ viewport, colorScheme }) => {
	const shown = screens.filter(({ needsGrid }) => !needsGrid || viewport !== phone);
	test.each(shown)('finds nothing on: $name', ({ open }) =>
		onStage({ viewport, colorScheme, hasTouch: true, reducedMotion: 'reduce' }, async (stage) => {
			const page = await stage.openShow();
			await open(page);
			expect(await axeProblems(page)).toEqual([]);
		}),
	);
});
