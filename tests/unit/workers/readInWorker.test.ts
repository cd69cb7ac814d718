import { expect, test } from 'vitest';
import type { Row } from '../../../src/core/show/row.ts';
import type { AskedWorker } from '../../../src/workers/askWorker.ts';
import type { ReadReply } from '../../../src/workers/protocol.ts';
import { readInWorker } from '../../../src/workers/readInWorker.ts';

/** A worker that answers as it is told. */
function fakeWorker() {
	const worker = {
		isEnded: false,
		onmessage: null,
		onerror: null,
		postMessage: () => undefined,
		terminate: () => void (worker.isEnded = true),
	} as unknown as AskedWorker & { isEnded: boolean };
	const says = (data: ReadReply) => (worker.onmessage as (event: unknown) => void)({ data });
	return { worker, says };
}
const job = { file: 'title\n', settings: { unit: 'mm', sizes: [] }, matching: undefined } as const;
const row = (id: string): Row => ({ id, order: 1, typed: {} });
const part = (id: string) => ({ news: { part: { rows: [row(id)], lines: [2], results: [[]] } } });

test('the parts of a file are put together in their order, and how far it is is told', async () => {
	const { worker, says } = fakeWorker();
	const told: number[] = [];
	const reading = readInWorker(
		job,
		new AbortController().signal,
		(done, of) => void told.push(done, of),
		() => worker,
	);
	says({ news: { done: 250, of: 600 } });
	says(part('a'));
	says(part('b'));
	says({ answer: { columns: ['title'], unknown: [], unnamed: ['b'], notes: ['a note'] } });
	expect(await reading).toMatchObject({ rows: [{ id: 'a' }, { id: 'b' }], lines: [2, 2], notes: ['a note'] });
	expect([told, worker.isEnded]).toEqual([[250, 600], true]);
});

test('a file that cannot be read is a problem, one that stops the worker is an error', async () => {
	const told = fakeWorker();
	const reading = readInWorker(
		job,
		new AbortController().signal,
		() => undefined,
		() => told.worker,
	);
	told.says({ answer: { problem: 'line 1, column 1: the file is empty' } });
	expect(await reading).toEqual({ problem: 'line 1, column 1: the file is empty' });
	const stopped = fakeWorker();
	const failing = readInWorker(
		job,
		new AbortController().signal,
		() => undefined,
		() => stopped.worker,
	);
	(stopped.worker.onerror as (event: unknown) => void)({ message: 'out of memory' });
	await expect(failing).rejects.toThrow('Something went wrong while reading (out of memory)');
	expect(stopped.worker.isEnded).toBe(true);
});

test('a file that is left ends the worker at once', async () => {
	const { worker } = fakeWorker();
	const leaving = new AbortController();
	const reading = readInWorker(
		job,
		leaving.signal,
		() => undefined,
		() => worker,
	);
	leaving.abort(new Error('left'));
	await expect(reading).rejects.toThrow('left');
	expect(worker.isEnded).toBe(true);
});
