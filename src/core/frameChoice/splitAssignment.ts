import { leastCommonMultiple } from '../length/fraction.ts';

/** Who gets how many of which frame, the copies of one print parted over several where that is better. */
export interface SplitAssignment {
	/** What it costs, times `scale`. */
	readonly cost: bigint;
	readonly scale: bigint;
	/** By print and frame, how many. */
	readonly given: readonly (readonly number[])[];
}

/**
 * The least cost at which frames can be given out if each copy may have a frame of its own; a copy costs its part of the
 * print. Flows of least cost: frames are given one way after the other, each the cheapest that is left, where one print
 * may hand its frame to another and have another one. No way is made that costs more than it brings.
 * @param costs of a whole print in a frame, undefined where the frame does not suit it
 * @param counts how many there are of each frame
 */
export function splitAssignment(
	costs: readonly (readonly (bigint | undefined)[])[],
	copies: readonly number[],
	counts: readonly number[],
): SplitAssignment {
	const scale = copies.reduce((all, own) => (own === 0 ? all : leastCommonMultiple(all, BigInt(own))), 1n);
	const perCopy = costs.map((own, print) =>
		own.map((cost) =>
			cost === undefined || copies[print] === 0 ? undefined : (cost * scale) / BigInt(copies[print]!),
		),
	);
	const given = costs.map(() => counts.map(() => 0));
	const left = [...copies];
	const free = [...counts];
	const seekers = new Seekers(perCopy, left);
	const moves = new Moves(perCopy, given);
	let cost = 0n;
	for (;;) {
		const way = cheapestWay(seekers, moves, free);
		if (way === undefined || way.cost >= 0n) break;
		const { steps } = way;
		const amount = Math.min(
			left[steps[0]!.print]!,
			free[steps.at(-1)!.to]!,
			...steps.slice(1).map(({ print, from }) => given[print]![from!]!),
		);
		left[steps[0]!.print]! -= amount;
		free[steps.at(-1)!.to]! -= amount;
		for (const { print, from, to } of steps) {
			if (from !== undefined) moves.give(print, from, -amount);
			moves.give(print, to, amount);
		}
		cost += way.cost * BigInt(amount);
	}
	return { cost, scale, given };
}

type Costs = readonly (readonly (bigint | undefined)[])[];

/** A copy of a print goes from one frame, or from none, to another. */
interface WayStep {
	readonly print: number;
	readonly from: number | undefined;
	readonly to: number;
}

/** A step with what it costs. */
interface CostedStep {
	readonly cost: bigint;
	readonly step: WayStep;
}

/** Which print with copies left has a frame at the least cost. None has more left later, so each is passed over once. */
class Seekers {
	readonly #left: readonly number[];
	/** By frame, the prints that may have it, the cheapest last. */
	readonly #queues: readonly CostedStep[][];

	constructor(costs: Costs, left: readonly number[]) {
		this.#left = left;
		this.#queues = (costs[0] ?? []).map((_, to) =>
			costs
				.flatMap((own, print) => {
					const cost = own[to];
					return cost === undefined ? [] : [{ cost, step: { print, from: undefined, to } }];
				})
				.sort((a, b) => (a.cost === b.cost ? b.step.print - a.step.print : a.cost < b.cost ? 1 : -1)),
		);
	}

	cheapest(to: number): CostedStep | undefined {
		const queue = this.#queues[to];
		while (queue?.length && this.#left[queue.at(-1)!.step.print] === 0) queue.pop();
		return queue?.at(-1);
	}
}

/** The cheapest move of a holder from one frame to another, kept until holders of the frame change. */
class Moves {
	readonly #costs: Costs;
	readonly #given: number[][];
	/** By the frame it goes from, then by the one it goes to; empty where it has to be looked for again. */
	readonly #cheapest: ((CostedStep | undefined)[] | undefined)[] = [];

	constructor(costs: Costs, given: number[][]) {
		this.#costs = costs;
		this.#given = given;
	}

	/** A print gets so many more of a frame, or fewer. */
	give(print: number, frame: number, amount: number): void {
		const own = this.#given[print]!;
		const before = own[frame]!;
		own[frame] = before + amount;
		const known = this.#cheapest[frame];
		if (own[frame] === 0) this.#cheapest[frame] = undefined;
		else if (before === 0 && known) this.#compare(known, print, frame);
	}

	from(frame: number): readonly (CostedStep | undefined)[] {
		const known = this.#cheapest[frame];
		if (known) return known;
		const cheapest: (CostedStep | undefined)[] = [];
		this.#given.forEach((own, print) => {
			if (own[frame]! > 0) this.#compare(cheapest, print, frame);
		});
		this.#cheapest[frame] = cheapest;
		return cheapest;
	}

	#compare(cheapest: (CostedStep | undefined)[], print: number, from: number): void {
		const own = this.#costs[print]!;
		own.forEach((there, to) => {
			if (there === undefined || to === from) return;
			const cost = there - own[from]!;
			if (!cheapest[to] || cost < cheapest[to].cost) cheapest[to] = { cost, step: { print, from, to } };
		});
	}
}

/** The cheapest way by which one copy more has a frame: it goes to one; its holder goes on to the next; the last is free. */
function cheapestWay(
	seekers: Seekers,
	moves: Moves,
	free: readonly number[],
): { readonly cost: bigint; readonly steps: readonly WayStep[] } | undefined {
	const frames = [...free.keys()];
	/** The cheapest way that ends in each frame so far, by its last step. */
	const reached = frames.map((to) => seekers.cheapest(to));
	for (let isBetter = true; isBetter;) {
		isBetter = false;
		for (const from of frames) {
			if (!reached[from]) continue;
			const onward = moves.from(from);
			for (const to of frames) {
				const [before, move] = [reached[from], onward[to]];
				if (!move) continue;
				const cost = before.cost + move.cost;
				if (reached[to] && reached[to].cost <= cost) continue;
				reached[to] = { cost, step: move.step };
				isBetter = true;
			}
		}
	}
	const ends = frames.filter((to) => free[to]! > 0 && reached[to] !== undefined);
	if (ends.length === 0) return undefined;
	const end = ends.reduce((a, b) => (reached[b]!.cost < reached[a]!.cost ? b : a));
	const steps: WayStep[] = [];
	for (let at: number | undefined = end; at !== undefined; at = steps[0]!.from) steps.unshift(reached[at]!.step);
	return { cost: reached[end]!.cost, steps };
}
