import type { BenchStep } from '../core/bench/benchPlan.ts';
import { sidesInWords } from '../core/bench/stations.ts';
import type { Row } from '../core/show/row.ts';

/** A print whose mount is cut in a step. */
export interface StepPrint {
	readonly row: Row;
	/** Its place in the show, from 0. */
	readonly index: number;
	/** The sides that are cut, in words. */
	readonly sides: string;
	readonly copies: number;
}

/** The prints whose mounts are cut in a step, in the order of the show, each with its sides. */
export function stepPrints({ cuts }: Pick<BenchStep, 'cuts'>, rows: readonly Row[]): readonly StepPrint[] {
	const places = [...new Set(cuts.map(({ row }) => row))].sort((one, other) => one - other);
	return places.flatMap((place) => {
		const row = rows[place - 1];
		const own = cuts.filter((cut) => cut.row === place);
		if (row === undefined) return [];
		const copies = new Set(own.map(({ copy }) => copy)).size;
		return [{ row, index: place - 1, sides: sidesInWords(own.map(({ side }) => side)), copies }];
	});
}
