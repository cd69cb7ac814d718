import type { ColumnName } from '../show/columns.ts';

/**
 * What the columns of a file mean, by their headers as they stand: a column of ours, or none, which is kept with the rows
 * as it is.
 */
export type ColumnMatching = Readonly<Record<string, ColumnName | 'none'>>;

/** Where two columns of a file are said to be the same. */
export const saidTwice = (name: ColumnName): string =>
	`Two columns are said to be ${name}: choose another for one of them, or keep one as it is.`;

/**
 * What to suggest for columns in doubt: for each the likeliest that no column before it, and none that is sure, has.
 * @param sure what is known already
 */
export function suggestColumns(
	guesses: readonly (readonly ColumnName[])[],
	sure: readonly ColumnName[],
): readonly (ColumnName | 'none')[] {
	const taken = new Set(sure);
	return guesses.map((names) => {
		const free = names.find((name) => !taken.has(name));
		if (free !== undefined) taken.add(free);
		return free ?? 'none';
	});
}
