import { expect, test } from 'vitest';
import { harmonise } from '../../../src/core/harmonise/harmonise.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { AskedWorker } from '../../../src/workers/askWorker.ts';
import { harmoniseInWorker } from '../../../src/workers/harmoniseInWorker.ts';
import type { HarmoniseJob, HarmoniseReply } from '../../../src/workers/protocol.ts';

const { settings } = readSettings({ sizes: [{ name: 'Middle', width: 600, height: 450 }] });
const job: HarmoniseJob = { rows: [{ id: 'a', order: 1, typed: { shape: '3:2' } }], settings, most: 1 };

/** A worker that answers as it is told, and knows whether it was ended. */
function fakeWorker(answer: ((job: HarmoniseJob) => HarmoniseReply) | undefined) {
	const ended = { count: 0 };
	const start = (): AskedWorker => {
		const worker: AskedWorker = {
			onmessage: null,
			onerror: null,
			terminate: () => {
				ended.count++;
			},
			postMessage: (message: HarmoniseJob) => {
				if (!answer) return;
				const reply = { data: answer(structuredClone(message)) } as MessageEvent;
				queueMicrotask(() => {
					worker.onmessage?.call(worker as Worker, reply);
				});
			},
		};
		return worker;
	};
	return { start, ended };
}

test('a job goes to the worker as plain data, and its answer comes back', async () => {
	const { start, ended } = fakeWorker(({ rows, settings: plain, most }) => ({ answer: harmonise(rows, plain, most) }));
	const harmony = await harmoniseInWorker(job, new AbortController().signal, start);
	expect(harmony).toEqual(harmonise(job.rows, settings, 1));
	expect(ended.count).toBe(1);
});

test('aborting ends the worker at once', async () => {
	const { start, ended } = fakeWorker(undefined);
	const controller = new AbortController();
	const harmony = harmoniseInWorker(job, controller.signal, start);
	controller.abort(new Error('a later job'));
	await expect(harmony).rejects.toThrow('a later job');
	expect(ended.count).toBe(1);
});

test('a problem of the worker is told', async () => {
	const { start } = fakeWorker(() => ({ problem: '61 prints are more than 60' }));
	await expect(harmoniseInWorker(job, new AbortController().signal, start)).rejects.toThrow('61 prints');
});
