import { changesFigures } from '../../core/harmonise/changesFigures.ts';
import type { HarmonisedRow } from '../../core/harmonise/harmonise.ts';
import type { RowResult } from '../../core/findings/rowResult.ts';
import { type Length, length } from '../../core/length/length.ts';
import type { Row } from '../../core/show/row.ts';
import { nameOfPrint } from '../../core/show/nameOfPrint.ts';

/** What harmonising makes of a print: it changes, it comes out the same, or why it is left alone. */
export type Standing = 'changes' | 'same' | 'stopped' | 'no mount' | 'fits none';

/** One print of a choice, with what is shown of it. */
export interface HarmonyRow {
	readonly name: string;
	readonly row: Row;
	readonly standing: Standing;
	readonly harmonised: HarmonisedRow;
}

/** What stands in the place of a size where a print is left as it is. */
export const standingWords: Readonly<Record<Exclude<Standing, 'changes'>, string>> = {
	same: 'Stays the same',
	stopped: 'Left alone: can’t be cut yet',
	'no mount': 'Left alone: no mount',
	'fits none': 'No size fits',
};

/** The prints of a choice in their order; one that is no longer in the show is left out. */
export function harmonyRows(
	harmonised: readonly HarmonisedRow[],
	rows: readonly Row[],
	results: readonly RowResult[],
): readonly HarmonyRow[] {
	const places = new Map(rows.map(({ id }, index) => [id, index]));
	return harmonised.flatMap((each) => {
		const index = places.get(each.id);
		const row = index === undefined ? undefined : rows[index];
		if (index === undefined || row === undefined) return [];
		const standing = standingOf(each, results[index]);
		return [{ name: nameOfPrint(row, index), row, standing, harmonised: each }];
	});
}

/** By how much the long side of a print changes at most. */
export const mostDifference = (rows: readonly HarmonyRow[]): Length =>
	length(Math.max(0, ...rows.map(({ harmonised }) => harmonised.difference ?? 0)));

function standingOf(harmonised: HarmonisedRow, result: RowResult | undefined): Standing {
	if (changesFigures(harmonised)) return 'changes';
	if (harmonised.size !== undefined) return 'same';
	if (result?.hasMount === false) return 'no mount';
	return result?.isStopped ? 'stopped' : 'fits none';
}
