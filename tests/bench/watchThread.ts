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
	readonly ts: number;
	readonly dur?: number;
	readonly tdur?: number;
	readonly args?: { readonly chrome_mojo_event_info?: { readonly mojo_interface_tag?: string } };
}

const isOfDebugger = ({ args }: Traced): boolean =>
	args?.chrome_mojo_event_info?.mojo_interface_tag === 'blink.mojom.DevToolsSession';

const own = 'which thread it is';

/**
 * Watches what a page's thread does. Of what the debugger does there in a person's stead, such as choosing 200 files one
 * after the other, only what the page makes of it counts. @returns ends that, and gives the longest that it was busy
 */
export async function watchThread(browser: Browser, page: Page): Promise<() => Promise<Busy>> {
	await browser.startTracing(page, { categories: ['toplevel', 'blink.user_timing', 'devtools.timeline'] });
	await page.evaluate((name) => void performance.mark(name), own);
	return async () => {
		const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: Traced[] };
		const mark = traceEvents.find(({ name }) => name === own);
		const events = traceEvents.filter(({ pid, tid }) => pid === mark?.pid && tid === mark.tid);
		const isIn = (one: Traced, other: Traced) =>
			one.ts >= other.ts && one.ts + (one.dur ?? 0) <= other.ts + (other.dur ?? 0);
		const ofDebugger = events.filter(isOfDebugger);
		const handled = events.filter(({ name }) => name === 'EventDispatch');
		const tasks = events
			.filter(({ name }) => name.endsWith('RunTask'))
			.flatMap((task) =>
				ofDebugger.some((message) => isIn(message, task)) ? handled.filter((event) => isIn(event, task)) : [task],
			);
		if (tasks.length === 0) throw new Error('nothing was written down of the page’s thread');
		const most = (of: (task: Traced) => number) => tasks.reduce((longest, task) => Math.max(longest, of(task)), 0);
		return { wallMs: most(({ dur = 0 }) => dur) / 1000, threadMs: most(({ tdur = 0 }) => tdur) / 1000 };
	};
}
