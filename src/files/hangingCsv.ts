import { formatExact } from '../core/length/formatLength.ts';
import type { Settings } from '../core/settings/settings.ts';
import { fixingWords, type HangingLine } from '../core/walls/hangingList.ts';
import { csvText, headerIn } from './csvText.ts';

/** The columns of the hanging list; lengths are in the show's unit, which stands behind the name. */
export const hangingColumns = [
	...(['wall', 'order', 'print'] as const),
	...(['left', 'centre', 'mark', 'mark left', 'mark height', 'from last'] as const),
	...(['weight (kg)', 'fixing'] as const),
] as const;

const lengths: readonly string[] = ['left', 'centre', 'mark left', 'mark height', 'from last'];

/** The hanging list as delimited text, a print each, wall by wall from the left. @param nameOf what a print is called */
export function writeHangingList(
	lines: readonly HangingLine[],
	settings: Settings,
	nameOf: (place: number) => string,
): string {
	const { unit } = settings;
	const header = headerIn(unit, hangingColumns, lengths);
	const records = lines.map((line) => [
		line.hung.wall.name,
		`${line.number}`,
		nameOf(line.place),
		formatExact(line.print.left, unit),
		formatExact(line.print.centre, unit),
		line.mark.what,
		formatExact(line.mark.left, unit),
		formatExact(line.mark.height, unit),
		line.fromLast === undefined ? '' : formatExact(line.fromLast, unit),
		line.weightKg === undefined ? '' : line.weightKg.toFixed(3),
		fixingWords(line, settings),
	]);
	return csvText([header, ...records]);
}
