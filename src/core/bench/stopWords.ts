import { formatLength, type Scale } from '../length/formatLength.ts';
import type { Bench } from '../settings/bench.ts';
import type { CutSide } from '../show/tick.ts';
import type { BenchStep, Cut } from './benchPlan.ts';
import { endsOf } from './cutEnds.ts';

/** The borders at which the two stops stand, in words: `at the top`; for each side where they differ: `at the top (left), the bottom (right)`. */
export function stopPlaces(
	cuts: readonly Pick<Cut, 'side'>[],
	bench: Bench,
): Readonly<Record<'start' | 'end', string>> {
	const sides = [...new Set(cuts.map(({ side }) => side))];
	const places = (end: 0 | 1) => inWords(sides.map((side) => ({ side, border: endsOf(side, bench)[end] })));
	return { start: places(0), end: places(1) };
}

function inWords(places: readonly { readonly side: CutSide; readonly border: CutSide }[]): string {
	const borders = new Set(places.map(({ border }) => border));
	if (borders.size === 1) return `at the ${[...borders][0]!}`;
	return `at ${places.map(({ side, border }) => `the ${border} (${side})`).join(', ')}`;
}

/** What the end stop of a bench is measured from, where that is not the edge that it stands at. */
export const endStopFrom = ({ endStop }: Bench): string => (endStop === 'from the start' ? 'from the start edge' : '');

/** The stops of a step in words: `start 58, at the top; end 66, at the bottom`; nothing on a bench without. */
export function stopsInWords({ start, end, cuts }: BenchStep, bench: Bench, scale: Scale): string {
	if (start === undefined || end === undefined) return '';
	const places = stopPlaces(cuts, bench);
	const from = endStopFrom(bench);
	return `start ${formatLength(start, scale)}, ${places.start}; end ${formatLength(end, scale)}${from && ` ${from}`}, ${places.end}`;
}
