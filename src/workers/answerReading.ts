import { readRows } from '../files/csv.ts';
import { makeId } from '../files/makeId.ts';
import { openText } from '../files/openText.ts';
import { textOfBlob, withoutMark } from '../files/textOfFile.ts';
import type { OpenJob, OpenReply, ReadJob, ReadReply } from './protocol.ts';

/** Large lists go to the page in parts of so many rows: unpacking all of them at once would hold it up. */
const partRows = 500;

/**
 * What the reading worker does. It holds the text of what it has opened, so that a list is decoded once and its text
 * never goes to the page and back, however often its columns are said again.
 */
export function answerReading(
	reply: (message: OpenReply | ReadReply) => void,
): (job: OpenJob | ReadJob) => Promise<void> {
	let text = '';

	async function open(source: Blob | string): Promise<void> {
		const decoded = typeof source === 'string' ? { value: withoutMark(source) } : await textOfBlob(source);
		if ('problem' in decoded) return reply({ answer: decoded });
		const opened = openText(decoded.value);
		if ('value' in opened && opened.value.kind === 'list') text = decoded.value;
		reply({ answer: opened });
	}

	function read({ settings, matching }: ReadJob): void {
		const onProgress = (done: number, of: number) => {
			reply({ news: { done, of } });
		};
		const all = readRows(text, settings, makeId, { matching, onProgress });
		if ('problem' in all) return reply({ answer: all });
		const { rows, lines, results, ...end } = all;
		for (let at = 0; at < rows.length; at += partRows) {
			const part = <Item>(list: readonly Item[]) => list.slice(at, at + partRows);
			reply({ news: { part: { rows: part(rows), lines: part(lines), results: part(results) } } });
		}
		reply({ answer: end });
	}

	return async (job) => {
		try {
			if ('open' in job) await open(job.open);
			else read(job);
		} catch (cause) {
			reply({ problem: cause instanceof Error ? cause.message : String(cause) });
		}
	};
}
