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

/** The number that a hang order begins with; undefined where it has none. */
export function hangNumber(text: string | undefined): number | undefined {
	const number = Number.parseFloat((text ?? '').replace(',', '.'));
	return Number.isFinite(number) ? number : undefined;
}

/** One without a number comes after all numbers. */
const numberOf = ({ typed }: Row): number => hangNumber(typed['hang order']) ?? Infinity;
