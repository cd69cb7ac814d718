import { giveFrames } from '../core/frameChoice/giveFrames.ts';
import type { FramesJob, FramesReply } from './protocol.ts';

addEventListener('message', ({ data: { rows, settings } }: MessageEvent<FramesJob>) => {
	const post = (news: FramesReply) => {
		postMessage(news);
	};
	let reply: FramesReply;
	try {
		const answer = giveFrames(rows, settings, (done, of) => {
			post({ news: { done, of } });
		});
		reply = { answer };
	} catch (cause) {
		reply = { problem: cause instanceof Error ? cause.message : String(cause) };
	}
	post(reply);
});
