import { answerReading } from './answerReading.ts';
import type { OpenJob, ReadJob } from './protocol.ts';

const answer = answerReading((message) => {
	postMessage(message);
});

addEventListener('message', ({ data }: MessageEvent<OpenJob | ReadJob>) => {
	void answer(data);
});
