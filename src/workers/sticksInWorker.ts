import type { StickPlan } from '../core/sticks/stickPlan.ts';
import { type AskedWorker, askWorker } from './askWorker.ts';
import type { SticksReply, SticksRequest } from './protocol.ts';

const startSticksWorker = (): AskedWorker =>
	new Worker(new URL('./sticks.worker.ts', import.meta.url), { type: 'module' });

/**
 * Plans sticks off the main thread, one worker a request; aborting ends it at once.
 * @param startWorker replaced in tests
 */
export const sticksInWorker = (
	request: SticksRequest,
	signal: AbortSignal,
	startWorker: () => AskedWorker = startSticksWorker,
): Promise<readonly StickPlan[]> => askWorker<SticksReply>(startWorker, request, signal, 'planning sticks');
