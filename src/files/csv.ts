/** Rows as delimited text: what is written can be read again, with the same texts and the same meaning. */
export { type ComparedResults, compareResults, type EditedResult } from './compareResults.ts';
export { type MakeId, readRows, type ResultCell, type RowsOfFile } from './readRows.ts';
export { type WorkedOutRows, writeRows, type WriteOptions, writingRows } from './writeRows.ts';
