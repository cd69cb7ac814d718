import highsWasm from 'highs/runtime?url';
import { assignFrames, type Assignment } from '../core/frameChoice/assignFrames.ts';
import { choiceOf, type TriedFrames, tryFrames } from '../core/frameChoice/giveFrames.ts';
import { programFrames } from '../core/frameChoice/programFrames.ts';
import { openHighs } from '../solver/openHighs.ts';
import type { FramesJob, FramesReply } from './protocol.ts';

const post = (news: FramesReply) => {
	postMessage(news);
};

/** The steps of a first look, which settles most shows. */
const stepsOfFirstLook = 100;

/** The solver is large, and seldom needed: it is loaded where a choice without it is not proven. */
async function assign({ applicants, counts }: TriedFrames, seconds: number): Promise<Assignment> {
	const start = performance.now();
	const first = assignFrames(applicants, counts, stepsOfFirstLook);
	if (first.proven) return first;
	const openProgram = await openHighs({ locateFile: () => highsWasm });
	const secondsLeft = () => seconds - (performance.now() - start) / 1000;
	return programFrames(applicants, counts, { openProgram, secondsLeft }, first);
}

async function choose({ rows, settings, seconds }: FramesJob): Promise<void> {
	const tried = tryFrames(rows, settings, (done, of) => {
		post({ news: { done, of } });
	});
	post({ answer: choiceOf(tried, await assign(tried, seconds)) });
}

addEventListener('message', ({ data }: MessageEvent<FramesJob>) => {
	choose(data).catch((cause: unknown) => {
		post({ problem: cause instanceof Error ? cause.message : String(cause) });
	});
});
