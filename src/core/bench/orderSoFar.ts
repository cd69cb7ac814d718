import type { SetUpOrder } from './fewestSettings.ts';
import { byWidth, isInTurn, type OrderJob } from './orderJob.ts';
import { type BoardSetUp, changesBetween, runsOf, setUpKey } from './setUps.ts';
import { settingBySetting } from './settingBySetting.ts';

/** Work put into the settings that are visited twice: it is to be there at once. */
const littleWork = 20_000;

/**
 * An order that is there at once, while the one with the fewest changes is looked for: what is still asked of the order
 * before stays where it is, and each new set-up goes where it costs the fewest changes, boards of one thickness together
 * and taped inner mounts behind their outer ones. Where that cannot be, and with a guide alone, setting by setting.
 *
 *     before   78 72 70         asked now   78 74 72
 *     so far   78 74 72
 */
export function orderSoFar(job: OrderJob, before: readonly BoardSetUp[]): SetUpOrder {
	const sorted = byWidth(job);
	const { places, least } = settingBySetting(sorted, littleWork);
	const runs = runsOf(places.map((place) => sorted.setUps[place]!));
	const kept = asBefore(sorted, before);
	const isKept =
		sorted.setUps[0]?.start !== undefined &&
		isInTurn(kept, sorted) &&
		runsOf(kept.map((place) => sorted.setUps[place]!)) === runs;
	return {
		order: (isKept ? kept : places).map((place) => sorted.setUps[place]!),
		leastChanges: Math.max(least, leastOf(job.setUps)),
	};
}

function asBefore(job: OrderJob, before: readonly BoardSetUp[]): readonly number[] {
	const left = new Map(job.setUps.map((setUp, place) => [setUpKey(setUp), place]));
	const order: number[] = [];
	for (const key of before.map(setUpKey)) {
		const place = left.get(key);
		if (place !== undefined && left.delete(key)) order.push(place);
	}
	for (const place of left.values()) order.splice(turnFor(place, order, job), 0, place);
	return order;
}

/** Where a set-up costs the fewest changes among board of its thickness, behind what it waits for. */
function turnFor(place: number, order: readonly number[], { setUps, later }: OrderJob): number {
	const cost = (from: number | undefined, to: number | undefined) => {
		if (from === undefined || to === undefined) return 0;
		const [a, b] = [setUps[from]!, setUps[to]!];
		return changesBetween(a, b) + (a.thickness === b.thickness ? 0 : 4);
	};
	const earliest = order.findLastIndex((each) => later[each]!.includes(place)) + 1;
	const next = order.findIndex((each) => later[place]!.includes(each));
	const latest = next < 0 ? order.length : next;
	let [best, fewest] = [earliest, Infinity];
	for (let turn = earliest; turn <= latest; turn++) {
		const [from, to] = [order[turn - 1], order[turn]];
		const added = cost(from, place) + cost(place, to) - cost(from, to);
		if (added < fewest) [best, fewest] = [turn, added];
	}
	return best;
}

/** What no order is under: each value is set once. */
function leastOf(setUps: readonly BoardSetUp[]): number {
	const valuesOf = (device: 'guide' | 'start' | 'end') => new Set(setUps.flatMap((setUp) => setUp[device] ?? [])).size;
	return valuesOf('guide') + valuesOf('start') + valuesOf('end');
}
