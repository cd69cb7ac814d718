import { fewestSettings } from '../core/bench/fewestSettings.ts';
import type { OrderJob } from '../core/bench/orderJob.ts';
import type { OrderReply } from './protocol.ts';

addEventListener('message', ({ data }: MessageEvent<OrderJob>) => {
	let reply: OrderReply;
	try {
		reply = { answer: fewestSettings(data) };
	} catch (cause) {
		reply = { problem: cause instanceof Error ? cause.message : String(cause) };
	}
	postMessage(reply);
});
