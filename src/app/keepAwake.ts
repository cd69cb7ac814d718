/**
 * Keeps the screen from going dark for as long as the page is seen, where the platform can.
 * @returns lets it go dark again
 */
export function keepAwake(): () => void {
	if (!('wakeLock' in navigator)) return () => undefined;
	let lock: WakeLockSentinel | undefined;
	let isAsking = false;
	const over = new AbortController();
	const isWanted = () => !over.signal.aborted && document.visibilityState === 'visible';
	// The platform releases the lock when the page is hidden, refuses it on a low battery, and some refuse it until the
	// page is touched: so each touch asks again while it is not held.
	async function ask(): Promise<void> {
		if (isAsking || !isWanted() || (lock && !lock.released)) return;
		isAsking = true;
		const got = await navigator.wakeLock.request('screen').catch(() => undefined);
		isAsking = false;
		if (isWanted()) lock = got;
		else void got?.release();
	}
	const asks = { capture: true, passive: true, signal: over.signal };
	for (const act of ['visibilitychange', 'pointerup', 'keydown'])
		document.addEventListener(act, () => void ask(), asks);
	void ask();
	return () => {
		over.abort();
		void lock?.release();
	};
}
