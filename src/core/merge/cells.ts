import type { Unit } from '../length/reading.ts';
import type { NamedSize } from '../length/size.ts';
import { barenessOf } from '../show/bareness.ts';
import { type ColumnName, hasUnit, kindOf } from '../show/columns.ts';
import { hashOfRow } from '../show/givenPicture.ts';
import type { Row } from '../show/row.ts';
import { sizePairs } from '../show/splitSize.ts';
import { madeBySpreadsheet, type SpreadsheetChange } from '../imports/madeBySpreadsheet.ts';
import { isSameTyped, type TypedText } from '../row/isSameTyped.ts';
import { ownValue } from '../values/ownValue.ts';
import { cellText } from './cellText.ts';

/** A cell as typed, with the unit of its bare numbers where it has one of its own. A blank one has no text. */
export interface CellValue {
	readonly text: string;
	readonly unit?: Unit | undefined;
}

/** A column of ours or of another program. */
export interface MergeColumn {
	readonly name: string;
	/** Whether it is one of another program, kept as it is. */
	readonly isExtra: boolean;
}

/** What the texts of a side hang on: the unit of its bare numbers and the names that are sizes. */
export interface Meaning {
	readonly unit: Unit;
	readonly sizes: readonly NamedSize[];
}

/** A cell of a row; blank where there is no row. */
export function cellOf(row: Row | undefined, { name, isExtra }: MergeColumn): CellValue {
	if (isExtra) return { text: ownValue(row?.extra, name) ?? '' };
	const column = name as ColumnName;
	return { text: row?.typed[column] ?? '', unit: row?.units?.[column] };
}

/**
 * Whether two rows have the same in a cell: one text but for what nobody can see, or one value, however it is spelled
 * and whether or not its unit stands with it, as it may when a file has been between.
 */
export function isSameCell(
	a: Row | undefined,
	b: Row | undefined,
	column: MergeColumn,
	meaningOfA: Meaning,
	meaningOfB: Meaning = meaningOfA,
): boolean {
	if (isOtherPicture(a, b, column)) return false;
	const [one, other] = [cellOf(a, column), cellOf(b, column)];
	if (one.text === other.text && one.unit === other.unit && meaningOfA.unit === meaningOfB.unit) return true;
	const [left, right] = [cellText(one.text), cellText(other.text)];
	if (column.isExtra || left === '' || right === '') return left === right;
	const name = column.name as ColumnName;
	if (left === right && !hasUnit(name)) return true;
	const [typed, otherTyped] = [typedText(a!, name, left, meaningOfA), typedText(b!, name, right, meaningOfB)];
	if (left === right && typed.unit === otherTyped.unit) return true;
	return isSameTyped(name, typed, otherTyped, meaningOfA.sizes);
}

/** Whether two rows were given two pictures, maybe of one name; of a row of a list it is not known. */
function isOtherPicture(a: Row | undefined, b: Row | undefined, { name, isExtra }: MergeColumn): boolean {
	if (isExtra || name !== 'picture file') return false;
	const [one, other] = [a && hashOfRow(a), b && hashOfRow(b)];
	return one !== undefined && other !== undefined && one !== other;
}

const typedText = (row: Row, name: ColumnName, text: string, meaning: Meaning): TypedText => ({
	text,
	unit: hasUnit(name) ? unitOfCell(row, name, meaning) : undefined,
});

/**
 * What a spreadsheet has made of a cell on its way, nobody having meant to change it; undefined where no spreadsheet makes
 * the one of the other.
 */
export function spreadsheetChangeOf(
	before: Row | undefined,
	after: Row | undefined,
	column: MergeColumn,
): SpreadsheetChange | undefined {
	const [was, is] = [cellOf(before, column), cellOf(after, column)];
	// The same figures in another unit are an edit, but for a fraction, which is inches until a spreadsheet makes a decimal of it.
	if (was.unit !== is.unit && !/[/½¼¾⅛⅜⅝⅞⅓⅔]/.test(was.text)) return undefined;
	return madeBySpreadsheet(cellText(was.text), cellText(is.text));
}

/** The unit in which a cell is read that names none; undefined where its text has all that it needs. */
export function unitOfCell(row: Row, column: ColumnName, { unit, sizes }: Meaning): Unit | '%' | undefined {
	const bareness = barenessOf(column, row.typed[column], sizes);
	if (bareness === undefined) return undefined;
	const stated = row.units?.[column];
	if (stated !== undefined) return stated;
	if (kindOf(column) === 'weight') return bareness === 'fraction' ? undefined : '%';
	if (bareness === 'fraction') return 'in';
	const pair: readonly ColumnName[] = sizePairs.find((columns) => columns.some((name) => name === column)) ?? [];
	const isBesideFraction = pair.some(
		(name) => row.units?.[name] === undefined && barenessOf(name, row.typed[name], sizes) === 'fraction',
	);
	return isBesideFraction ? 'in' : unit;
}
