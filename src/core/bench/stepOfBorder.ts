import type { Length } from '../length/length.ts';
import type { BenchStep } from './benchPlan.ts';

/**
 * The step in which a row's cut at a border comes first, from 1; undefined where it has none. Another row's board may be
 * of another thickness, and be cut at the same border in a step of its own.
 * @param own the steps in which the cuts of the row come, from 1
 */
export const stepOfBorder = (
	steps: readonly Pick<BenchStep, 'border'>[],
	own: readonly number[],
	border: Length,
): number | undefined => own.find((number) => steps[number - 1]?.border === border);
