import type { ColumnName } from '../show/columns.ts';

/** A length in units, as it was worked out: not always a whole number of them. */
export type Measure = number;

/** A size as it lies. */
export interface Sides {
	readonly width: Measure;
	readonly height: Measure;
}

/** A border by its name. */
export type BorderKey = 'side' | 'top' | 'bottom';

/** Borders by their names. */
export type Borders = Readonly<Partial<Record<BorderKey, Measure>>>;

/** An axis of a row. */
export type Axis = 'width' | 'height';

/** A share of something, in per cent. */
export interface Share {
	readonly percent: number;
}

/** A number of things, or a place among them from 1. */
export interface Count {
	readonly count: number;
}

/** An area. */
export interface Area {
	readonly mm2: number;
}

/** A weight. */
export interface Weight {
	readonly kg: number;
}

/** A length that is usual, a round one in the show's unit. It is said, and is no figure of the row: another unit has another. */
export interface Usual {
	readonly usual: number;
}

/** Columns that may be typed or cleared. They are said, and are no figure of the row: they are ways out. */
export interface Columns {
	readonly columns: readonly ColumnName[];
}

/** What something is called. It is said, and is no figure of the row: a name that changes must not bring a look back. */
export interface Said {
	readonly said: string;
}

/** Another print of the show: known by its id, whatever it is called. */
export interface OtherPrint extends Said {
	readonly id: string;
}
