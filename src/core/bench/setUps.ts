import type { Length } from '../length/length.ts';
import type { SetUp } from './benchPlan.ts';

/** A set-up in board of one thickness: cuts that share it are one step. */
export interface BoardSetUp extends SetUp {
	/** The border that is cut. */
	readonly border: Length;
	readonly thickness: Length | undefined;
	/** Whether it cuts inner mounts that are taped behind their outer ones, when the windows of those are cut. */
	readonly isTaped: boolean;
}

/**
 * How many devices are set again from one set-up to the next. The mount may be turned between them for nothing.
 * @param from undefined for a bench that is set to nothing: one change for each device that it has
 */
export function changesBetween(from: SetUp | undefined, to: SetUp): number {
	let changes = 0;
	if (from?.guide !== to.guide) changes++;
	if (to.start !== undefined && from?.start !== to.start) changes++;
	if (to.end !== undefined && from?.end !== to.end) changes++;
	return changes;
}

/** How many devices are set again all along an order, from a bench set to nothing. */
export const changesAlong = (order: readonly SetUp[]): number =>
	order.reduce((sum, setUp, place) => sum + changesBetween(order[place - 1], setUp), 0);

/** Tells set-ups apart. */
export const setUpKey = ({ thickness, guide, start, end, isTaped }: BoardSetUp): string =>
	[thickness, guide, start, end].map((value) => value ?? '').join(' ') + (isTaped ? ' taped' : '');

/** Tells settings apart, whatever board is cut at them. */
export const settingKey = ({ guide, start, end }: SetUp): string => `${guide} ${start ?? ''} ${end ?? ''}`;

/** How often board of one thickness is come to along an order. */
export const runsOf = (order: readonly BoardSetUp[]): number =>
	order.filter(({ thickness }, turn) => turn === 0 || thickness !== order[turn - 1]!.thickness).length;

/**
 * What is taped last; thinner board first (unknown thickness before all), then the wider setting first, then the wider
 * stops.
 */
export const widestFirst = (a: BoardSetUp, b: BoardSetUp): number =>
	Number(a.isTaped) - Number(b.isTaped) ||
	(a.thickness ?? 0) - (b.thickness ?? 0) ||
	b.guide - a.guide ||
	(b.start ?? 0) - (a.start ?? 0) ||
	(b.end ?? 0) - (a.end ?? 0);
