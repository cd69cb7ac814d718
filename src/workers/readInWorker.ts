import type { Row } from '../core/show/row.ts';
import type { ResultCell, RowsOfFile } from '../files/csv.ts';
import { type AskedWorker, askWorker } from './askWorker.ts';
import type { ReadJob, ReadReply } from './protocol.ts';

const startReadWorker = (): AskedWorker =>
	new Worker(new URL('./readRows.worker.ts', import.meta.url), { type: 'module' });

/**
 * Reads the rows of a file off the main thread.
 * @param onProgress told how many rows are read, of how many
 * @param startWorker replaced in tests
 */
export async function readInWorker(
	job: ReadJob,
	signal: AbortSignal,
	onProgress: (done: number, of: number) => void,
	startWorker: () => AskedWorker = startReadWorker,
): Promise<RowsOfFile | { readonly problem: string }> {
	const rows: Row[] = [];
	const lines: number[] = [];
	const results: (readonly ResultCell[])[] = [];
	const end = await askWorker<ReadReply>(startWorker, job, signal, 'reading', (news) => {
		if ('done' in news) onProgress(news.done, news.of);
		else {
			rows.push(...news.part.rows);
			lines.push(...news.part.lines);
			results.push(...news.part.results);
		}
	});
	return 'problem' in end ? end : { ...end, rows, lines, results };
}
