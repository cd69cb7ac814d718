import { placeRows } from '../commands/placeRows.ts';
import type { RowResult } from '../findings/rowResult.ts';
import { difference, type Edit } from '../show/edit.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Row, RowId } from '../show/row.ts';
import { rowWith } from '../show/rowWith.ts';
import type { Show } from '../show/show.ts';

/** The cells that stay with the first copy, which is the one that hung. */
const ofOne: readonly ColumnName[] = ['print id', 'wall', 'hang order', 'hang left', 'hang centre'];

/**
 * Makes a row for each copy of a row, so that each can be sold by itself. They stand together; the first keeps its number
 * in the edition, its print id and its place on the wall, the others have none of these but what is no number (`open`,
 * `AP`). What was cut and made of a copy goes with it.
 * @param newIds names for the others, one less than there are copies
 */
export function splitCopies(
	show: Show,
	id: RowId,
	{ words: { edition } }: Pick<RowResult, 'words'>,
	newIds: readonly RowId[],
	label: string,
): Edit {
	const row = show.rows.find((each) => each.id === id);
	if (!row) throw new RangeError(`no row ${id} in the show`);
	const { copies: _, ...single } = row.typed;
	const first: Row = { ...row, typed: single };
	const ofFirst: ReadonlySet<string> = new Set([...ofOne, ...(edition?.kind === 'numbered' ? ['edition'] : [])]);
	const withoutThem = <Value>(cells: Readonly<Record<string, Value>>) =>
		new Map(Object.entries(cells).filter(([column]) => !ofFirst.has(column)));
	const other = rowWith(row, { typed: withoutThem(single), units: withoutThem(row.units ?? {}) });
	const added = newIds.map((newId): Row => ({ ...other, id: newId }));
	const rows = show.rows.map((each) => (each === row ? first : each));
	const diffs = placeRows(rows, rows, added, show.rows.indexOf(row) + 1);
	const placed = new Map(diffs.map(({ after }) => [after!.id, after!]));
	const all = [...rows.filter((each) => !placed.has(each.id)), ...placed.values()];

	/** A copy past the first is the first, and only, copy of a row of its own. */
	const moved = (copy: number, of: RowId | undefined): RowId | undefined =>
		of === id && copy > 1 ? newIds[copy - 2] : undefined;
	const withOwnRow = <Item extends { readonly row: RowId; readonly copy: number }>(item: Item): Item => {
		const own = moved(item.copy, item.row);
		return own === undefined ? item : { ...item, row: own, copy: 1 };
	};
	const next = {
		...show,
		rows: all.toSorted((a, b) => a.order - b.order),
		...(show.ticks && { ticks: show.ticks.map(withOwnRow) }),
		...(show.made && { made: show.made.map(withOwnRow) }),
		...(show.cutSheets && {
			cutSheets: show.cutSheets.map((sheet) => ({
				...sheet,
				blanks: sheet.blanks.map((blank) => {
					const own = moved(blank.copy, blank.rowId);
					return own === undefined ? blank : { ...blank, rowId: own, copy: 1 };
				}),
			})),
		}),
	};
	return difference(show, next, label);
}
