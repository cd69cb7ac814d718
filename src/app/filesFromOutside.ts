import { sharedFiles, sharedName, sharedNotKept } from '../serviceWorker/protocol.ts';

/** As much of the platform's file handling as is used here; TypeScript does not know it. */
interface LaunchQueue {
	setConsumer(consume: (launch: { readonly files?: readonly { getFile(): Promise<File> }[] }) => void): void;
}

/**
 * Passes on the files with which the app was opened, or that another app has shared with it.
 * @param onRefused called where the device had something for the app and did not give it
 * @returns stops that
 */
export function filesFromOutside(onFiles: (files: readonly File[]) => void, onRefused: () => void): () => void {
	let isStopped = false;
	const hand = (files: readonly File[]) => {
		if (!isStopped && files.length > 0) onFiles(files);
	};
	const refuse = () => {
		if (!isStopped) onRefused();
	};
	const { launchQueue } = globalThis as { launchQueue?: LaunchQueue };
	launchQueue?.setConsumer(({ files = [] }) => {
		void Promise.all(files.map((file) => file.getFile())).then(hand, refuse);
	});
	const shared = new URLSearchParams(location.search).get('shared');
	if (shared !== null) void sharedWithUs(shared !== sharedNotKept).then(hand, refuse);
	return () => (isStopped = true);
}

/** What was shared, once: it is removed from where it was left. Rejects where the service worker could not keep it. */
async function sharedWithUs(isKept: boolean): Promise<readonly File[]> {
	history.replaceState(null, '', `${location.pathname}${location.hash}`);
	if (!isKept) throw new Error('not kept');
	const cache = await caches.open(sharedFiles);
	const files = await Promise.all(
		(await cache.keys()).map(async (request) => {
			const response = await cache.match(request);
			const name = decodeURIComponent(response?.headers.get(sharedName) ?? 'shared');
			const blob = (await response?.blob()) ?? new Blob();
			return new File([blob], name, { type: blob.type });
		}),
	);
	await caches.delete(sharedFiles);
	return files;
}
