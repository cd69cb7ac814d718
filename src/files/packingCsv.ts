import { formatExact } from '../core/length/formatLength.ts';
import type { PackingPlan } from '../core/packing/packPrints.ts';
import type { Settings } from '../core/settings/settings.ts';
import { csvText, headerIn } from './csvText.ts';

/** The columns of the packing list; lengths are in the show's unit, which stands behind the name. */
export const packingColumns = [
	...(['box', 'inside width', 'inside height', 'pair', 'print', 'copy'] as const),
	...(['width', 'height', 'weight (kg)', 'note'] as const),
] as const;

const lengths: readonly string[] = ['inside width', 'inside height', 'width', 'height'];

/**
 * The packing list as delimited text: a line for each framed print, box by box and pair by pair, then those that come into no
 * box. The long side of a frame and of a box is its width.
 * @param nameOf what a print is called
 */
export function writePackingList(
	{ boxes, unmeasured, flat, collected }: PackingPlan,
	{ unit }: Settings,
	nameOf: (place: number) => string,
): string {
	const n = (value: Parameters<typeof formatExact>[0]) => formatExact(value, unit);
	const header = headerIn(unit, packingColumns, lengths);
	let pairNumber = 0;
	const framed = boxes.flatMap(({ number, inside, pairs }) =>
		pairs.flatMap((pair) => {
			pairNumber++;
			return pair.map(({ place, copy, long, short, grams, isAbout }) => [
				...[`${number}`, n(inside.long), n(inside.short), `${pairNumber}`, nameOf(place), `${copy}`],
				...[n(long), n(short), grams === undefined ? '' : (grams / 1000).toFixed(3)],
				grams === undefined ? 'weight not known' : isAbout ? 'weight approximate' : '',
			]);
		}),
	);
	const loose = (place: number, copies: number, note: string, size?: (typeof flat)[number]['size']) =>
		Array.from({ length: copies }, (_, at) => [
			...['', '', '', '', nameOf(place), `${at + 1}`],
			...[size ? n(size.width) : '', size ? n(size.height) : '', '', note],
		]);
	const records = [
		...framed,
		...unmeasured.flatMap(({ place, copies }) => loose(place, copies, 'framed size not known')),
		...collected.flatMap(({ place, copies }) => loose(place, copies, 'collected, not packed')),
		...flat.flatMap(({ place, copies, size }) => loose(place, copies, 'flat in a folder', size)),
	];
	return csvText([header, ...records]);
}
