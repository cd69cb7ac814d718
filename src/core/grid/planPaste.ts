import type { NewRow } from '../commands/addRows.ts';
import type { CellChange } from '../commands/typeCells.ts';
import type { ColumnName } from '../show/columns.ts';
import type { CellTexts, RowId } from '../show/row.ts';
import { type Range, rangeOf, type Selection } from './selection.ts';

/** The rows and columns shown. */
export interface GridCells {
	readonly rows: readonly RowId[];
	/** The typed column that stands there; undefined where one can only be worked out. */
	readonly columns: readonly (ColumnName | undefined)[];
}

/** What a paste or a fill comes to: one edit, and what is to be said about it. */
export interface CellPlan {
	readonly changes: readonly CellChange[];
	/** Rows to add after the last one shown. */
	readonly added: readonly NewRow[];
	/** Texts that went to cells which can only be worked out, and were passed over. */
	readonly skipped: number;
	/** Texts for which there was no column. */
	readonly outside: number;
	/** The cells that were typed into, to be selected afterwards. */
	readonly range: Range;
}

/**
 * Pastes a table from the top left cell of the selection. A selection that is a whole number of tables high and wide is
 * filled with it, so one text fills any range. Rows past the last are added, blank ones at the end are not. Blank texts
 * clear their cell. Typed and worked-out cells are typed into alike.
 * @param table texts by row and column; rows may be of different lengths
 */
export function planPaste(
	table: readonly (readonly string[])[],
	selection: Selection,
	{ rows, columns }: GridCells,
): CellPlan {
	const wide = table.reduce((most, row) => Math.max(most, row.length), 1);
	const { top, left, height, width } = pasted(table.length, wide, rangeOf(selection));
	const changes: CellChange[] = [];
	const added: NewRow[] = [];
	let [skipped, outside] = [0, 0];
	for (let down = 0; down < height; down++) {
		const source = table[down % table.length]!;
		const cells = new Map<ColumnName, string>();
		for (let across = 0; across < width; across++) {
			const text = source[across % wide];
			if (text === undefined) continue;
			const column = columns[left + across];
			if (column !== undefined) cells.set(column, text);
			else if (left + across >= columns.length) outside++;
			else skipped++;
		}
		const texts: CellTexts = Object.fromEntries(cells);
		const id = rows[top + down];
		if (id === undefined) added.push({ cells: texts });
		else if (cells.size > 0) changes.push({ id, cells: texts });
	}
	while (added.length > 0 && isBlank(added.at(-1)!.cells)) added.pop();
	const bottom = Math.min(top + height - 1, rows.length + added.length - 1);
	const right = Math.min(left + width - 1, columns.length - 1);
	return { changes, added, skipped, outside, range: { top, bottom, left, right } };
}

/** Where the texts go: the table once, or as often as it fills the selection exactly. */
function pasted(tall: number, wide: number, range: Range) {
	const [height, width] = [range.bottom - range.top + 1, range.right - range.left + 1];
	const { top, left } = range;
	const fills = height % tall === 0 && width % wide === 0;
	return fills ? { top, left, height, width } : { top, left, height: tall, width: wide };
}

const isBlank = (cells: CellTexts): boolean => Object.values(cells).every((text) => text.trim() === '');
