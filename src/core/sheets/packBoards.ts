import type { BoardPlan } from './boardPlan.ts';
import { packBoard, type PackingTools } from './packBoard.ts';
import type { PackingJob } from './packingJob.ts';

/** What a search over several boards is given from outside. */
export interface ShowPackingTools extends Omit<PackingTools, 'onPlan'> {
	/** Told each better plan, with the place of its job. */
	readonly onPlan?: (plan: BoardPlan, place: number) => void;
}

/** Plans one board after the other; each gets its share of the time that is left when its turn comes. */
export function packBoards(jobs: readonly PackingJob[], { onPlan, ...tools }: ShowPackingTools): readonly BoardPlan[] {
	// Every board has a plan at once, before any is made better.
	for (const [place, job] of jobs.entries())
		if (jobs.length > 1) packBoard(job, { ...tools, secondsLeft: () => 0, onPlan: (plan) => onPlan?.(plan, place) });
	return jobs.map((job, place) => {
		const boardsToCome = jobs.length - place;
		const end = tools.secondsLeft() - tools.secondsLeft() / boardsToCome;
		return packBoard(job, {
			...tools,
			secondsLeft: () => tools.secondsLeft() - end,
			onPlan: (plan) => onPlan?.(plan, place),
		});
	});
}
