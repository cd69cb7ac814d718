import type { BoardPlan } from '../core/sheets/boardPlan.ts';
import type { PackingReply, PackingRequest } from './protocol.ts';

/** As much of a worker as is used here. */
export type PackingWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const startPackingWorker = (): PackingWorker =>
	new Worker(new URL('./packing.worker.ts', import.meta.url), { type: 'module' });

/**
 * Plans boards off the main thread, one worker a request. The first plans come at once, better ones as they are found.
 * Aborting ends the worker: a search cannot be asked to stop, and a stale plan must never arrive.
 * @param onPlan told each better plan, with the place of its job
 * @param startWorker replaced in tests
 * @returns the last plan of each job
 */
export function packInWorker(
	request: PackingRequest,
	onPlan: (plan: BoardPlan, place: number) => void,
	signal: AbortSignal,
	startWorker: () => PackingWorker = startPackingWorker,
): Promise<readonly BoardPlan[]> {
	return new Promise((resolve, reject) => {
		signal.throwIfAborted();
		const worker = startWorker();
		const finish = (settle: () => void) => {
			worker.terminate();
			signal.removeEventListener('abort', abort);
			settle();
		};
		const abort = () => {
			finish(() => {
				reject(signal.reason as Error);
			});
		};
		signal.addEventListener('abort', abort);
		worker.onerror = ({ message }) => {
			finish(() => {
				reject(new Error(`planning boards stopped: ${message}`));
			});
		};
		worker.onmessage = ({ data }: MessageEvent<PackingReply>) => {
			if ('plan' in data) {
				onPlan(data.plan, data.place);
				return;
			}
			finish(() => {
				if ('plans' in data) resolve(data.plans);
				else reject(new Error(data.problem));
			});
		};
		worker.postMessage(request);
	});
}
