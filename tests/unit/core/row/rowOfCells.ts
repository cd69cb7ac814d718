import { formatExact } from '../../../../src/core/length/formatLength.ts';
import { type Cells, sizeKeys } from '../../../../src/core/row/cells.ts';
import type { ColumnName } from '../../../../src/core/show/columns.ts';
import type { Row } from '../../../../src/core/show/row.ts';

const columnOf = (key: string) => key.replace(/[A-Z]/, (capital) => ` ${capital.toLowerCase()}`) as ColumnName;

/** A row whose typed texts, in mm, are read as these cells. */
export function rowOfCells(cells: Cells, id = 'row', order = 1): Row {
	const typed: Partial<Record<ColumnName, string>> = {};
	for (const key of [...sizeKeys, 'overlap', 'reveal', 'signingSpace', 'innerMount'] as const)
		if (cells[key] !== undefined) typed[columnOf(key)] = `${formatExact(cells[key], 'mm')} mm`;
	if (cells.shape) typed.shape = `${cells.shape.numerator}:${cells.shape.denominator}`;
	if (cells.mount.kind === 'fit' || cells.mount.kind === 'none') typed.mount = cells.mount.kind;
	if (cells.mount.kind === 'size')
		typed.mount = `${formatExact(cells.mount.size.width, 'mm')} x ${formatExact(cells.mount.size.height, 'mm')} mm`;
	const weight = cells.bottomWeight;
	if (weight?.kind === 'share') typed['bottom weight'] = `${(100 * weight.numerator) / weight.denominator} %`;
	if (weight?.kind === 'length') typed['bottom weight'] = `${formatExact(weight.more, 'mm')} mm`;
	if (weight?.kind === 'optical centre') typed['bottom weight'] = 'optical centre';
	return { id, order, typed };
}
