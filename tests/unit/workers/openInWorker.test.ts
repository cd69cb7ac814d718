import { expect, test } from 'vitest';
import { writeShowFile } from '../../../src/files/showFile.ts';
import { answerReading } from '../../../src/workers/answerReading.ts';
import type { AskedWorker } from '../../../src/workers/askWorker.ts';
import { openInWorker, type HeldList } from '../../../src/workers/openInWorker.ts';
import type { OpenJob, ReadJob } from '../../../src/workers/protocol.ts';
import { countDecoded } from '../files/countDecoded.ts';

const never = new AbortController().signal;
const how = { settings: { unit: 'mm', sizes: [] }, matching: undefined } as const;

/** A worker that does what the real one does, here; what goes to it and comes from it is copied as it would be. */
function workerHere() {
	const worker = { isEnded: false, asked: [] as (OpenJob | ReadJob)[], said: [] as unknown[] };
	const answer = answerReading((message) => {
		worker.said.push(message);
		if (!worker.isEnded) (asked.onmessage as (event: unknown) => void)({ data: structuredClone(message) });
	});
	const asked = {
		onmessage: null,
		onerror: null,
		postMessage: (job: OpenJob | ReadJob) => {
			worker.asked.push(job);
			void answer(job);
		},
		terminate: () => void (worker.isEnded = true),
	} as unknown as AskedWorker;
	return { worker, asked };
}

async function openList(asked: AskedWorker, source: Blob | string): Promise<HeldList> {
	const opened = await openInWorker(source, never, () => asked);
	if (!('value' in opened) || opened.value.kind !== 'list') throw new Error('no list');
	return opened.value.list;
}

const head = 'number,name,picture width\n';
const large = head + Array.from({ length: 1200 }, (_, at) => `${at + 1},Pier ${'x'.repeat(300)},456\n`).join('');

test('a list is decoded once, however often it is read, and its text stays in the worker', async () => {
	const timesDecoded = countDecoded();
	const { worker, asked } = workerHere();
	const list = await openList(asked, new Blob([large]));
	expect(list.beginning.isWhole).toBe(false);
	expect(list.beginning.text.length).toBeLessThanOrEqual(200_000);
	const told: [number, number][] = [];
	const once = await list.read(how, never, (done, of) => void told.push([done, of]));
	const again = await list.read({ ...how, matching: { name: 'title' } }, never, () => undefined);
	if ('problem' in once || 'problem' in again) throw new Error('not read');
	expect([once.rows.length, once.lines.at(-1), once.unknown]).toEqual([1200, 1201, ['name']]);
	expect(again.rows.map(({ typed }) => typed.title?.slice(0, 4))).toEqual(Array<string>(1200).fill('Pier'));
	expect(told).toEqual([0, 250, 500, 750, 1000].map((done) => [done, 1200]));
	expect(timesDecoded()).toBe(1);
	expect(JSON.stringify(worker.asked).length, 'no text goes to the worker').toBeLessThan(300);
	expect(JSON.stringify(worker.said[0]).length, 'nor all of it back').toBeLessThan(210_000);
	expect(worker.isEnded).toBe(false);
	list.letGo();
	expect(worker.isEnded).toBe(true);
});

test('a show comes back read, decoded once, and ends the worker', async () => {
	const timesDecoded = countDecoded();
	const { worker, asked } = workerHere();
	const show = { name: 'Spring', settings: {}, rows: [{ id: 'p', order: 1, typed: { title: 'Pier' } }] };
	const opened = await openInWorker(new Blob([writeShowFile(show)]), never, () => asked);
	expect(opened).toEqual({ value: { kind: 'show', show } });
	expect([timesDecoded(), worker.isEnded]).toEqual([1, true]);
});

test('what was pasted is not decoded, but read without the mark that it may begin with', async () => {
	const timesDecoded = countDecoded();
	const list = await openList(workerHere().asked, `\ufeff${head}1,Pier,456\n`);
	expect(await list.read(how, never, () => undefined)).toMatchObject({ rows: [{ typed: { number: '1' } }] });
	expect(timesDecoded()).toBe(0);
});

test('what is no text, or is not given to read, is said and ends the worker', async () => {
	const { worker, asked } = workerHere();
	expect(await openInWorker(new Blob([Uint8Array.of(0x89, 0x50, 0x4e, 0x47)]), never, () => asked)).toEqual({
		problem: 'the file is not text: it is a picture or a film',
	});
	expect(worker.isEnded).toBe(true);
	const gone = Object.assign(new Blob(['title\n']), {
		arrayBuffer: () => Promise.reject(new DOMException('gone', 'NotFoundError')),
	});
	expect(await openInWorker(gone, never, () => workerHere().asked)).toEqual({
		problem: 'this device does not give the file to read (NotFoundError)',
	});
});

test('rows that cannot be read are a problem, and the list can be read in another way', async () => {
	const { asked } = workerHere();
	const list = await openList(asked, 'hue,name\nred,Pier\n');
	const none = await list.read(how, never, () => undefined);
	expect('problem' in none && none.problem).toContain('no header is known');
	const again = await list.read({ ...how, matching: { name: 'title' } }, never, () => undefined);
	expect(again).toMatchObject({ rows: [{ typed: { title: 'Pier' } }] });
});

test('a worker that stops is an error', async () => {
	const { worker, asked } = workerHere();
	asked.postMessage = () => undefined;
	const opening = openInWorker('title\n', never, () => asked);
	(asked.onerror as unknown as (event: unknown) => void)({ message: 'out of memory' });
	await expect(opening).rejects.toThrow('Something went wrong while reading (out of memory)');
	expect(worker.isEnded).toBe(true);
});

test.each(['opened', 'read'])('a file that is left while it is %s ends the worker at once', async (when) => {
	const { worker, asked } = workerHere();
	const leaving = new AbortController();
	const list = when === 'read' ? await openList(asked, head) : undefined;
	asked.postMessage = () => undefined;
	const doing = list
		? list.read(how, leaving.signal, () => undefined)
		: openInWorker(head, leaving.signal, () => asked);
	leaving.abort(new Error('left'));
	await expect(doing).rejects.toThrow('left');
	expect(worker.isEnded).toBe(true);
});
