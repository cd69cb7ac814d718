import { groupBy } from '../values/groupBy.ts';
import { smallestFeedback } from './feedback.ts';
import type { OrderJob } from './orderJob.ts';

/** Groups of set-ups as they are visited one after the other. */
export interface Visits {
	/** The places of the set-ups of each visit: what waits for others comes after them. */
	readonly order: readonly (readonly number[])[];
	/** No order has fewer visits. */
	readonly least: number;
}

/**
 * The fewest visits to groups of set-ups, a group being all of one setting, or of one thickness. Outer windows wait for
 * nothing and taped inner ones for outer ones only, so that nothing asks a third visit: the first has all outer windows of
 * the group, the last all inner ones. What waits for what leads from group to group, and where it leads round, a group of that
 * round is visited twice:
 *
 *     outer 70, inner 78     70 ──▶ 78
 *     outer 78, inner 70     70 ◀── 78     visited: 78 (outer), 70 (both), 78 (inner)
 *
 * So the fewest visits are one for each group and one for each of the smallest set that leaves no round.
 * @param places of the job, as they are to come where none waits
 * @param work as for `smallestFeedback`
 */
export function fewestVisits(
	places: readonly number[],
	{ setUps, later }: OrderJob,
	keyOf: (place: number) => unknown,
	work?: number,
): Visits {
	const groups = [...groupBy(places, keyOf).values()];
	const groupAt = new Map(groups.flatMap((own, group) => own.map((place) => [place, group] as const)));
	const after = groups.map((own, group) => {
		const all = own.flatMap((place) => later[place]!.flatMap((each) => groupAt.get(each) ?? []));
		return [...new Set(all)].filter((each) => each !== group);
	});
	const { places: twice, least } = smallestFeedback(after, work);
	const waits = groups.map(() => 0);
	for (const each of after.flat()) waits[each]!++;
	const isTaped = (place: number) => setUps[place]!.isTaped;

	const order: (readonly number[])[] = [];
	const firsts = new Set(groups.keys());
	const seconds = new Set<number>();
	while (firsts.size + seconds.size > 0) {
		const first = [...firsts].find((group) => twice.has(group) || waits[group] === 0);
		if (first === undefined) {
			const second = [...seconds].find((group) => waits[group] === 0)!;
			seconds.delete(second);
			order.push(groups[second]!.filter(isTaped));
			continue;
		}
		firsts.delete(first);
		for (const each of after[first]!) waits[each]!--;
		if (twice.has(first)) seconds.add(first);
		order.push(twice.has(first) ? groups[first]!.filter((place) => !isTaped(place)) : groups[first]!);
	}
	return { order, least: groups.length + least };
}
