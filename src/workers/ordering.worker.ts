import { fewestSettings } from '../core/bench/fewestSettings.ts';
import type { OrderJob, OrderReply } from './protocol.ts';

addEventListener('message', ({ data: { setUps } }: MessageEvent<OrderJob>) => {
	let reply: OrderReply;
	try {
		reply = { answer: fewestSettings(setUps) };
	} catch (cause) {
		reply = { problem: cause instanceof Error ? cause.message : String(cause) };
	}
	postMessage(reply);
});
