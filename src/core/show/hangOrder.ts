import { groupBy } from '../values/groupBy.ts';
import { isBlankRow } from './blankRow.ts';
import type { Row } from './row.ts';

/**
 * The places of the prints in the order in which they hang: wall by wall, as the walls first come; on each by the number
 * of its hang order, the ones without a number after those, as they stand in the show.
 */
export function hangOrder(rows: readonly Row[]): readonly number[] {
	const places = rows.map((_, place) => place).filter((place) => !isBlankRow(rows[place]!));
	const walls = groupBy(places, (place) => rows[place]!.typed.wall?.trim().toLowerCase() ?? '');
	return [...walls.values()].flatMap((own) =>
		own.toSorted((a, b) => {
			const [first, second] = [numberOf(rows[a]!), numberOf(rows[b]!)];
			return first === second ? a - b : first - second;
		}),
	);
}

/** The number that a hang order begins with; one without comes after all numbers. */
function numberOf({ typed }: Row): number {
	const number = Number.parseFloat((typed['hang order'] ?? '').replace(',', '.'));
	return Number.isNaN(number) ? Infinity : number;
}
