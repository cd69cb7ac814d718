import { workStopped } from '../core/device/workProblem.ts';
import type { AnswerOf, NewsOf, Reply } from './protocol.ts';

/** As much of a worker as is used here. */
export type AskedWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

/**
 * Asks a worker of its own one thing. Aborting ends the worker at once: a search cannot be asked to stop, and a stale
 * answer must never arrive.
 * @param what it does, for the sentence when it breaks off: "harmonising"
 * @param onNews called with what comes on the way to the answer
 */
export async function askWorker<Any extends Reply<unknown, unknown>>(
	startWorker: () => AskedWorker,
	job: unknown,
	signal: AbortSignal,
	what: string,
	onNews?: (news: NewsOf<Any>) => void,
): Promise<AnswerOf<Any>> {
	signal.throwIfAborted();
	const worker = startWorker();
	const answer = await askRunning<Any>(worker, job, signal, what, onNews);
	worker.terminate();
	return answer;
}

/** Asks a worker that runs already, and goes on running once it has answered; else as `askWorker`. */
export function askRunning<Any extends Reply<unknown, unknown>>(
	worker: AskedWorker,
	job: unknown,
	signal: AbortSignal,
	what: string,
	onNews?: (news: NewsOf<Any>) => void,
): Promise<AnswerOf<Any>> {
	return new Promise((resolve, reject) => {
		signal.throwIfAborted();
		const fail = (cause: Error) => {
			worker.terminate();
			signal.removeEventListener('abort', abort);
			reject(cause);
		};
		const abort = () => {
			fail(signal.reason as Error);
		};
		signal.addEventListener('abort', abort);
		// A worker whose script does not arrive has nothing to say of it.
		worker.onerror = ({ message }: Partial<ErrorEvent>) => {
			fail(new Error(workStopped(what, message)));
		};
		worker.onmessage = ({ data }: MessageEvent<Reply<AnswerOf<Any>, NewsOf<Any>>>) => {
			if ('news' in data) onNews?.(data.news);
			else if ('problem' in data) fail(new Error(data.problem));
			else {
				signal.removeEventListener('abort', abort);
				resolve(data.answer);
			}
		};
		worker.postMessage(job);
	});
}
