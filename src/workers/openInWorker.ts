import type { Reading } from '../core/length/reading.ts';
import type { Row } from '../core/show/row.ts';
import type { ResultCell, RowsOfFile } from '../files/csv.ts';
import type { Beginning, OpenedShows } from '../files/openText.ts';
import { type AskedWorker, askRunning } from './askWorker.ts';
import type { OpenReply, ReadJob, ReadReply } from './protocol.ts';

/** A list that came in: its text is held once, where it was decoded. */
export interface HeldList {
	readonly beginning: Beginning;
	/**
	 * Its rows, as often as its columns are said again.
	 * @param onProgress called with how many rows are read, of how many
	 */
	read(
		how: ReadJob,
		signal: AbortSignal,
		onProgress: (done: number, of: number) => void,
	): Promise<RowsOfFile | { readonly problem: string }>;
	/** It will not be read again. */
	letGo(): void;
}

/** What came in, opened. */
export type Opened = OpenedShows | { readonly kind: 'list'; readonly list: HeldList };

const startReadingWorker = (): AskedWorker =>
	new Worker(new URL('./reading.worker.ts', import.meta.url), { type: 'module' });

/**
 * Opens a file or a text off the main thread. What holds shows comes back read; of a list, the worker keeps the text.
 * Aborting ends the worker, and with it the list.
 * @param startWorker replaced in tests
 */
export async function openInWorker(
	source: Blob | string,
	signal: AbortSignal,
	startWorker: () => AskedWorker = startReadingWorker,
): Promise<Reading<Opened>> {
	signal.throwIfAborted();
	const worker = startWorker();
	const opened = await askRunning<OpenReply>(worker, { open: source }, signal, 'reading');
	if ('value' in opened && opened.value.kind === 'list')
		return { value: { kind: 'list', list: heldBy(worker, opened.value.beginning) } };
	worker.terminate();
	return opened as Reading<OpenedShows>;
}

const heldBy = (worker: AskedWorker, beginning: Beginning): HeldList => ({
	beginning,
	async read(how, signal, onProgress) {
		const rows: Row[] = [];
		const lines: number[] = [];
		const results: (readonly ResultCell[])[] = [];
		const end = await askRunning<ReadReply>(worker, how, signal, 'reading', (news) => {
			if ('done' in news) onProgress(news.done, news.of);
			else {
				rows.push(...news.part.rows);
				lines.push(...news.part.lines);
				results.push(...news.part.results);
			}
		});
		return 'problem' in end ? end : { ...end, rows, lines, results };
	},
	letGo: () => {
		worker.terminate();
	},
});
