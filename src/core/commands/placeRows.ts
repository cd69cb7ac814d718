import type { RowDiff } from '../show/edit.ts';
import { orderNumbers } from '../show/orderNumbers.ts';
import type { Row, RowId } from '../show/row.ts';

/**
 * Puts rows that stand together into a place among others.
 * @param rows the rows of the show
 * @param others those of them that are not being placed, in order
 * @param placed the rows to place, in the sequence wanted; their order numbers are not looked at
 * @param at place of the first of them among the others, from 0; past the end: at the end
 * @returns a diff for each row that is new or gets another order number
 */
export function placeRows(rows: readonly Row[], others: readonly Row[], placed: readonly Row[], at: number): RowDiff[] {
	const place = Math.max(0, Math.min(at, others.length));
	const sequence = [...others.slice(0, place), ...placed, ...others.slice(place)];
	const isPlaced = (index: number) => index >= place && index < place + placed.length;
	const orders = orderNumbers(sequence.map(({ order }, index) => (isPlaced(index) ? undefined : order)));
	const before = new Map<RowId, Row>(rows.map((row) => [row.id, row]));
	return sequence.flatMap((row, index): RowDiff[] => {
		const after = { ...row, order: orders[index]! };
		const old = before.get(row.id);
		if (!old) return [{ after }];
		return old.order === after.order ? [] : [{ before: old, after }];
	});
}
