import { formatExact } from '../core/length/formatLength.ts';
import type { Unit } from '../core/length/reading.ts';
import type { BoardToCut } from '../core/sheets/cutList.ts';
import type { NameOfBlank } from '../core/sheets/layout.ts';
import { csvText, headerIn } from './csvText.ts';

const lengths = ['width', 'height'] as const;

/** The cut list as delimited text, a line for each size: exact lengths in the show's unit, and whom the pieces are for. */
export function writeCutList(boards: readonly BoardToCut[], unit: Unit, nameOf: NameOfBlank): string {
	const header = headerIn(unit, ['kind', 'name', ...lengths, 'part', 'pieces', 'prints'], lengths);
	const records = boards.flatMap(({ name, material, lines }) =>
		lines.map(({ width, height, part, pieces }) => [
			...[material ?? 'board', name, formatExact(width, unit), formatExact(height, unit), part, `${pieces.length}`],
			pieces.map(({ blank, sheet }) => nameOf(blank, sheet)).join('; '),
		]),
	);
	return csvText([header, ...records]);
}
