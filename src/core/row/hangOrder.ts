import { isBlankRow } from '../show/blankRow.ts';
import type { Row } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import { nameKey } from '../values/named.ts';
import type { WorkedRow } from './workedRow.ts';

/**
 * The places of the prints in the order in which they hang: wall by wall, as the walls first come; on each by the number
 * of its hang order, the ones without a number after those, as they stand in the show. A wall that is in no list is one
 * by its name.
 * @param results in the order of the rows
 */
export function hangOrder(rows: readonly Row[], results: readonly Pick<WorkedRow, 'hangs'>[]): readonly number[] {
	const places = rows.map((_, place) => place).filter((place) => !isBlankRow(rows[place]!));
	const walls = groupBy(places, (place) => results[place]!.hangs.wall ?? nameKey(rows[place]!.typed.wall ?? ''));
	const orderOf = (place: number) => results[place]!.hangs.order ?? Infinity;
	return [...walls.values()].flatMap((own) =>
		own.toSorted((a, b) => (orderOf(a) === orderOf(b) ? a - b : orderOf(a) - orderOf(b))),
	);
}
