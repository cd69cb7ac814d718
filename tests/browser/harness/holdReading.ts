import type { Page } from 'playwright-core';

/**
 * Holds back what the worker says that reads a list, after its first word: until it is let, the import is under way.
 * @returns what lets it go on
 */
export async function holdReading(page: Page): Promise<() => Promise<void>> {
	await page.evaluate(() => {
		const letting = Promise.withResolvers<void>();
		Object.assign(window, { letRead: letting.resolve });
		const handler = Object.getOwnPropertyDescriptor(Worker.prototype, 'onmessage')!;
		let hasBegun = false;
		Object.defineProperty(Worker.prototype, 'onmessage', {
			...handler,
			set(this: Worker, listen: (event: MessageEvent) => void) {
				handler.set!.call(this, (event: MessageEvent<{ news?: unknown }>) => {
					if (hasBegun) void letting.promise.then(() => listen(event));
					else listen(event);
					hasBegun ||= event.data.news !== undefined;
				});
			},
		});
	});
	return () => page.evaluate(() => (window as unknown as { letRead: () => void }).letRead());
}
