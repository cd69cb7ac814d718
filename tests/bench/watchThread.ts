import type { Browser, Page } from 'playwright-core';

/** The longest that a page's thread did nothing else: by the clock, and in processor time of its own, which a busy machine does not lengthen. */
export interface Busy {
	readonly wallMs: number;
	readonly threadMs: number;
}

/** What the browser writes down of a task; times in microseconds. */
interface Traced {
	readonly name: string;
	readonly pid: number;
	readonly tid: number;
	readonly dur?: number;
	readonly tdur?: number;
}

const own = 'which thread it is';

/** Watches what a page's thread does. @returns ends that, and gives the longest that it was busy */
export async function watchThread(browser: Browser, page: Page): Promise<() => Promise<Busy>> {
	await browser.startTracing(page, { categories: ['toplevel', 'blink.user_timing'] });
	await page.evaluate((name) => void performance.mark(name), own);
	return async () => {
		const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: Traced[] };
		const mark = traceEvents.find(({ name }) => name === own);
		const tasks = traceEvents.filter(
			({ name, pid, tid }) => pid === mark?.pid && tid === mark.tid && name.endsWith('RunTask'),
		);
		if (tasks.length === 0) throw new Error('nothing was written down of the page’s thread');
		const most = (of: (task: Traced) => number) => tasks.reduce((longest, task) => Math.max(longest, of(task)), 0);
		return { wallMs: most(({ dur = 0 }) => dur) / 1000, threadMs: most(({ tdur = 0 }) => tdur) / 1000 };
	};
}
