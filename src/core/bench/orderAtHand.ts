import type { SetUpOrder } from './fewestSettings.ts';
import { type BoardSetUp, changesBetween, isOneStretch, setUpKey, widestFirst } from './setUps.ts';

/**
 * An order that is there at once on a bench with end stops, while the one with the fewest changes is looked for: what is
 * still asked of the order before stays where it is, and each new set-up goes where it costs the fewest changes, boards
 * of one thickness together, taped inner mounts behind all others.
 *
 *     before   78 72 70         asked now   78 74 72
 *     at hand  78 74 72
 *
 * @param setUps all different
 */
export function orderAtHand(setUps: readonly BoardSetUp[], before: readonly BoardSetUp[]): SetUpOrder {
	const asked = new Map(setUps.map((setUp) => [setUpKey(setUp), setUp]));
	const order: BoardSetUp[] = [];
	for (const setUp of before) {
		const own = asked.get(setUpKey(setUp));
		if (own && asked.delete(setUpKey(setUp))) order.push(own);
	}
	for (const setUp of [...asked.values()].sort(widestFirst)) order.splice(placeFor(setUp, order), 0, setUp);
	return { order, leastChanges: leastOf(setUps) };
}

/** Where a set-up costs the fewest changes among board of its thickness; at the end where there is none of it. */
function placeFor(setUp: BoardSetUp, order: readonly BoardSetUp[]): number {
	const isOwn = (other: BoardSetUp) => isOneStretch(other, setUp);
	const first = order.findIndex(isOwn);
	if (first < 0) {
		const taped = order.findIndex(({ isTaped }) => isTaped);
		return setUp.isTaped || taped < 0 ? order.length : taped;
	}
	const last = order.findLastIndex(isOwn);
	let [best, fewest] = [first, Infinity];
	for (let place = first; place <= last + 1; place++) {
		const [from, to] = [order[place - 1], order[place]];
		const added = changesBetween(from, setUp) + (to ? changesBetween(setUp, to) - changesBetween(from, to) : 0);
		if (added < fewest) [best, fewest] = [place, added];
	}
	return best;
}

/** What no order is under: each value is set once, and each set-up but the first asks one device at least. */
function leastOf(setUps: readonly BoardSetUp[]): number {
	const valuesOf = (device: 'guide' | 'start' | 'end') => new Set(setUps.map((setUp) => setUp[device])).size;
	const different = new Set(setUps.map(({ guide, start, end }) => `${guide} ${start} ${end}`)).size;
	return setUps.length === 0 ? 0 : Math.max(valuesOf('guide') + valuesOf('start') + valuesOf('end'), different + 2);
}
