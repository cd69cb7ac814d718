import { harmonise } from '../core/harmonise/harmonise.ts';
import type { HarmoniseJob, HarmoniseReply } from './protocol.ts';

addEventListener('message', ({ data: { rows, settings, most } }: MessageEvent<HarmoniseJob>) => {
	let reply: HarmoniseReply;
	try {
		reply = { answer: harmonise(rows, settings, most) };
	} catch (cause) {
		reply = { problem: cause instanceof Error ? cause.message : String(cause) };
	}
	postMessage(reply);
});
