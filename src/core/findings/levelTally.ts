import { changedRange } from '../values/changedRange.ts';
import type { Level } from './finding.ts';
import type { RowResult } from './rowResult.ts';

/** How many rows there are of which each level is the worst, and the results that were counted. */
export interface LevelTally {
	readonly results: readonly RowResult[];
	readonly counts: Readonly<Record<Level, number>>;
}

/**
 * Counts rows by their worst finding.
 * @param former what was counted before: what stands there too is not counted again
 */
export function tallyLevels(results: readonly RowResult[], former?: LevelTally): LevelTally {
	const counts = { stop: 0, look: 0, note: 0, ...former?.counts };
	const counted = former?.results ?? [];
	const { from, to, shift } = changedRange(counted, results);
	const add = ({ findings }: RowResult, by: 1 | -1) => findings[0] && (counts[findings[0].level] += by);
	for (let place = from; place < to; place++) add(results[place]!, 1);
	for (let place = from; place < to - shift; place++) add(counted[place]!, -1);
	return { results, counts };
}
