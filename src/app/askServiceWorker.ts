import type { CheckAnswer, CheckRequest, StartRequest } from '../serviceWorker/protocol.ts';

/** How long an answer may take: files that were not kept are fetched before it comes. */
const longestMs = 120_000;

/** Resolves when no version of the app is arriving, or there is one before it. */
export function whenSettled({ installing, active }: ServiceWorkerRegistration): Promise<void> {
	if (!installing || active) return Promise.resolve();
	return new Promise((resolve) => {
		installing.addEventListener('statechange', () => {
			if (installing.state === 'activated' || installing.state === 'redundant') resolve();
		});
	});
}

/** Has a version of the app look whether all of it is kept. Rejects where it does not answer. */
export function askIfWhole(worker: ServiceWorker, script: string): Promise<CheckAnswer> {
	return new Promise((resolve, reject) => {
		const { port1, port2 } = new MessageChannel();
		const late = setTimeout(() => reject(new Error('the service worker does not answer')), longestMs);
		port1.onmessage = ({ data }: MessageEvent<CheckAnswer>) => {
			clearTimeout(late);
			port1.close();
			resolve(data);
		};
		worker.postMessage({ type: 'CHECK', script } satisfies CheckRequest, [port2]);
	});
}

/** Has the version that waits start in the place of the one that is there. @returns whether there is one */
export function startWaiting({ waiting }: ServiceWorkerRegistration): boolean {
	waiting?.postMessage({ type: 'SKIP_WAITING' } satisfies StartRequest);
	return waiting !== null;
}
