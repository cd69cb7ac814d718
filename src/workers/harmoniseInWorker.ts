import type { Harmony } from '../core/harmonise/harmonise.ts';
import type { HarmoniseJob, HarmoniseReply } from './protocol.ts';

/** As much of a worker as is used here. */
export type HarmoniseWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const startHarmoniseWorker = (): HarmoniseWorker =>
	new Worker(new URL('./harmonise.worker.ts', import.meta.url), { type: 'module' });

/**
 * Harmonises off the main thread, one worker a job. Aborting ends the worker at once: a search cannot be asked to stop,
 * and a stale choice must never arrive.
 * @param startWorker replaced in tests
 */
export function harmoniseInWorker(
	job: HarmoniseJob,
	signal: AbortSignal,
	startWorker: () => HarmoniseWorker = startHarmoniseWorker,
): Promise<Harmony> {
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
				reject(new Error(`harmonising stopped: ${message}`));
			});
		};
		worker.onmessage = ({ data }: MessageEvent<HarmoniseReply>) => {
			finish(() => {
				if ('harmony' in data) resolve(data.harmony);
				else reject(new Error(data.problem));
			});
		};
		worker.postMessage(job);
	});
}
