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
	const scale = copies.reduce((all, own) => (own === 0 ? all : lcm(all, BigInt(own))), 1n);
	const perCopy = costs.map((own, print) =>
		own.map((cost) =>
			cost === undefined || copies[print] === 0 ? undefined : (cost * scale) / BigInt(copies[print]!),
		),
	);
	const given = costs.map(() => counts.map(() => 0));
	const left = [...copies];
	const free = [...counts];
	let cost = 0n;
	for (;;) {
		const way = cheapestWay(perCopy, given, left, free);
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
			if (from !== undefined) given[print]![from]! -= amount;
			given[print]![to]! += amount;
		}
		cost += way.cost * BigInt(amount);
	}
	return { cost, scale, given };
}

/** A copy of a print goes from one frame, or from none, to another. */
interface WayStep {
	readonly print: number;
	readonly from: number | undefined;
	readonly to: number;
}

/** The cheapest way by which one copy more has a frame: it goes to one; its holder goes on to the next; the last is free. */
function cheapestWay(
	costs: readonly (readonly (bigint | undefined)[])[],
	given: readonly (readonly number[])[],
	left: readonly number[],
	free: readonly number[],
): { readonly cost: bigint; readonly steps: readonly WayStep[] } | undefined {
	const frames = [...free.keys()];
	/** The cheapest way that ends in each frame so far, by its last step. */
	const reached = frames.map((to) => {
		let best: { cost: bigint; step: WayStep } | undefined;
		costs.forEach((own, print) => {
			const cost = own[to];
			if (left[print]! > 0 && cost !== undefined && (!best || cost < best.cost))
				best = { cost, step: { print, from: undefined, to } };
		});
		return best;
	});
	/** The cheapest move of a holder from one frame to another. */
	const moves = frames.map((from) =>
		frames.map((to) => {
			let best: { cost: bigint; step: WayStep } | undefined;
			if (from === to) return best;
			costs.forEach((own, print) => {
				if (given[print]![from] === 0 || own[to] === undefined) return;
				const cost = own[to] - own[from]!;
				if (!best || cost < best.cost) best = { cost, step: { print, from, to } };
			});
			return best;
		}),
	);
	for (let isBetter = true; isBetter;) {
		isBetter = false;
		for (const from of frames)
			for (const to of frames) {
				const [before, move] = [reached[from], moves[from]![to]];
				if (!before || !move) continue;
				const cost = before.cost + move.cost;
				if (reached[to] && reached[to].cost <= cost) continue;
				reached[to] = { cost, step: move.step };
				isBetter = true;
			}
	}
	const ends = frames.filter((to) => free[to]! > 0 && reached[to] !== undefined);
	if (ends.length === 0) return undefined;
	const end = ends.reduce((a, b) => (reached[b]!.cost < reached[a]!.cost ? b : a));
	const steps: WayStep[] = [];
	for (let at: number | undefined = end; at !== undefined; at = steps[0]!.from) steps.unshift(reached[at]!.step);
	return { cost: reached[end]!.cost, steps };
}

function lcm(a: bigint, b: bigint): bigint {
	let [x, y] = [a, b];
	while (y !== 0n) [x, y] = [y, x % y];
	return (a / x) * b;
}
