import { registerSW } from 'virtual:pwa-register';
import { Update } from './update.svelte.ts';

/**
 * Keeps the app on this device and watches for its next version.
 * @param whenSaved resolves when everything typed is on disk
 */
export function watchForUpdate(whenSaved: () => Promise<void>): Update {
	const beforeReload = async () => {
		if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
		await whenSaved();
	};
	const update: Update = new Update(
		() => start(),
		beforeReload,
		() => location.reload(),
	);
	if (!('serviceWorker' in navigator)) return update;
	let wasServed = navigator.serviceWorker.controller !== null;
	navigator.serviceWorker.addEventListener('controllerchange', () => {
		if (wasServed) update.wasReplaced();
		wasServed = true; // the first time is the first visit: this very version has been kept
	});
	const start = registerSW({
		immediate: true,
		onNeedRefresh: () => update.isWaiting(),
		onNeedReload: () => undefined, // `controllerchange` above also hears of it in the window of the first visit
		onRegisteredSW: (_address, registration) => {
			// A tablet keeps the page open for days: ask when the app comes to the front, not only when it is loaded.
			document.addEventListener('visibilitychange', () => {
				if (document.visibilityState === 'visible' && navigator.onLine) registration?.update().catch(() => undefined); // no connection: next time
			});
		},
		onRegisterError: (cause) => console.warn('The app could not be kept on this device:', cause),
	});
	return update;
}
