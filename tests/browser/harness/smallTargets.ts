import type { Page } from 'playwright-core';

/** What can be tapped on the page and is under 44 px on a side, with its size; empty where all is large enough. */
export const smallTargets = (page: Page): Promise<string[]> =>
	page.evaluate(() =>
		[
			...document.querySelectorAll<HTMLElement>(
				'button, a, select, input:not([type=radio], [type=checkbox]), label:has(> input), [role=menuitem], [data-row]',
			),
		]
			.filter((each) => each.closest('[role=grid] .head') === null)
			.map((each) => ({ each, box: each.getBoundingClientRect() }))
			.filter(({ box }) => box.width > 1 && (box.height < 43.5 || box.width < 43.5))
			.map(({ each, box }) => `${each.outerHTML.slice(0, 90)} is ${box.width} x ${box.height}`),
	);
