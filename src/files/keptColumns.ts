import { type ColumnMatching, type SaidColumn, saidColumn } from '../core/imports/columnMatching.ts';
import type { Settings } from '../core/settings/settings.ts';
import type { ColumnName } from '../core/show/columns.ts';
import type { Row } from '../core/show/row.ts';
import { rowWith } from '../core/show/rowWith.ts';
import { ownValue } from '../core/values/ownValue.ts';
import { guessesOf, headerSaidToBe, saysHeightFirst } from './headers.ts';
import { areSizes } from './matchColumns.ts';
import type { ColumnOfFile } from './readColumns.ts';
import { readCellsOfRow } from './readRows.ts';

/** How many cells of a column are shown. */
const mostSamples = 3;

/** The columns of other programs that are kept with rows, with what they may mean by their headers. */
export function keptColumnsOf(rows: readonly Row[]): readonly ColumnOfFile[] {
	const names = [...new Set(rows.flatMap(({ extra }) => Object.keys(extra ?? {})))];
	return names.map((text): ColumnOfFile => {
		const cells = rows.map(({ extra }) => ownValue(extra, text) ?? '').filter((cell) => cell.trim() !== '');
		const ofHeader = { text, meaning: 'none', guesses: guessesOf(text) } as const;
		const sizes = { areSizes: areSizes(cells), isHeightFirst: saysHeightFirst(text) };
		return { ...ofHeader, ...sizes, samples: cells.slice(0, mostSamples) };
	});
}

/**
 * Rows with the cells of kept columns in columns of ours, read as they would be in a list. A cell that is typed stays, and
 * so does the kept one beside it: nothing is lost.
 */
export function withKept(
	rows: readonly Row[],
	matching: ColumnMatching,
	settings: Pick<Settings, 'unit' | 'sizes'>,
): readonly Row[] {
	const said = Object.entries(matching).flatMap(([name, meaning]): [string, SaidColumn][] => {
		const column = saidColumn(meaning);
		return column ? [[name, column]] : [];
	});
	return rows.map((row) => {
		const those = said.filter(([name]) => (ownValue(row.extra, name) ?? '').trim() !== '');
		if (those.length === 0) return row;
		const read = readCellsOfRow(
			those.map(([name]) => ownValue(row.extra, name)!),
			those.map(([name, column]) => headerSaidToBe(name, column)),
			those.map(([name]) => name),
			settings,
		);
		const typed = new Map(Object.entries(row.typed));
		const units = new Map(Object.entries(row.units ?? {}));
		const extra = new Map(Object.entries(row.extra ?? {}));
		const filled = (Object.entries(read.typed) as [ColumnName, string][]).filter(
			([column]) => row.typed[column] === undefined,
		);
		if (filled.length === 0) return row;
		for (const [column, text] of filled) {
			typed.set(column, text);
			const unit = read.units?.[column];
			if (unit !== undefined) units.set(column, unit);
		}
		for (const [name, column] of those)
			if (filled.some(([each]) => each === column.name) && ownValue(read.extra, name) === undefined) extra.delete(name);
		return rowWith(row, { typed, units, extra });
	});
}
