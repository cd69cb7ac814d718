/**
 * Keeps the screen from going dark for as long as the page is seen, where the platform can.
 * @returns lets it go dark again
 */
export function keepAwake(): () => void {
	if (!('wakeLock' in navigator)) return () => undefined;
	let lock: WakeLockSentinel | undefined;
	let isOver = false;
	// The platform takes the lock away when the page is hidden, and refuses it on a low battery.
	async function ask(): Promise<void> {
		if (isOver || document.visibilityState !== 'visible') return;
		const got = await navigator.wakeLock.request('screen').catch(() => undefined);
		if (isOver) void got?.release();
		else lock = got;
	}
	const onvisibilitychange = () => void ask();
	document.addEventListener('visibilitychange', onvisibilitychange);
	void ask();
	return () => {
		isOver = true;
		document.removeEventListener('visibilitychange', onvisibilitychange);
		void lock?.release();
	};
}
