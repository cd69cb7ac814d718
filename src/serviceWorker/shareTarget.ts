import { sharedFiles, sharedName, sharedNotKept } from './protocol.ts';

/** Whether a request is a form in which another app shares something with this one (src/build/webManifest.ts). */
export const isShared = ({ method, url }: Request, scope: string): boolean =>
	method === 'POST' && new URL(url).pathname === new URL('share-target', scope).pathname;

/**
 * Receives what another app shares. The files are left in a cache of their own, where the page finds them
 * (src/app/filesFromOutside.ts); nothing leaves the device.
 * @returns the way to the page, which says whether it is kept
 */
export function takeShared(request: Request, scope: string): Promise<Response> {
	const backTo = (query: string) => () => Response.redirect(new URL(`./?${query}`, scope).href, 303);
	return keep(request, scope).then(backTo('shared'), backTo(`shared=${sharedNotKept}`));
}

async function keep(request: Request, scope: string): Promise<void> {
	const form = await request.formData();
	const files = form.getAll('files').filter((file) => typeof file !== 'string');
	const text = form.get('text');
	if (files.length === 0 && typeof text === 'string' && text !== '') files.push(new File([text], 'shared.txt'));
	await caches.delete(sharedFiles);
	const cache = await caches.open(sharedFiles);
	for (const [place, file] of files.entries()) {
		const headers = { [sharedName]: encodeURIComponent(file.name) };
		await cache.put(new URL(`shared/${place}`, scope).href, new Response(file, { headers }));
	}
}
