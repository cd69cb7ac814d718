import { lockOfPage } from '../serviceWorker/protocol.ts';
import { askIfWhole, startWaiting, whenSettled } from './askServiceWorker.ts';
import { Offline } from './offline.svelte.ts';
import { Update } from './update.svelte.ts';

/**
 * Keeps the app on this device and watches for its next version.
 * @param script the address of the script with which the page was started, which tells one version from another
 * @param whenSaved resolves when everything typed is on disk
 */
export function keepApp(script: string, whenSaved: () => Promise<void>): { update: Update; offline: Offline } {
	const beforeReload = async () => {
		if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
		await whenSaved();
	};
	const reload = () => location.reload();
	let registered: ServiceWorkerRegistration | undefined;
	let wasServed = false;
	const start = () => {
		wasServed = true; // by its host, if not by the service worker
		if (!registered || !startWaiting(registered)) reload(); // another window has started it in the meantime
		return Promise.resolve();
	};
	const update = new Update(start, beforeReload, reload);
	const { serviceWorker } = navigator as Partial<Navigator>;
	if (!serviceWorker || import.meta.env.DEV) return { update, offline: new Offline(undefined) };

	const untilClosed = () => new Promise(() => undefined);
	navigator.locks.request(lockOfPage(script), { mode: 'shared' }, untilClosed).catch(() => undefined);
	const watched = new WeakSet<ServiceWorkerRegistration>();
	const offline = new Offline(async () => {
		// To register is to wait for every update that is being tried; what is in charge need not wait to be asked.
		const known = await serviceWorker.getRegistration();
		const registration = known?.active ? known : await serviceWorker.register('./sw.js', { updateViaCache: 'none' });
		registered = registration;
		if (!watched.has(registration)) watchFor(registration, update);
		watched.add(registration);
		await whenSettled(registration);
		if (!registration.active) return false;
		const { isWhole, isOfPage } = await askIfWhole(registration.active, script);
		if (!isOfPage && !registration.waiting) update.wasReplaced();
		return isWhole;
	});

	wasServed = serviceWorker.controller !== null;
	serviceWorker.addEventListener('controllerchange', () => {
		if (wasServed) update.wasReplaced();
		wasServed = true; // the first time is the first visit: this very version has been kept
		void offline.look();
	});
	const askForNext = () => {
		if (navigator.onLine) registered?.update().catch(() => undefined); // it cannot be had: next time
	};
	// A tablet keeps the page open for days: ask when the app comes to the front, not only when it is loaded.
	const askAgain = () => {
		if (document.visibilityState !== 'visible') return;
		if (offline.state === 'not kept') void offline.look();
		else askForNext();
	};
	document.addEventListener('visibilitychange', askAgain);
	addEventListener('online', askAgain);
	void offline.look().then(askForNext);
	return { update, offline };
}

/** Tells when a newer version has come to this device and waits. */
function watchFor(registration: ServiceWorkerRegistration, update: Update): void {
	const watchArriving = () => {
		const { installing, active } = registration;
		if (!active) return; // the first version of all
		installing?.addEventListener('statechange', () => {
			if (installing.state === 'installed') update.isWaiting();
		});
	};
	if (registration.waiting) update.isWaiting();
	watchArriving(); // the browser may have begun before the page did
	registration.addEventListener('updatefound', watchArriving);
}
