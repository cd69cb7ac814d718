/** A directed graph, both ways: for each of its places those that it leads to, and those that lead to it. */
interface Graph {
	readonly to: Map<number, Set<number>>;
	readonly from: Map<number, Set<number>>;
}

/** Places without which a graph has no round. */
export interface Feedback {
	readonly places: ReadonlySet<number>;
	/** No set of places that does the same is smaller. */
	readonly least: number;
}

/** Ways that are walked along, at most: some tens of milliseconds. A show of 30 double mounts seldom needs a tenth. */
const mostWork = 2_000_000;

/**
 * The smallest set of places that a graph must lose so that nothing in it leads round to itself: what the reductions settle
 * is settled, and of what is left the busiest place is lost, or kept, until no better way is open.
 * Source of the reductions: H. Levy, D. W. Low, A contraction algorithm for finding small cycle cutsets, 1988
 * @param later for each place those that it leads to, itself not among them
 */
export function smallestFeedback(later: readonly (readonly number[])[], work = mostWork): Feedback {
	const budget = { left: work };
	let best = later.map((_, place) => place);
	/** The least of what was not gone into. */
	let open = Infinity;

	function look(graph: Graph, before: readonly number[]): void {
		const lost = [...before, ...reduce(graph)];
		if (graph.to.size === 0) {
			if (lost.length < best.length) best = lost;
			return;
		}
		const least = lost.length + roundsApart(graph, budget);
		if (least >= best.length) return;
		const place = busiest(graph);
		const without = copyOf(graph);
		remove(without, place);
		look(without, [...lost, place]);
		if (budget.left > 0) {
			keep(graph, place);
			look(graph, lost);
		} else open = Math.min(open, least);
	}

	look(graphOf(later), []);
	return { places: new Set(best), least: Math.min(best.length, open) };
}

function graphOf(later: readonly (readonly number[])[]): Graph {
	const to = new Map(later.map((each, place) => [place, new Set(each)]));
	const from = new Map(later.map((_, place) => [place, new Set<number>()]));
	later.forEach((each, place) => each.forEach((next) => from.get(next)!.add(place)));
	return { to, from };
}

const copyOf = ({ to, from }: Graph): Graph => ({ to: copyOfWays(to), from: copyOfWays(from) });
const copyOfWays = (ways: Graph['to']) => new Map([...ways].map(([place, others]) => [place, new Set(others)]));

function remove({ to, from }: Graph, place: number): void {
	for (const next of to.get(place)!) from.get(next)!.delete(place);
	for (const last of from.get(place)!) to.get(last)!.delete(place);
	to.delete(place);
	from.delete(place);
}

/** Settles that a place is not lost: what leads to it leads on to where it leads. */
function keep(graph: Graph, place: number): void {
	const ends = [...graph.to.get(place)!];
	const starts = [...graph.from.get(place)!];
	remove(graph, place);
	for (const start of starts)
		for (const end of ends) {
			graph.to.get(start)!.add(end);
			graph.from.get(end)!.add(start);
		}
}

/**
 * Takes out what can be settled without a choice: a place that nothing leads to, or that leads nowhere, is on no round; one
 * with a single way in or out is never better lost than the place at its other end; one that leads to itself is lost.
 * @returns the places lost
 */
function reduce(graph: Graph): readonly number[] {
	const lost: number[] = [];
	const toSee = new Set(graph.to.keys());
	for (const place of toSee) {
		toSee.delete(place);
		const [to, from] = [graph.to.get(place), graph.from.get(place)];
		if (!to || !from) continue;
		const isLost = to.has(place);
		if (!isLost && to.size > 1 && from.size > 1) continue;
		const touched = [...to, ...from];
		if (isLost) {
			lost.push(place);
			remove(graph, place);
		} else keep(graph, place);
		for (const other of touched) toSee.add(other);
	}
	return lost;
}

/** The place with the most ways through it; the first of them. */
function busiest({ to, from }: Graph): number {
	const ways = (place: number) => to.get(place)!.size * from.get(place)!.size;
	return [...to.keys()].reduce((best, place) => (ways(place) > ways(best) ? place : best));
}

/**
 * How many places must be lost at least: one for each of some rounds that have no place in common; and of places that all
 * lead to and fro, all but one.
 */
function roundsApart(whole: Graph, budget: { left: number }): number {
	const graph = copyOf(whole);
	let least = 0;
	while (budget.left > 0) {
		const round = shortestRound(graph, budget);
		if (round === undefined) break;
		if (round.length === 2) {
			const isBoth = (a: number, b: number) => graph.to.get(a)!.has(b) && graph.from.get(a)!.has(b);
			for (const place of graph.to.keys()) {
				if (!round.includes(place) && round.every((other) => isBoth(place, other))) round.push(place);
			}
			least += round.length - 1;
		} else least++;
		for (const place of round) remove(graph, place);
	}
	return least;
}

/** A round through the fewest places; undefined where there is none. */
function shortestRound({ to }: Graph, budget: { left: number }): number[] | undefined {
	let best: number[] | undefined;
	for (const start of to.keys()) {
		const before = new Map<number, number>();
		let last = [start];
		for (let length = 1; last.length > 0 && length < (best?.length ?? Infinity) && !before.has(start); length++) {
			const next: number[] = [];
			for (const place of last)
				for (const other of to.get(place)!) {
					budget.left--;
					if (before.has(other)) continue;
					before.set(other, place);
					next.push(other);
				}
			last = next;
		}
		if (!before.has(start)) continue;
		best = [start];
		for (let at = before.get(start)!; at !== start; at = before.get(at)!) best.push(at);
		if (best.length === 2) break;
	}
	return best;
}
