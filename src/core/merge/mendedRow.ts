import { editionBefore, shapeBefore, shapeWithoutNoughts } from '../imports/beforeSpreadsheet.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { spreadsheetChangeOf } from './cells.ts';

/** A row of a file, and the texts as which cells of it came that can have been only one thing. */
export interface MendedRow {
	readonly row: Row;
	readonly cameAs: ReadonlyMap<string, string>;
}

/** What a cell may have been, by its column. */
const mends = {
	edition: editionBefore,
	shape: (text: string) => {
		const plain = shapeWithoutNoughts(text);
		return plain === text.trim() ? shapeBefore(text) : { texts: [plain] };
	},
} as const satisfies Partial<Record<ColumnName, unknown>>;

/**
 * A row of a file in which an edition or a shape was edited before a spreadsheet made a date or a time of it: `12-Jul` can
 * only have been 7/12. What may have been several things stays as it came, and so does what is still what it was.
 * @param known the row as it is here, and as it was exchanged
 */
export function mendedRow(row: Row, known: readonly (Row | undefined)[]): MendedRow {
	const cameAs = new Map<string, string>();
	const typed: Partial<Record<ColumnName, string>> = { ...row.typed };
	for (const name of ['edition', 'shape'] as const) {
		const text = row.typed[name];
		const isAsKnown = known.some(
			(each) =>
				each && (each.typed[name] === text || spreadsheetChangeOf(each, row, { name, isExtra: false }) !== undefined),
		);
		const before = text === undefined || isAsKnown ? undefined : mends[name](text);
		if (before?.texts.length !== 1) continue;
		typed[name] = before.texts[0]!;
		cameAs.set(name, text!);
	}
	return cameAs.size === 0 ? { row, cameAs } : { row: { ...row, typed }, cameAs };
}
