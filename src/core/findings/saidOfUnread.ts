import { lengthBefore, saidOfBefore, shapeBefore } from '../imports/beforeSpreadsheet.ts';
import { quoted } from '../length/parseLength.ts';
import type { UnreadCell } from '../row/readCells.ts';
import { kindOf } from '../show/columns.ts';
import type { Row } from '../show/row.ts';

/**
 * What is said of a cell that could not be read. Where a spreadsheet has made a date or the like of it, that is said, with
 * what it may have been; else what its reader said. Apart from the reader, which the first screen is made of.
 */
export function saidOfUnread(cell: UnreadCell, { typed }: Row): UnreadCell {
	const { column } = cell;
	const text = typed[column]?.trim() ?? '';
	const kind = kindOf(column);
	const isLength = kind === 'length' || kind === 'space';
	const before = kind === 'shape' ? shapeBefore(text) : isLength ? lengthBefore(text) : undefined;
	return before ? { column, problem: saidOfBefore(quoted(text), before), readings: before.texts } : cell;
}
