// Part of the service worker (vite.config.ts): takes what another app shares with this one. The files are left in a cache
// of their own, where the page finds them (src/app/filesFromOutside.ts); nothing leaves the device.
const sharedFiles = 'evenhang-shared';

self.addEventListener('fetch', (event) => {
	const address = new URL(event.request.url);
	const target = new URL('share-target', self.registration.scope);
	if (event.request.method !== 'POST' || address.pathname !== target.pathname) return;
	event.respondWith(keep(event.request).then(backTo('shared'), backTo('shared=not-kept')));
});

async function keep(request) {
	const form = await request.formData();
	const files = form.getAll('files').filter((file) => typeof file !== 'string');
	const text = form.get('text');
	if (files.length === 0 && typeof text === 'string' && text !== '') files.push(new File([text], 'shared.txt'));
	await caches.delete(sharedFiles);
	const cache = await caches.open(sharedFiles);
	for (const [place, file] of files.entries()) {
		const headers = { 'x-file-name': encodeURIComponent(file.name) };
		await cache.put(new URL(`shared/${place}`, self.registration.scope).href, new Response(file, { headers }));
	}
}

const backTo = (query) => () => Response.redirect(new URL(`./?${query}`, self.registration.scope).href, 303);
