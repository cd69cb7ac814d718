import type { BenchStep } from '../core/bench/benchPlan.ts';
import type { CutSide } from '../core/show/tick.ts';
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
		const sides = new Set(own.map(({ side }) => side));
		const copies = new Set(own.map(({ copy }) => copy)).size;
		return [{ row, index: place - 1, sides: sidesInWords(sides), copies }];
	});
}

function sidesInWords(sides: ReadonlySet<CutSide>): string {
	if (sides.size === 4) return 'all four sides';
	const words: string[] = [];
	if (sides.has('left') && sides.has('right')) words.push('both sides');
	else if (sides.has('left')) words.push('left');
	else if (sides.has('right')) words.push('right');
	if (sides.has('top')) words.push('top');
	if (sides.has('bottom')) words.push('bottom');
	return words.join(', ');
}
