import type { Unit } from '../length/reading.ts';
import type { ColumnName } from './columns.ts';

/** Names a row for as long as it exists; written to the CSV as `print id` where none was typed. */
export type RowId = string;

/** The typed texts of a row, by column. A blank cell has no entry. */
export type Typed = Readonly<Partial<Record<ColumnName, string>>>;

/** One print, as typed. Nothing worked out is kept in it. */
export interface Row {
	readonly id: RowId;
	/** Rows of a show stand in ascending order of this number; it is unique in the show and need not be whole. */
	readonly order: number;
	readonly typed: Typed;
	/**
	 * The unit of the bare numbers of a cell, where the cell has one of its own: from a CSV header, or from before the
	 * show changed its unit. Elsewhere a bare number is in the show's unit. A bare fraction is not read under mm or cm.
	 */
	readonly units?: Readonly<Partial<Record<ColumnName, Unit>>>;
	/** The picture that the row was given. */
	readonly picture?: PictureOfRow;
	/** Columns of an imported CSV that are not ours, by header, kept and given back. */
	readonly extra?: Readonly<Record<string, string>>;
}

/** Which picture a row was given. It counts as long as the cell `picture file` still names that file. */
export interface PictureOfRow {
	/** SHA-256 of the file's bytes, in hexadecimal. */
	readonly hash: string;
	/** The name of the file. */
	readonly file: string;
}

/** New texts for some cells of a row; an empty text clears the cell. */
export type CellTexts = Readonly<Partial<Record<ColumnName, string>>>;
