import type { FrameChoice } from '../core/frameChoice/giveFrames.ts';
import { type AskedWorker, askWorker } from './askWorker.ts';
import type { FramesJob, FramesNews, FramesReply } from './protocol.ts';

const startFramesWorker = (): AskedWorker =>
	new Worker(new URL('./frames.worker.ts', import.meta.url), { type: 'module' });

/**
 * Gives frames out off the main thread, one worker a job; aborting ends it at once.
 * @param onNews called as prints are tried
 * @param startWorker replaced in tests
 */
export const framesInWorker = (
	job: FramesJob,
	signal: AbortSignal,
	onNews?: (news: FramesNews) => void,
	startWorker: () => AskedWorker = startFramesWorker,
): Promise<FrameChoice> => askWorker<FramesReply>(startWorker, job, signal, 'choosing frames', onNews);
