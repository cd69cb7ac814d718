/** As much of the platform's file handling as is used here; TypeScript does not know it. */
interface LaunchQueue {
	setConsumer(consume: (launch: { readonly files?: readonly { getFile(): Promise<File> }[] }) => void): void;
}

/** Where the service worker leaves what another app has shared with this one; `static/shareTarget.js` has the same name. */
const sharedFiles = 'evenhang-shared';

/**
 * Takes in the files with which the app was opened, or that another app has shared with it.
 * @returns stops taking them
 */
export function filesFromOutside(take: (files: readonly File[]) => void): () => void {
	let isStopped = false;
	const hand = (files: readonly File[]) => {
		if (!isStopped && files.length > 0) take(files);
	};
	const { launchQueue } = globalThis as { launchQueue?: LaunchQueue };
	launchQueue?.setConsumer(({ files = [] }) => {
		void Promise.all(files.map((file) => file.getFile())).then(hand, () => undefined);
	});
	if (new URLSearchParams(location.search).has('shared')) void sharedWithUs().then(hand, () => undefined);
	return () => (isStopped = true);
}

/** What was shared, once: it is taken out of where it was left. */
async function sharedWithUs(): Promise<readonly File[]> {
	history.replaceState(null, '', `${location.pathname}${location.hash}`);
	const cache = await caches.open(sharedFiles);
	const files = await Promise.all(
		(await cache.keys()).map(async (request) => {
			const response = await cache.match(request);
			const name = decodeURIComponent(response?.headers.get('x-file-name') ?? 'shared');
			return new File([(await response?.blob()) ?? ''], name);
		}),
	);
	await caches.delete(sharedFiles);
	return files;
}
