import { workStopped } from '../core/show/workProblem.ts';
import type { AnswerOf, NewsOf, Reply } from './protocol.ts';

/** As much of a worker as is used here. */
export type AskedWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

/**
 * Asks a worker of its own one thing. Aborting ends the worker at once: a search cannot be asked to stop, and a stale
 * answer must never arrive.
 * @param what it does, for the sentence when it breaks off: "harmonising"
 * @param onNews told what comes on the way to the answer
 */
export function askWorker<Any extends Reply<unknown, unknown>>(
	startWorker: () => AskedWorker,
	job: unknown,
	signal: AbortSignal,
	what: string,
	onNews?: (news: NewsOf<Any>) => void,
): Promise<AnswerOf<Any>> {
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
		// A worker whose script does not arrive has nothing to say of it.
		worker.onerror = ({ message }: Partial<ErrorEvent>) => {
			finish(() => {
				reject(new Error(workStopped(what, message)));
			});
		};
		worker.onmessage = ({ data }: MessageEvent<Reply<AnswerOf<Any>, NewsOf<Any>>>) => {
			if ('news' in data) {
				onNews?.(data.news);
				return;
			}
			finish(() => {
				if ('answer' in data) resolve(data.answer);
				else reject(new Error(data.problem));
			});
		};
		worker.postMessage(job);
	});
}
