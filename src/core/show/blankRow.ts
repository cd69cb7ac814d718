import type { Row } from './row.ts';

/** Whether nothing is typed in a row, and nothing came with it: it is no print yet. */
export const isBlankRow = ({ typed, extra }: Pick<Row, 'typed' | 'extra'>): boolean =>
	Object.keys(typed).length === 0 && Object.keys(extra ?? {}).length === 0;

/** How many prints there are: rows that are not blank. */
export const countPrints = (rows: readonly Row[]): number => rows.filter((row) => !isBlankRow(row)).length;
