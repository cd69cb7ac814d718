/** Tries something again by itself. */
export interface TryAgain {
	/** It has failed: it is tried again after a while. */
	failed(): void;
	/** It has worked. */
	worked(): void;
}

/** How long is waited after the first failure, and at most, in milliseconds. */
const wait = { first: 2_000, most: 30_000 };

/** Tries something again each time it has failed: soon at first, then less often. */
export function tryAgain(act: () => void): TryAgain {
	let waitMs = wait.first;
	let timer: ReturnType<typeof setTimeout> | undefined;
	return {
		failed() {
			clearTimeout(timer);
			timer = setTimeout(act, waitMs);
			waitMs = Math.min(2 * waitMs, wait.most);
		},
		worked() {
			clearTimeout(timer);
			waitMs = wait.first;
		},
	};
}
