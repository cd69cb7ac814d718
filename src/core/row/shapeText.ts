import { asTyped } from '../show/asTyped.ts';
import type { Row } from '../show/row.ts';
import type { Cells } from './cells.ts';

/** The shape of a row as it can be typed: as it is, else that of its file; undefined where it has none. */
export function shapeTextOf(row: Row, { shape, isShapeOfFile }: Pick<Cells, 'shape' | 'isShapeOfFile'>) {
	if (!shape) return undefined;
	return isShapeOfFile ? `${shape.numerator}:${shape.denominator}` : asTyped(row, 'shape').trim();
}
