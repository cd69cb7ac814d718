import { pictureColumn, resolutionColumn } from './resolutionColumn.ts';
import { isFramingColumn } from './framingColumns.ts';
import { type ColumnName, kindOf } from '../show/columns.ts';
import type { ViewColumn } from './columnView.ts';
import type { Sort } from './sortRows.ts';

/** Columns of words in which numbers stand, as a rule. */
const numbered: readonly ViewColumn[] = ['number', 'year', 'hang order'];

/** The two ways of a column, in words: figures from the least, words from A, what there is to know from the gravest. */
export function sortWords(column: ViewColumn): Readonly<Record<Sort['way'], string>> {
	if (column === 'findings') return { up: 'most serious first', down: 'most serious last' };
	if (column === pictureColumn) return { up: 'with a picture first', down: 'with a picture last' };
	const isFigure =
		column === 'steps' ||
		column === 'cost' ||
		column === 'pixels' ||
		column === resolutionColumn ||
		isFramingColumn(column) ||
		numbered.includes(column) ||
		kindOf(column satisfies ColumnName) !== 'text';
	return isFigure ? { up: 'smallest first', down: 'largest first' } : { up: 'A to Z', down: 'Z to A' };
}
