/** Resolves once the page has nothing else to do. */
export const idle = (): Promise<void> =>
	new Promise((resolve) => {
		// Not every browser says when it is idle.
		if (typeof requestIdleCallback === 'undefined') setTimeout(resolve);
		else requestIdleCallback(() => resolve());
	});
