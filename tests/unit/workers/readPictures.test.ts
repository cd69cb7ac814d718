import { expect, onTestFinished, test, vi } from 'vitest';
import type { AskedWorker } from '../../../src/workers/askWorker.ts';
import type { PicturesJob } from '../../../src/workers/protocol.ts';
import { readPictures } from '../../../src/workers/readPictures.ts';

/** A worker that answers every file but an empty one. */
function startWorker(): AskedWorker {
	const worker: AskedWorker = {
		onmessage: null,
		onerror: null,
		terminate: () => undefined,
		postMessage({ file }: PicturesJob) {
			if (file.size === 0) return;
			(worker.onmessage as (event: { data: unknown }) => void)({ data: { answer: { problem: 'read' } } });
		},
	};
	return worker;
}

const silent = new Blob([]);
const other = new Blob(['x']);

test('a file that does not answer is listed, and the rest go on', async () => {
	vi.useFakeTimers();
	onTestFinished(() => void vi.useRealTimers());
	const said: string[] = [];
	const reading = readPictures(
		[other, silent, other],
		new AbortController().signal,
		(_file, read) => void said.push('problem' in read ? read.problem : ''),
		startWorker,
	);
	await vi.runAllTimersAsync();
	expect(said).toEqual(['read', 'it could not be read within two minutes', 'read']);
	await reading;
	expect(vi.getTimerCount()).toBe(0);
});

test('left while a file does not answer, it ends at once', async () => {
	const leaving = new AbortController();
	const reading = readPictures([silent], leaving.signal, () => undefined, startWorker);
	leaving.abort();
	await expect(reading).rejects.toThrow('aborted');
});
