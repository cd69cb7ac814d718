import type { Page } from 'playwright-core';
import { openFirstShow } from '../harness/openShow.ts';
import { someOfExample } from '../harness/someOfExample.ts';

/** Prints of the usual mount, without boards, which take long to plan. */
const benchShow = someOfExample(
	[1, 2, 3, 5, 6, 7],
	['unit', 'ruler', 'sizes', 'mountSize', 'border', 'leastBorder', 'bottomWeight', 'overlap', 'papers'],
);

/** Opens some prints of the example in an app that has just been opened for the first time. */
export const openBenchShow = (page: Page): Promise<void> => openFirstShow(page, benchShow);
