/** Resolves once the page has nothing else to do. @param options how long that may take at most */
export const idle = (options?: IdleRequestOptions): Promise<void> =>
	new Promise((resolve) => {
		// Not every browser says when it is idle.
		if (typeof requestIdleCallback === 'undefined') setTimeout(resolve);
		else requestIdleCallback(() => resolve(), options);
	});
