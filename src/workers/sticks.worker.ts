import highsWasm from 'highs/runtime?url';
import { planAllSticks } from '../core/sticks/planSticks.ts';
import { openHighs } from '../solver/openHighs.ts';
import type { SticksReply, SticksRequest } from './protocol.ts';

/** The share of the time, the other way round, that is spent without the solver. */
const firstPart = 2;

const reply = (message: SticksReply) => {
	postMessage(message);
};

async function plan({ jobs, seconds }: SticksRequest): Promise<void> {
	// The solver is large, and seldom needed: it is loaded where a plan without it is not proven.
	const start = performance.now();
	const secondsLeft = () => seconds - (performance.now() - start) / 1000;
	const first = planAllSticks(jobs, { secondsLeft: () => secondsLeft() - seconds / firstPart });
	if (first.every(({ proven }) => proven)) {
		reply({ answer: first });
		return;
	}
	const openProgram = await openHighs({ locateFile: () => highsWasm });
	const second = planAllSticks(jobs, { secondsLeft, openProgram });
	reply({
		answer: second.map((own, place) => (own.sticks.length <= first[place]!.sticks.length ? own : first[place]!)),
	});
}

addEventListener('message', ({ data }: MessageEvent<SticksRequest>) => {
	plan(data).catch((cause: unknown) => {
		reply({ problem: cause instanceof Error ? cause.message : String(cause) });
	});
});
