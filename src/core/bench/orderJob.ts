import { groupBy } from '../values/groupBy.ts';
import type { BenchStep } from './benchPlan.ts';
import { type BoardSetUp, setUpKey, widestFirst } from './setUps.ts';

/** Set-ups to be put in order. */
export interface OrderJob {
	/** All different. */
	readonly setUps: readonly BoardSetUp[];
	/** For each the places of those that come after it: of the inner mounts that are taped behind what is cut at it. */
	readonly later: readonly (readonly number[])[];
}

/** The set-ups of some steps, each once, and which wait for which: a taped inner mount for its outer one. */
export function orderJob(steps: readonly BenchStep[]): OrderJob {
	const bySetUp = [...groupBy(steps, setUpKey).values()];
	const setUps = bySetUp.map(([first]): BoardSetUp => {
		const { guide, start, end, border, thickness, isTaped } = first!;
		return { guide, start, end, border, thickness, isTaped };
	});
	if (!setUps.some(({ isTaped }) => isTaped)) return { setUps, later: setUps.map(() => []) }; // nothing waits
	const later = setUps.map(() => new Set<number>());
	const couples = groupBy(
		bySetUp.flatMap((own, place) =>
			own.flatMap(({ cuts }) => cuts.map(({ row, copy }) => ({ couple: `${row} ${copy}`, place }))),
		),
		({ couple }) => couple,
	);
	for (const couple of couples.values()) {
		const places = new Set(couple.map(({ place }) => place));
		const taped = [...places].filter((place) => setUps[place]!.isTaped);
		if (taped.length > 0)
			for (const place of places) if (!setUps[place]!.isTaped) for (const each of taped) later[place]!.add(each);
	}
	return { setUps, later: later.map((each) => [...each]) };
}

/** Whether an order has nothing before what it waits for. */
export function isInTurn(order: readonly number[], { later }: Pick<OrderJob, 'later'>): boolean {
	const at = new Map(order.map((place, turn) => [place, turn]));
	return order.every((place, turn) => later[place]!.every((each) => at.get(each)! > turn));
}

/** The job with its set-ups the widest first. */
export function byWidth({ setUps, later }: OrderJob): OrderJob {
	const order = [...setUps.keys()].sort((a, b) => widestFirst(setUps[a]!, setUps[b]!));
	const placeOf = new Map(order.map((place, turn) => [place, turn]));
	return {
		setUps: order.map((place) => setUps[place]!),
		later: order.map((place) => later[place]!.map((each) => placeOf.get(each)!).sort((a, b) => a - b)),
	};
}

/** Tells jobs apart, in whatever order they list their set-ups. */
export function jobKey(job: OrderJob): string {
	const { setUps, later } = byWidth(job);
	return JSON.stringify([setUps.map(setUpKey), later]);
}
