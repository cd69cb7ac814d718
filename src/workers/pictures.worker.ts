import type { PicturesJob } from './protocol.ts';
import { readPicture } from './readPicture.ts';

addEventListener('message', ({ data }: MessageEvent<PicturesJob>) => {
	void readPicture(data.file).then(
		(answer) => {
			const moved = 'value' in answer ? [answer.value.preview.bytes, answer.value.small.bytes] : [];
			postMessage({ answer }, { transfer: moved });
		},
		(cause: unknown) => postMessage({ problem: (cause as Error).message }),
	);
});
