import { readRows } from '../files/csv.ts';
import { makeId } from '../files/makeId.ts';
import type { ReadJob, ReadReply } from './protocol.ts';

const partRows = 500;
const reply = (message: ReadReply) => {
	postMessage(message);
};

addEventListener('message', ({ data: { file, settings, matching } }: MessageEvent<ReadJob>) => {
	const read = readRows(file, settings, makeId, { matching, onProgress: (done, of) => reply({ news: { done, of } }) });
	if ('problem' in read) return reply({ answer: read });
	const { rows, lines, results, ...end } = read;
	for (let at = 0; at < rows.length; at += partRows) {
		const part = <Item>(list: readonly Item[]) => list.slice(at, at + partRows);
		reply({ news: { part: { rows: part(rows), lines: part(lines), results: part(results) } } });
	}
	reply({ answer: end });
});
