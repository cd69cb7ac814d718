import { parseLength } from '../length/parseLength.ts';
import { parseSize } from '../length/parseSize.ts';
import { parseWeight } from '../length/parseWeight.ts';
import { isSameValue } from '../values/isSameValue.ts';
import { type ColumnName, kindOf } from './columns.ts';
import type { Row } from './row.ts';

/**
 * What was typed into a cell, as it can be typed into any other and mean the same: where its bare numbers are in a unit
 * of their own, with that unit.
 */
export function asTyped(row: Pick<Row, 'typed' | 'units'>, column: ColumnName): string {
	const text = row.typed[column] ?? '';
	const unit = row.units?.[column];
	if (text === '' || unit === undefined) return text;
	const read = (typed: string): unknown => {
		if (kindOf(column) === 'weight') return parseWeight(typed, unit);
		const isSize = kindOf(column) === 'size' || kindOf(column) === 'mount';
		const reading = isSize ? parseSize(typed, { unit }) : parseLength(typed, { unit, allowZero: true });
		return 'value' in reading ? { ...reading.value, isBareFraction: undefined } : undefined;
	};
	const full = `${text} ${unit}`;
	const meaning = read(full);
	return meaning !== undefined && isSameValue(meaning, read(text)) ? full : text;
}
