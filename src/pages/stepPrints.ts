import type { BenchStep } from '../core/bench/benchPlan.ts';
import { sidesInWords, stepMounts } from '../core/bench/stations.ts';
import { blankWords } from '../core/bench/windowCuts.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import type { Settings } from '../core/settings/settings.ts';
import type { Row } from '../core/show/row.ts';
import type { Tick } from '../core/show/tick.ts';
import { groupBy } from '../core/values/groupBy.ts';

/** A print whose mount is cut in a step. */
export interface StepPrint {
	readonly row: Row;
	/** Its place in the show, from 0. */
	readonly index: number;
	/** The sides that are cut, in words. */
	readonly sides: string;
	/** The blank that they are cut in, in words; where mount and inner mount are cut in one step, both. */
	readonly blank: string;
	readonly copies: number;
	/** Of how many copies all cuts of the step are made. */
	readonly made: number;
}

/** The prints whose mounts are cut in a step, in the order of the show, each with its sides and what of it is made. */
export function stepPrints(
	step: BenchStep,
	rows: readonly Row[],
	results: readonly RowResult[],
	settings: Settings,
	ticks: ReadonlyMap<string, Tick>,
): readonly StepPrint[] {
	const mounts = stepMounts(step, rows, results, settings, ticks);
	return [...groupBy(mounts, ({ index }) => index)]
		.toSorted(([one], [other]) => one - other)
		.map(([index, own]): StepPrint => {
			const copies = [...groupBy(own, ({ copy }) => copy).values()];
			return {
				row: own[0]!.row,
				index,
				sides: sidesInWords(own.flatMap(({ sides }) => sides)),
				blank: [...new Set(own.map(({ part }) => blankWords(results[index]!, part, settings)))].join('; '),
				copies: copies.length,
				made: copies.filter((copy) => copy.every(({ isMade }) => isMade)).length,
			};
		});
}
