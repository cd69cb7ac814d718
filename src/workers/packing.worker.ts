import highsWasm from 'highs/runtime?url';
import { packBoards } from '../core/sheets/packBoards.ts';
import { openHighs } from '../solver/openHighs.ts';
import type { PackingNews, PackingReply, PackingRequest } from './protocol.ts';

const reply = (message: PackingReply) => {
	postMessage(message);
};

async function pack({ jobs, seconds }: PackingRequest): Promise<void> {
	const start = performance.now();
	const secondsLeft = () => seconds - (performance.now() - start) / 1000;
	const onPlan = (plan: PackingNews['plan'], place: number) => {
		reply({ news: { place, plan } });
	};
	// The solver is large: loaded beside the first plans, it would make them late.
	packBoards(jobs, { secondsLeft: () => 0, onPlan });
	const openProgram = await openHighs({ locateFile: () => highsWasm });
	reply({ answer: packBoards(jobs, { secondsLeft, onPlan, openProgram }) });
}

addEventListener('message', ({ data }: MessageEvent<PackingRequest>) => {
	pack(data).catch((cause: unknown) => {
		reply({ problem: cause instanceof Error ? cause.message : String(cause) });
	});
});
