import type { Filling, StickProblem } from './stickProblem.ts';

/** What a stick can hold by some worth of its legs. */
export interface FullStick {
	readonly worth: number;
	readonly filling: Filling;
}

/** A way to fill a stick so far: the leg that was put in last, and what stood before it. */
interface Way {
	readonly size: number;
	readonly worth: number;
	readonly type: number;
	readonly before: Way | undefined;
}

/** The most ways that are looked at together; lengths that are all different on a fine ruler make many. */
const mostWays = 20_000;

/**
 * The most that one stick holds, if a leg of each type is worth so much: exact, for the worths are whole numbers. Of two
 * ways to fill it, one that is no longer and worth as much makes the other needless.
 * @returns undefined where there are too many ways
 */
export function fillStick({ stick, types }: StickProblem, worths: readonly number[]): FullStick | undefined {
	let ways: readonly Way[] = [{ size: 0, worth: 0, type: -1, before: undefined }];
	for (const [type, { size, legs }] of types.entries()) {
		const worth = worths[type]!;
		if (worth <= 0) continue;
		let added = ways;
		for (let count = 1; count <= legs.length && added.length > 0; count++) {
			added = added.flatMap((way) =>
				way.size + size > stick
					? []
					: [{ size: way.size + size, worth: way.worth + worth, type, before: way } satisfies Way],
			);
			ways = undominated(ways, added);
			if (ways.length > mostWays) return undefined;
			const standing = new Set(ways);
			added = added.filter((way) => standing.has(way));
		}
	}
	const best = ways.at(-1)!;
	const filling = types.map(() => 0);
	for (let way: Way | undefined = best; way !== undefined && way.type >= 0; way = way.before) filling[way.type]!++;
	return { worth: best.worth, filling };
}

/** Two lists of ways, each by size and worth ascending, as one, without those that another makes needless. */
function undominated(left: readonly Way[], right: readonly Way[]): readonly Way[] {
	const merged: Way[] = [];
	let [i, j] = [0, 0];
	while (i < left.length || j < right.length) {
		const [a, b] = [left[i], right[j]];
		const isLeft =
			b === undefined || (a !== undefined && (a.size < b.size || (a.size === b.size && a.worth >= b.worth)));
		const way = isLeft ? left[i++]! : right[j++]!;
		const last = merged.at(-1);
		if (last === undefined || way.worth > last.worth) merged.push(way);
	}
	return merged;
}
