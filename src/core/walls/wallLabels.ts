import type { Row } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import type { HangingLine } from './hangingList.ts';

/** What stands in a print where its wall is drawn. */
export interface WallLabel {
	readonly text: string;
	/** Whether it is the print's own number, which stands in its name; else it stands before the name in the list. */
	readonly isOwn: boolean;
}

/** Longer numbers have no room in a frame that is drawn small. */
const mostLetters = 4;

/**
 * What stands in each print where its wall is drawn, by the place of its row: the print's own number where all prints of
 * the wall have one and no two the same, else a letter from the left. A place in the row is never said as a number: it
 * would be taken for another print's.
 */
export function wallLabels(
	lines: readonly Pick<HangingLine, 'place' | 'number' | 'hung'>[],
	rows: readonly Pick<Row, 'typed'>[],
): ReadonlyMap<number, WallLabel> {
	const own = ({ place }: Pick<HangingLine, 'place'>) => rows[place]!.typed.number?.trim() ?? '';
	return new Map(
		[...groupBy(lines, ({ hung }) => hung).values()].flatMap((ofWall) => {
			const numbers = ofWall.map(own);
			const isOwn =
				new Set(numbers).size === numbers.length &&
				numbers.every((number) => number !== '' && number.length <= mostLetters);
			return ofWall.map((line) => [line.place, { text: isOwn ? own(line) : letter(line.number), isOwn }] as const);
		}),
	);
}

/** A to Z, then AA: the letters of a place, from 1. */
function letter(number: number): string {
	const at = number - 1;
	return (at < 26 ? '' : letter(Math.floor(at / 26))) + String.fromCharCode(65 + (at % 26));
}
