import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { isSameValue } from '../values/isSameValue.ts';
import { changedRange, type ChangedRange, withRange } from '../values/changedRange.ts';
import { withFindingsAcross } from './acrossRows.ts';
import { numberKey } from './editionClashes.ts';
import type { RowResult } from './rowResult.ts';
import { frameWanted } from './tooFewFrames.ts';

interface Known {
	readonly rows: readonly Row[];
	/** What each row gives by itself, and with what only shows between them. */
	readonly alone: readonly RowResult[];
	readonly across: readonly RowResult[];
}

/**
 * What only shows between the rows of a show, as `withFindingsAcross` finds it: an edit that changes nothing that other
 * rows are held against costs no look at them.
 */
export class FindingsAcross {
	readonly #settings: Settings;
	#known: Known | undefined;

	constructor(settings: Settings) {
		this.#settings = settings;
	}

	/** The results of the rows as they are now. @param alone what each row gives by itself */
	of(rows: readonly Row[], alone: readonly RowResult[]): readonly RowResult[] {
		const known = this.#known;
		const range = changedRange(known?.alone ?? [], alone);
		const across =
			known && this.#isApart(known, range, rows, alone)
				? withRange(known.across, range, (place) => alone[place]!)
				: withFindingsAcross(rows, alone, this.#settings);
		this.#known = { rows, alone, across };
		return across;
	}

	/** Whether what differs is nothing that other rows are held against; nor do they name it by its place. */
	#isApart(known: Known, { from, to, shift }: ChangedRange, rows: Known['rows'], alone: Known['alone']): boolean {
		if (this.#settings.walls.length > 0) return false;
		const heldBefore = (place: number) => heldOf(known.rows[place]!, known.alone[place]!);
		const held = (place: number) => heldOf(rows[place]!, alone[place]!);
		if (shift === 0)
			return placesIn(from, to).every(
				(place) =>
					alone[place] === known.alone[place] ||
					(known.across[place] === known.alone[place] && isSameValue(heldBefore(place), held(place))),
			);
		const isFree = known.across.every((result, place) => result === known.alone[place]);
		return (
			isFree &&
			!placesIn(from, to - shift).some((place) => heldBefore(place)) &&
			!placesIn(from, to).some((place) => held(place))
		);
	}
}

const placesIn = (from: number, to: number) => Array.from({ length: Math.max(0, to - from) }, (_, at) => from + at);

/** What of a row others are held against: the number of its edition, and the frames that it takes. Undefined: nothing. */
function heldOf(row: Row, result: RowResult) {
	const [number, frame] = [numberKey(row, result), frameWanted(result)];
	if (number === undefined && frame === undefined) return undefined;
	return { number, frame: frame && { frame, copies: result.copies, size: result.framed.size } };
}
