import { isProblem } from '../core/length/reading.ts';
import { hashOf } from '../files/hashOf.ts';
import { imageEntry, listEntry, packer, showEntry } from '../files/packShow.ts';
import { type UnpackedShow, unpackShow } from '../files/unpackShow.ts';
import type { ArchiveJob } from './protocol.ts';

const to = packer((part) => {
	postMessage({ news: { part } }, { transfer: [part.buffer] });
});

let show: UnpackedShow | undefined;

async function answer(job: ArchiveJob): Promise<unknown> {
	if ('begin' in job) {
		to.text(showEntry, job.begin.text);
		to.text(listEntry, JSON.stringify(job.begin.list));
	} else if ('picture' in job) {
		const { hash, preview, small } = job.picture;
		to.bytes(imageEntry(hash, 'preview', preview.type), preview.bytes);
		to.bytes(imageEntry(hash, 'small', small.type), small.bytes);
	} else if ('end' in job) to.end();
	else if ('place' in job) return show?.pictureAt(job.place);
	else {
		const read = await unpackShow(job.unpack, hashOf, (done, of) => {
			postMessage({ news: { done, of } });
		});
		if (isProblem(read)) return read;
		show = read.value;
		return { value: { text: show.text, count: show.count } };
	}
	return true;
}

addEventListener('message', ({ data }: MessageEvent<ArchiveJob>) => {
	void answer(data).then(
		(answered) => {
			postMessage({ answer: answered });
		},
		(cause: unknown) => {
			postMessage({ problem: (cause as Error).message });
		},
	);
});
