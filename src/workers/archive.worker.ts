import { hashOf } from '../files/hashOf.ts';
import { imageEntry, listEntry, packer, showEntry } from '../files/packShow.ts';
import { unpackShow } from '../files/unpackShow.ts';
import type { ArchiveJob } from './protocol.ts';

const to = packer((part) => {
	postMessage({ news: { part } }, { transfer: [part.buffer] });
});

async function* bytesOf(blob: Blob): AsyncGenerator<Uint8Array<ArrayBuffer>> {
	const reader = blob.stream().getReader();
	for (let read = await reader.read(); !read.done; read = await reader.read()) yield read.value;
}

async function answer(job: ArchiveJob): Promise<unknown> {
	if ('begin' in job) {
		to.text(showEntry, job.begin.text);
		to.text(listEntry, JSON.stringify(job.begin.list));
	} else if ('picture' in job) {
		const { hash, preview, small } = job.picture;
		to.bytes(imageEntry(hash, 'preview', preview.type), preview.bytes);
		to.bytes(imageEntry(hash, 'small', small.type), small.bytes);
	} else if ('end' in job) to.end();
	else {
		const onPicture = (picture: unknown) => {
			postMessage({ news: { picture } });
		};
		return unpackShow(bytesOf(job.unpack), onPicture, hashOf);
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
