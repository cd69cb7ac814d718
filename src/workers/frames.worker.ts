import { giveFrames } from '../core/frameChoice/giveFrames.ts';
import type { FramesJob, FramesReply } from './protocol.ts';

addEventListener('message', ({ data: { rows, settings } }: MessageEvent<FramesJob>) => {
	let reply: FramesReply;
	try {
		reply = { answer: giveFrames(rows, settings) };
	} catch (cause) {
		reply = { problem: cause instanceof Error ? cause.message : String(cause) };
	}
	postMessage(reply);
});
