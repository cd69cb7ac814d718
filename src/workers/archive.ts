import type { Reading } from '../core/length/reading.ts';
import type { PackedPicture, PackedRecord } from '../files/packShow.ts';
import { type AskedWorker, askRunning, askWorker } from './askWorker.ts';
import type { ArchiveJob, PackReply, UnpackReply } from './protocol.ts';

const startArchiveWorker = (): AskedWorker =>
	new Worker(new URL('./archive.worker.ts', import.meta.url), { type: 'module' });

/**
 * Packs a show with its pictures off the main thread, one picture at a time, so that no more than one is held besides what
 * is packed already.
 * @param pictureAt gives the pictures of the list, in its order
 */
export async function packInWorker(
	text: string,
	list: readonly PackedRecord[],
	pictureAt: (place: number) => Promise<PackedPicture>,
	signal: AbortSignal,
	startWorker: () => AskedWorker = startArchiveWorker,
): Promise<Blob> {
	const worker = startWorker();
	const parts: Uint8Array<ArrayBuffer>[] = [];
	const ask = (job: ArchiveJob) =>
		askRunning<PackReply>(worker, job, signal, 'packing', ({ part }) => void parts.push(part));
	try {
		await ask({ begin: { text, list } });
		for (const place of list.keys()) await ask({ picture: await pictureAt(place) });
		await ask({ end: true });
	} finally {
		worker.terminate();
	}
	return new Blob(parts, { type: 'application/zip' });
}

/**
 * Unpacks a show with its pictures off the main thread.
 * @param onPicture called with each picture that is sound; the file as a whole may still be refused
 * @returns the text of its file
 */
export const unpackInWorker = (
	file: Blob,
	onPicture: (picture: PackedPicture) => void,
	signal: AbortSignal,
	startWorker: () => AskedWorker = startArchiveWorker,
): Promise<Reading<string>> =>
	askWorker<UnpackReply>(startWorker, { unpack: file } satisfies ArchiveJob, signal, 'unpacking', ({ picture }) => {
		onPicture(picture);
	});
