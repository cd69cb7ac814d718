import { makingSteps } from '../row/makingSteps.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { madeKey, type MadeStep, type MadeTick } from '../show/madeTick.ts';
import type { RowId } from '../show/row.ts';

/** One copy of a print that is made ready to hang, with what of it is done. */
export interface CopyMade {
	/** The place of its row, from 0. */
	readonly place: number;
	readonly row: RowId;
	/** From 1. */
	readonly copy: number;
	readonly copies: number;
	readonly steps: readonly { readonly step: MadeStep; readonly isDone: boolean }[];
}

/** Whether every step of a copy is done. */
export const isReady = ({ steps }: Pick<CopyMade, 'steps'>): boolean => steps.every(({ isDone }) => isDone);

/** What is ticked off, for looking up. */
export type MadeTicks = ReadonlySet<string>;

/** Ticks for looking up. */
export const madeTicks = (ticks: readonly MadeTick[] = []): MadeTicks => new Set(ticks.map(madeKey));

/** The copies of all prints of a show, in the order of its rows. */
export const copiesOfShow = (
	rows: readonly { readonly id: RowId }[],
	results: readonly WorkedRow[],
	settings: Settings,
	ticks: MadeTicks,
): readonly CopyMade[] => rows.flatMap((row, place) => copiesOf(row, place, results[place]!, settings, ticks));

/** The copies of a print with their steps; a tick of a step that is not asked any more is passed over. */
export function copiesOf(
	{ id: row }: { readonly id: RowId },
	place: number,
	result: WorkedRow,
	settings: Settings,
	ticks: MadeTicks,
): readonly CopyMade[] {
	const asked = makingSteps(result, settings);
	return Array.from({ length: result.copies }, (_, at) => {
		const copy = at + 1;
		const steps = asked.map((step) => ({ step, isDone: ticks.has(madeKey({ row, copy, step })) }));
		return { place, row, copy, copies: result.copies, steps };
	});
}
