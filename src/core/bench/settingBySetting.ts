import { groupBy } from '../values/groupBy.ts';
import { fewestVisits } from './fewestVisits.ts';
import type { OrderJob } from './orderJob.ts';
import { changesBetween, settingKey } from './setUps.ts';

/** An order of all set-ups of a job, by their places, and the fewest changes that any could have. */
export interface VisitingOrder {
	readonly places: readonly number[];
	readonly least: number;
}

/**
 * An order that visits each thickness, and in it each setting, as seldom as can be.
 * @param job its set-ups as they are to come where none waits
 * @param work as for `smallestFeedback`
 */
export function settingBySetting(job: OrderJob, work?: number): VisitingOrder {
	const [first] = job.setUps;
	if (first === undefined) return { places: [], least: 0 };
	const thicknessOf = (place: number) => job.setUps[place]!.thickness;
	const settingOf = (place: number) => settingKey(job.setUps[place]!);
	const runs = thicknessesInTurn(job);
	const visits = runs.map((run) => ({ run, ...fewestVisits(run, job, settingOf, work) }));
	// A thickness that is visited twice may have a window cut in either visit: nothing is said of a setting's second one.
	const byThickness = [...groupBy(visits, ({ run }) => thicknessOf(run[0]!)).values()].map((own) => {
		const settings = new Set(own.flatMap(({ run }) => run.map(settingOf)));
		return { settings, least: own.length === 1 ? own[0]!.least : settings.size };
	});
	const visited = byThickness.reduce((sum, { least }) => sum + least, 0);
	const joins = mostJoins(
		byThickness.map(({ settings }) => settings),
		runs.length - 1,
	);
	return {
		places: visits.flatMap(({ order }) => order.flat()),
		least: changesBetween(undefined, first) + visited - 1 - joins,
	};
}

/** The places of the set-ups of each thickness, as it is visited: once, or twice where inner mounts leave no other way. */
export const thicknessesInTurn = (job: OrderJob): readonly (readonly number[])[] =>
	fewestVisits([...job.setUps.keys()], job, (place) => job.setUps[place]!.thickness).order;

/** How often the next thickness may begin at the setting where the last one ended: at most once for each pair that shares one. */
function mostJoins(thicknesses: readonly ReadonlySet<string>[], crossings: number): number {
	const pairs = thicknesses.flatMap((own, at) =>
		thicknesses.slice(at + 1).filter((other) => [...other].some((key) => own.has(key))),
	).length;
	if (crossings < thicknesses.length) return Math.min(crossings, pairs);
	return pairs > 0 ? crossings : 0;
}
