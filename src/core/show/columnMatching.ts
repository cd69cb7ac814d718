import type { ColumnName } from './columns.ts';

/**
 * What the columns of a file mean, by their headers as they stand: a column of ours, or none, which is kept with the rows
 * as it is.
 */
export type ColumnMatching = Readonly<Record<string, ColumnName | 'none'>>;
