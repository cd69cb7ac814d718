import { greatestWall } from '../length/length.ts';
import { parseLength } from '../length/parseLength.ts';
import { parseSize } from '../length/parseSize.ts';
import { isProblem, type Reading, type Unit } from '../length/reading.ts';
import type { NamedSize } from '../length/size.ts';
import { type ColumnName, kindOf } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { sizePairs } from '../show/splitSize.ts';
import { isSameValue } from '../values/isSameValue.ts';

/** What a cell holds under a unit; undefined where it cannot be read, or does not depend on the unit. */
function readUnder(unit: Unit, column: ColumnName, text: string, sizes: readonly NamedSize[]): unknown {
	switch (kindOf(column)) {
		case 'length':
		case 'space':
			return valueOf(parseLength(text, { unit, allowZero: true, greatest: greatestWall }));
		case 'size':
		case 'mount':
			return valueOf(parseSize(text, { unit, sizes }));
		default:
			return undefined; // a bare bottom weight is per cent under every unit
	}
}

const valueOf = <Value>(reading: Reading<Value>): Value | undefined => (isProblem(reading) ? undefined : reading.value);

/**
 * A row whose typed lengths stay what they are when the show changes its unit: cells whose bare numbers would be read
 * as another length get the old unit as their own.
 * @returns the same object if no cell depends on the unit
 */
export function pinRow(row: Row, from: Unit, to: Unit, sizes: readonly NamedSize[]): Row {
	const pinned = (Object.entries(row.typed) as [ColumnName, string][])
		.filter(([column]) => row.units?.[column] === undefined && !isMadeInches(row, column))
		.filter(([column, text]) => !isSameValue(readUnder(from, column, text, sizes), readUnder(to, column, text, sizes)))
		.map(([column]): [ColumnName, Unit] => [column, from]);
	return pinned.length === 0 ? row : { ...row, units: { ...row.units, ...Object.fromEntries(pinned) } };
}

/** Whether the other length of the cell's size is a bare fraction, which makes this one inches under every unit. */
function isMadeInches({ typed, units }: Row, column: ColumnName): boolean {
	const pair = sizePairs.find((columns) => columns.some((name) => name === column));
	if (!pair) return false;
	const other = pair[0] === column ? pair[1] : pair[0];
	const own = units?.[other];
	const context = own === undefined ? { unit: 'mm' as const } : { unit: own, isUnitStated: true };
	return valueOf(parseLength(typed[other] ?? '', context))?.isBareFraction === true;
}
