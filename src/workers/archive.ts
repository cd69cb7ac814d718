import { isProblem, type Reading } from '../core/length/reading.ts';
import type { PackedPicture, PackedRecord } from '../files/packShow.ts';
import type { UnpackedShow } from '../files/unpackShow.ts';
import { type AskedWorker, askRunning } from './askWorker.ts';
import type { ArchiveJob, NewsOf, PackReply, UnpackedPictureReply, UnpackReply } from './protocol.ts';

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

/** A packed show whose pictures are unpacked one at a time. */
export interface UnpackedFile extends Pick<UnpackedShow, 'text' | 'count'> {
	/** One that is sound: all were looked at before. Rejects where the file is no longer as it was. */
	readonly pictureAt: (place: number) => Promise<PackedPicture>;
	/** Lets go of it. */
	readonly close: () => void;
}

/**
 * Unpacks a show with its pictures off the main thread, which holds no more than one of them.
 * @param onProgress called with how many pictures were looked at, of how many
 */
export async function unpackInWorker(
	file: Blob,
	signal: AbortSignal,
	onProgress: (done: number, of: number) => void,
	startWorker: () => AskedWorker = startArchiveWorker,
): Promise<Reading<UnpackedFile>> {
	signal.throwIfAborted();
	const worker = startWorker();
	const ask = <Any extends UnpackReply | UnpackedPictureReply>(job: ArchiveJob, onNews?: (news: NewsOf<Any>) => void) =>
		askRunning<Any>(worker, job, signal, 'unpacking', onNews);
	const read = await ask<UnpackReply>({ unpack: file }, ({ done, of }) => {
		onProgress(done, of);
	});
	const close = () => {
		worker.terminate();
	};
	if (isProblem(read)) {
		close();
		return read;
	}
	const pictureAt = async (place: number) => {
		const picture = await ask<UnpackedPictureReply>({ place });
		if (isProblem(picture)) throw new Error(picture.problem);
		return picture.value;
	};
	return { value: { ...read.value, pictureAt, close } };
}
