import type { RowResult } from '../findings/rowResult.ts';
import { formatLength, formatWithUnit, type Scale } from '../length/formatLength.ts';
import type { Length } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import { countOf } from '../values/countOf.ts';
import { groupBy } from '../values/groupBy.ts';
import { listed } from '../values/listed.ts';
import type { GetLine } from './getLine.ts';
import type { NameOfPlace } from './getSentences.ts';

/**
 * How large the frames of a line are made, or come, in sentences: "Rebate 603 × 453, outside 631 × 481 mm, for 1 Ebb (4
 * copies)." Of a frame with a size the rebate is the same for all. None for what is no frame, or where it is not known.
 * @param results of the rows, by their place
 */
export function frameSizes(
	{ kind, taken }: GetLine,
	results: readonly RowResult[],
	nameOf: NameOfPlace,
	scale: Scale,
): readonly string[] {
	if (kind !== 'frame' && kind !== 'stick') return [];
	const framed = [...taken.keys()].flatMap((place) => {
		const { frame, framed: of, copies } = results[place] ?? {};
		if (!frame?.seat) return [];
		const isMade = frame.frame?.size === undefined;
		const say = (size: Size | undefined) => size && sizeWords(size, isMade, scale);
		const outside = say(of!.size);
		const sizes = `Rebate ${say(frame.seat.rebate)}${outside ? `, outside ${outside}` : ''} ${scale.unit}`;
		const name = nameOf(place) + (copies! > 1 ? ` (${copies} copies)` : '');
		return [{ sizes, name: isMade ? name : undefined }];
	});
	return [...groupBy(framed, ({ sizes }) => sizes)].map(([sizes, alike]) => {
		const names = alike.flatMap(({ name }) => name ?? []);
		if (names.length === 0) return `${sizes}.`;
		return `${sizes}, for ${names.length > mostNames ? countOf(names.length, 'print') : listed(names)}.`;
	});
}

/** More prints than this are counted: their names follow in the list. */
const mostNames = 12;

/** A size as it lies; of a frame that is bought, which hangs either way, the long side first. */
function sizeWords({ width, height }: Size, isMade: boolean, scale: Scale): string {
	const [first, second] = isMade || width >= height ? [width, height] : [height, width];
	return `${formatLength(first, scale)} × ${formatLength(second, scale)}`;
}

/** Between what the legs of a moulding are measured, what the saw takes, and what to try first, in a sentence. */
export const legsMeasured = (saw: Length, scale: Scale): string =>
	`Legs are long point to long point; the saw takes ${formatWithUnit(saw, scale)} more for each. Try one frame dry before you saw the rest.`;
