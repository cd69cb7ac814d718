/**
 * Keeps the screen from going dark for as long as the page is seen, where the platform can.
 * @returns lets it go dark again
 */
export function keepAwake(): () => void {
	if (!('wakeLock' in navigator)) return () => undefined;
	let lock: WakeLockSentinel | undefined;
	const over = new AbortController();
	const isWanted = () => !over.signal.aborted && document.visibilityState === 'visible';
	// The platform takes the lock away when the page is hidden, and refuses it on a low battery.
	async function ask(): Promise<void> {
		if (!isWanted()) return;
		const got = await navigator.wakeLock.request('screen').catch(() => undefined);
		if (isWanted()) lock = got;
		else void got?.release();
	}
	document.addEventListener('visibilitychange', () => void ask(), { signal: over.signal });
	void ask();
	return () => {
		over.abort();
		void lock?.release();
	};
}
