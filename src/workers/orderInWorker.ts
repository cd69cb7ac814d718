import type { SetUpOrder } from '../core/bench/fewestSettings.ts';
import type { OrderJob } from '../core/bench/orderJob.ts';
import { type AskedWorker, askWorker } from './askWorker.ts';
import type { OrderReply } from './protocol.ts';

const startOrderingWorker = (): AskedWorker =>
	new Worker(new URL('./ordering.worker.ts', import.meta.url), { type: 'module' });

/**
 * Looks for the order of set-ups with the fewest changes off the main thread, one worker a job; aborting ends it at once.
 * @param startWorker replaced in tests
 */
export const orderInWorker = (
	job: OrderJob,
	signal: AbortSignal,
	startWorker: () => AskedWorker = startOrderingWorker,
): Promise<SetUpOrder> => askWorker<OrderReply>(startWorker, job, signal, 'ordering the cuts');
