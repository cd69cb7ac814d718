import { expect, onTestFinished, test, vi } from 'vitest';
import type { AskedWorker } from '../../../src/workers/askWorker.ts';
import type { PicturesJob } from '../../../src/workers/protocol.ts';
import { readPictures } from '../../../src/workers/readPictures.ts';

/** A worker that answers every file but an empty one, until it is ended. */
function startWorker(): AskedWorker {
	let isEnded = false;
	const worker: AskedWorker = {
		onmessage: null,
		onerror: null,
		terminate: () => void (isEnded = true),
		postMessage({ file }: PicturesJob) {
			if (file.size === 0 || isEnded) return;
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

test('of two hundred files no worker reads more than twenty, and one at a time is there', async () => {
	let [started, ended, most] = [0, 0, 0];
	const counted = () => {
		started++;
		most = Math.max(most, started - ended);
		const worker = startWorker();
		const { terminate } = worker;
		worker.terminate = () => {
			ended++;
			terminate.call(worker);
		};
		return worker;
	};
	let read = 0;
	const files = Array.from({ length: 200 }, () => other);
	await readPictures(files, new AbortController().signal, () => void read++, counted);
	expect({ read, started, ended, most }).toEqual({ read: 200, started: 10, ended: 10, most: 1 });
});
