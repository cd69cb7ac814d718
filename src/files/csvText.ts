import Papa from 'papaparse';
import type { Unit } from '../core/length/reading.ts';
import { guardCell } from './formulaGuard.ts';

/** A list as delimited text, its header first: no cell of it is run by a spreadsheet. */
export const csvText = (records: readonly (readonly string[])[]): string => {
	const cells = records.map((record) => record.map(guardCell));
	return `${Papa.unparse(cells, { newline: '\r\n' })}\r\n`;
};

/** The header of a list: the show's unit stands behind the name of each column of lengths. */
export const headerIn = (unit: Unit, names: readonly string[], lengths: readonly string[]): readonly string[] =>
	names.map((name) => (lengths.includes(name) ? `${name} (${unit})` : name));
