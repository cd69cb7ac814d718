import { fillStick } from './fillStick.ts';
import type { StickProblem } from './stickProblem.ts';

/** A worth for each type of leg, and the most that one stick can hold of it: whole numbers. */
export interface StickMeasure {
	readonly worths: readonly number[];
	readonly held: number;
}

/** What all legs are worth together. */
export const worthOfAll = ({ types }: StickProblem, { worths }: StickMeasure): number =>
	types.reduce((sum, { legs }, type) => sum + legs.length * worths[type]!, 0);

/** The fewest sticks that hold all legs by a measure. */
export const leastBy = (problem: StickProblem, measure: StickMeasure): number =>
	measure.held === 0 ? 0 : Math.ceil(worthOfAll(problem, measure) / measure.held);

/** A measure of any worths; undefined where it cannot be said what a stick holds. */
export function measureOf(problem: StickProblem, worths: readonly number[]): StickMeasure | undefined {
	const full = fillStick(problem, worths);
	return full && { worths, held: full.worth };
}

/** How many parts a stick is thought of as, at most, when legs are counted by the parts that they reach into. */
const mostParts = 8;

/**
 * Measures by which sticks are filled, the plain length first. A leg of more than a third of a stick, say, takes half of
 * it: only two such come from one. (Dual feasible functions: S. P. Fekete and J. Schepers, New classes of fast lower
 * bounds for bin packing problems, 2001.) What a stick can really hold of each is worked out, so that none is trusted.
 */
export function stickMeasures(problem: StickProblem): readonly StickMeasure[] {
	const { stick, types } = problem;
	const sizes = types.map(({ size }) => size);
	const byParts = Array.from({ length: mostParts - 1 }, (_, index) => {
		const parts = index + 2;
		return sizes.map((size) =>
			(parts * size) % stick === 0 ? (parts - 1) * size : Math.floor((parts * size) / stick) * stick,
		);
	});
	const bySmallest = sizes
		.filter((least) => 2 * least <= stick)
		.map((least) => sizes.map((size) => (size > stick - least ? stick : size >= least ? size : 0)));
	return [
		{ worths: sizes, held: stick },
		...[sizes, ...byParts, ...bySmallest].flatMap((worths) => measureOf(problem, worths) ?? []),
	];
}
