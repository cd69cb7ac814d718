import { readRow, workOut } from '../../core/row/workOut.ts';
import type { ColumnName } from '../../core/show/columns.ts';
import type { CellTexts, Row } from '../../core/show/row.ts';
import type { Settings } from '../../core/settings/settings.ts';
import { splitSize } from '../../core/show/splitSize.ts';

/** Why a typed text cannot be read in its cell, and what it may have meant. */
export interface EntryProblem {
	/** One plain sentence. */
	readonly message: string;
	/** Texts that can be read, likeliest first, each to be applied with one tap. */
	readonly readings: readonly string[];
}

/** Whether a text that is about to be typed into a cell could not be read there; undefined where it can. */
export function entryProblem(row: Row, column: ColumnName, text: string, settings: Settings): EntryProblem | undefined {
	const change: CellTexts = splitSize(column, text, settings.unit, settings.sizes);
	const units = Object.fromEntries(Object.entries(row.units ?? {}).filter(([name]) => name !== column));
	const next: Row = { ...row, typed: { ...row.typed, ...change }, units };
	// All others say it by themselves; to work the row out for it is a good part of a key's work.
	const { unread } = column === 'drop' ? workOut(next, settings).read : readRow(next, settings);
	const found = unread.find((cell) => cell.column === column);
	return found && { message: found.problem, readings: found.readings };
}
