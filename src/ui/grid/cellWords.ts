import { askableKeys, whyItIsSo } from '../../core/reasons/whyItIsSo.ts';
import { saidTogether } from '../../core/findings/together.ts';
import type { RowSource } from './cellView.ts';
import { columnOfFindingCell, type GridColumn } from './gridColumns.ts';

/**
 * What is heard of a cell besides what it shows: how a size that was not typed comes about, and what is said of the
 * cell; at the number, all findings of the print.
 */
export function cellWords({ key, column, solved }: GridColumn, { row, result, settings }: RowSource): string {
	const asked = askableKeys.find((each) => each === solved);
	const isTyped = column !== undefined && row.typed[column] !== undefined;
	const why = asked === undefined || isTyped ? undefined : whyItIsSo(result, asked, settings);
	const sentences = saidTogether(result.findings, settings)
		.filter(({ cells }) => key === 'number' || cells.some((cell) => columnOfFindingCell(cell) === key))
		.map(({ message }) => message);
	return [why, ...sentences].filter((sentence) => sentence !== undefined).join(' ');
}
