import type { Edit } from '../show/edit.ts';
import type { RowId } from '../show/row.ts';
import type { Show } from '../show/show.ts';

/** Puts rows into a sequence. They share out the places that they have; rows that are not named keep theirs. */
export function orderRows(show: Show, ids: readonly RowId[], label: string): Edit {
	const named = new Set(ids);
	const places = show.rows.filter(({ id }) => named.has(id)).map(({ order }) => order);
	const byId = new Map(show.rows.map((row) => [row.id, row]));
	const rows = ids.flatMap((id, place) => {
		const before = byId.get(id);
		const order = places[place];
		return before === undefined || order === undefined || before.order === order
			? []
			: { before, after: { ...before, order } };
	});
	return { label, rows };
}
