import type { Reading } from '../core/length/reading.ts';
import { type AskedWorker, askRunning } from './askWorker.ts';
import type { PicturesReply } from './protocol.ts';
import type { ReadPicture } from './readPicture.ts';

const startPicturesWorker = (): AskedWorker =>
	new Worker(new URL('./pictures.worker.ts', import.meta.url), { type: 'module' });

/** So many pictures are read by one worker: what the browser still holds of them goes with it. */
const mostOfOne = 20;

/** A file that has not answered by then holds the others up, in milliseconds. Large ones take seconds, from afar a minute. */
const longestMs = 120_000;
const noAnswer = 'it could not be read within two minutes';

/**
 * Reads picture files off the main thread, one at a time, so that no more than one is ever held decoded. What cannot be
 * read does not stop the others. Aborting ends the worker.
 * @param onRead called with each as it is read; the next is not begun before it is done
 * @param startWorker replaced in tests
 */
export async function readPictures<Source extends Blob>(
	files: readonly Source[],
	signal: AbortSignal,
	onRead: (file: Source, read: Reading<ReadPicture>, place: number) => Promise<void> | void,
	startWorker: () => AskedWorker = startPicturesWorker,
): Promise<void> {
	let worker: AskedWorker | undefined;
	try {
		for (const [place, file] of files.entries()) {
			signal.throwIfAborted();
			if (place % mostOfOne === 0) {
				worker?.terminate();
				worker = undefined;
			}
			worker ??= startWorker();
			let read: Reading<ReadPicture>;
			const leaving = new AbortController();
			const leave = () => leaving.abort(signal.reason);
			signal.addEventListener('abort', leave);
			const waiting = setTimeout(() => leaving.abort(new Error(noAnswer)), longestMs);
			try {
				read = await askRunning<PicturesReply>(worker, { file }, leaving.signal, 'reading');
			} catch (cause) {
				signal.throwIfAborted();
				worker = undefined; // it has ended: one file may be more than the browser can hold
				read = { problem: (cause as Error).message };
			} finally {
				clearTimeout(waiting);
				signal.removeEventListener('abort', leave);
			}
			await onRead(file, read, place);
		}
	} finally {
		worker?.terminate();
	}
}
