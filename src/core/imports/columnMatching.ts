import { type ColumnName, isColumnName } from '../show/columns.ts';

/**
 * What the columns of a file mean, by their headers as they stand: a column of ours, or none, which is kept with the rows
 * as it is.
 */
export type ColumnMatching = Readonly<Record<string, SaidMeaning>>;

/** A column of ours, or none; where sizes stand in it, it may say which of their two lengths stands first. */
export type SaidMeaning = ColumnName | 'none' | `${ColumnName} (${SizeOrder})`;

/** Which of the two lengths of a size stands first: the height or the width. */
type SizeOrder = 'h x w' | 'w x h';

/** A column as it was said to be. */
export interface SaidColumn {
	readonly name: ColumnName;
	/** Undefined: as its header has it. */
	readonly isHeightFirst: boolean | undefined;
}

/** What a column was said to be; undefined where it was said to be none, or that means no column. */
export function saidColumn(said: string): SaidColumn | undefined {
	const [, name = said, first] = /^(.*) \(?([hw]) ?[x×] ?[hw]\)?$/.exec(said) ?? [];
	return isColumnName(name) ? { name, isHeightFirst: first === undefined ? undefined : first === 'h' } : undefined;
}

/** A column of sizes with the order of their two lengths. */
export const withOrder = (name: ColumnName, isHeightFirst: boolean): SaidMeaning =>
	`${name} (${isHeightFirst ? 'h x w' : 'w x h'})`;

/** The columns that sizes in one cell may be of. */
export const sizeColumns: readonly ColumnName[] = ['picture width', 'mount', 'window width', 'paper'];

/** Where two columns of a file are said to be the same. */
export const saidTwice = (name: ColumnName): string =>
	`Two columns are said to be ${name}. Choose another for one of them, or leave one as it is.`;

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
