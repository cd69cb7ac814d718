import type { Harmony } from '../core/harmonise/harmonise.ts';
import { type AskedWorker, askWorker } from './askWorker.ts';
import type { HarmoniseJob, HarmoniseReply } from './protocol.ts';

const startHarmoniseWorker = (): AskedWorker =>
	new Worker(new URL('./harmonise.worker.ts', import.meta.url), { type: 'module' });

/**
 * Harmonises off the main thread, one worker a job; aborting ends it at once.
 * @param startWorker replaced in tests
 */
export const harmoniseInWorker = (
	job: HarmoniseJob,
	signal: AbortSignal,
	startWorker: () => AskedWorker = startHarmoniseWorker,
): Promise<Harmony> => askWorker<HarmoniseReply>(startWorker, job, signal, 'harmonising');
