import type { Page } from 'playwright-core';
import { openFirstShow } from '../harness/openShow.ts';
import { someOfExample } from '../harness/someOfExample.ts';

/** Prints of the usual mount. */
const numbers = [1, 2, 3, 5, 6, 7];
const settings = ['unit', 'ruler', 'sizes', 'mountSize', 'border', 'leastBorder', 'bottomWeight', 'overlap', 'papers'];

/** How many prints the show of the bench has. */
export const benchPrints = numbers.length;

/**
 * Opens some prints of the example in an app that has just been opened for the first time.
 * @param hasBoards whether they have boards to be cut from, and so sheets that are planned. Default false
 */
export const openBenchShow = (page: Page, hasBoards = false): Promise<void> =>
	openFirstShow(page, someOfExample(numbers, [...settings, ...(hasBoards ? ['boards'] : [])]));
