import type { Row } from '../core/show/row.ts';
import type { ResultCell, RowsOfFile } from '../files/csv.ts';
import type { ReadJob, ReadReply } from './protocol.ts';

/** As much of a worker as is used here. */
export type ReadWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const startReadWorker = (): ReadWorker =>
	new Worker(new URL('./readRows.worker.ts', import.meta.url), { type: 'module' });

/**
 * Reads the rows of a file off the main thread. Aborting ends the worker at once.
 * @param onProgress told how many rows are read, of how many
 * @param startWorker replaced in tests
 */
export function readInWorker(
	job: ReadJob,
	signal: AbortSignal,
	onProgress: (done: number, of: number) => void,
	startWorker: () => ReadWorker = startReadWorker,
): Promise<RowsOfFile | { readonly problem: string }> {
	return new Promise((resolve, reject) => {
		signal.throwIfAborted();
		const worker = startWorker();
		const rows: Row[] = [];
		const lines: number[] = [];
		const results: (readonly ResultCell[])[] = [];
		const finish = (settle: () => void) => {
			worker.terminate();
			signal.removeEventListener('abort', abort);
			settle();
		};
		const abort = () => finish(() => reject(signal.reason as Error));
		signal.addEventListener('abort', abort);
		worker.onerror = ({ message }) => finish(() => reject(new Error(`reading stopped: ${message}`)));
		worker.onmessage = ({ data }: MessageEvent<ReadReply>) => {
			if ('done' in data) onProgress(data.done, data.of);
			else if ('part' in data) {
				rows.push(...data.part.rows);
				lines.push(...data.part.lines);
				results.push(...data.part.results);
			} else finish(() => resolve('problem' in data ? data : { ...data.end, rows, lines, results }));
		};
		worker.postMessage(job);
	});
}
