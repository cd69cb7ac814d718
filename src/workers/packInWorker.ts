import type { BoardPlan } from '../core/sheets/boardPlan.ts';
import { type AskedWorker, askWorker } from './askWorker.ts';
import type { PackingReply, PackingRequest } from './protocol.ts';

const startPackingWorker = (): AskedWorker =>
	new Worker(new URL('./packing.worker.ts', import.meta.url), { type: 'module' });

/**
 * Plans boards off the main thread, one worker a request. The first plans come at once, better ones as they are found.
 * @param onPlan called with each better plan, with the place of its job
 * @param startWorker replaced in tests
 * @returns the last plan of each job
 */
export const packInWorker = (
	request: PackingRequest,
	onPlan: (plan: BoardPlan, place: number) => void,
	signal: AbortSignal,
	startWorker: () => AskedWorker = startPackingWorker,
): Promise<readonly BoardPlan[]> =>
	askWorker<PackingReply>(startWorker, request, signal, 'planning boards', ({ plan, place }) => {
		onPlan(plan, place);
	});
