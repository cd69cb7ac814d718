import type { Row } from './row.ts';

/** Whether nothing is typed in a row: nothing can be cut for it. A file may have brought other columns with it. */
export const isUntyped = ({ typed }: Pick<Row, 'typed'>): boolean => Object.keys(typed).length === 0;

/** Whether nothing is typed in a row, and nothing came with it: it is no print yet. */
export const isBlankRow = (row: Pick<Row, 'typed' | 'extra'>): boolean =>
	isUntyped(row) && Object.keys(row.extra ?? {}).length === 0;

/** The rows that are prints: those that are not blank. The same list where all of them are. */
export const printsOf = (rows: readonly Row[]): readonly Row[] =>
	rows.some(isBlankRow) ? rows.filter((row) => !isBlankRow(row)) : rows;

/** How many prints there are. */
export const countPrints = (rows: readonly Row[]): number => printsOf(rows).length;

/** Of one value for each row, those of the prints. */
export const ofPrints = <Value>(rows: readonly Row[], values: readonly Value[]): readonly Value[] =>
	rows.some(isBlankRow) ? values.filter((_, place) => !isBlankRow(rows[place]!)) : values;
