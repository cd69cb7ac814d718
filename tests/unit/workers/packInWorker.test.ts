import { expect, test } from 'vitest';
import type { BoardPlan } from '../../../src/core/sheets/boardPlan.ts';
import { packBoards } from '../../../src/core/sheets/packBoards.ts';
import type { AskedWorker } from '../../../src/workers/askWorker.ts';
import { packInWorker } from '../../../src/workers/packInWorker.ts';
import type { PackingReply, PackingRequest } from '../../../src/workers/protocol.ts';
import { jobOf, sheetOf } from '../core/sheets/packingOf.ts';

const request: PackingRequest = { jobs: [jobOf([sheetOf(1120, 815)], [[500, 400, 9]])], seconds: 1 };

/** A worker that answers as it is told, in plain data, and knows how often it was ended. */
function fakeWorker(answer: (request: PackingRequest) => readonly PackingReply[]) {
	const ended = { count: 0 };
	const start = (): AskedWorker => {
		const worker: AskedWorker = {
			onmessage: null,
			onerror: null,
			terminate: () => {
				ended.count++;
			},
			postMessage: (message: PackingRequest) => {
				for (const reply of answer(structuredClone(message)))
					queueMicrotask(() => {
						worker.onmessage?.call(worker as Worker, { data: structuredClone(reply) } as MessageEvent);
					});
			},
		};
		return worker;
	};
	return { start, ended };
}

/** Plans in the place of the worker, and tells every plan on the way. */
function planned({ jobs }: PackingRequest): readonly PackingReply[] {
	const replies: PackingReply[] = [];
	const plans = packBoards(jobs, {
		secondsLeft: () => 0,
		onPlan: (plan, place) => replies.push({ news: { plan, place } }),
	});
	return [...replies, { answer: plans }];
}

test('plans come as they are found, as plain data, and the last ones end the worker', async () => {
	const { start, ended } = fakeWorker(planned);
	const told: [BoardPlan, number][] = [];
	const onPlan = (plan: BoardPlan, place: number) => told.push([plan, place]);
	const plans = await packInWorker(request, onPlan, new AbortController().signal, start);
	expect(plans).toEqual(packBoards(request.jobs, { secondsLeft: () => 0 }));
	expect(told).toEqual([[plans[0], 0]]);
	expect(ended.count).toBe(1);
});

test('aborting ends the worker at once, and no plan of it is told any more', async () => {
	const { start, ended } = fakeWorker(() => []);
	const controller = new AbortController();
	const plans = packInWorker(request, () => expect.fail('a stale plan'), controller.signal, start);
	controller.abort(new Error('the rows have changed'));
	await expect(plans).rejects.toThrow('the rows have changed');
	expect(ended.count).toBe(1);
});

test('a problem of the worker is told', async () => {
	const { start } = fakeWorker(() => [{ problem: 'no memory' }]);
	const plans = packInWorker(request, () => undefined, new AbortController().signal, start);
	await expect(plans).rejects.toThrow('no memory');
});
