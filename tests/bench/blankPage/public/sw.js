/* global addEventListener, caches, clients, skipWaiting */
// Keeps the page on the device as it comes, so that it opens without a host.
addEventListener('install', (event) => event.waitUntil(skipWaiting()));
addEventListener('activate', (event) => event.waitUntil(clients.claim()));
addEventListener('fetch', (event) => {
	const answer = async () => {
		const cache = await caches.open('page');
		const kept = await cache.match(event.request);
		if (kept) return kept;
		const fresh = await fetch(event.request);
		await cache.put(event.request, fresh.clone());
		return fresh;
	};
	event.respondWith(answer());
});
