import { orderNumbers } from './orderNumbers.ts';
import type { Row, RowId } from './row.ts';

/**
 * Rows from outside in the sequence given, each with a name and an order number of its own. A name that one before it
 * has is replaced; order numbers that do not ascend are replaced too.
 */
export function distinctRows(rows: readonly Row[], makeId: () => RowId): readonly Row[] {
	const taken = new Set<RowId>();
	const orders = orderNumbers(rows.map(({ order }) => order));
	return rows.map((row, index) => {
		const id = taken.has(row.id) ? makeId() : row.id;
		taken.add(id);
		return id === row.id && orders[index] === row.order ? row : { ...row, id, order: orders[index]! };
	});
}
