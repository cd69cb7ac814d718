import type { Row, RowId } from '../show/row.ts';

/** A row of a file, and the row of the show that is the same print. */
export interface MatchedRow {
	readonly there: Row;
	/** Undefined where the show has none. */
	readonly here: Row | undefined;
}

/** How a file names the print of a row: the print id that was typed, else the row's own name. */
export const printIdOf = ({ id, typed }: Row): string => typed['print id'] ?? id;

/** What is known of names, so that two prints of one title are not taken for one. */
export interface KnownNames {
	/** The rows that were exchanged before, by their names in the show and their print ids: both sides name them so. */
	readonly exchanged: ReadonlySet<string>;
	/** The rows of the file that it gives no print id. */
	readonly unnamed: ReadonlySet<RowId>;
}

/**
 * Finds for each row of a file the row of the show that is the same print: by its print id, then, for those that are
 * left on both sides, by number and title where only one row on each side has them.
 */
export function matchRows(here: readonly Row[], there: readonly Row[], known: KnownNames): readonly MatchedRow[] {
	// Of rows with the same print id the first is meant; the last to be set stays.
	const byPrintId = new Map(here.toReversed().map((row) => [printIdOf(row), row]));
	const byId = new Map(here.map((row) => [row.id, row]));
	const taken = new Set<RowId>();
	const byName = there.map((row): MatchedRow => {
		const found = [byPrintId.get(printIdOf(row)), byId.get(row.id)].find((each) => each && !taken.has(each.id));
		if (found) taken.add(found.id);
		return { there: row, here: found };
	});
	const left = onlyOnes(here.filter(({ id }) => !taken.has(id)));
	const wanted = onlyOnes(byName.flatMap((match) => (match.here ? [] : [match.there])));
	return byName.map((match) => {
		if (match.here) return match;
		const key = numberAndTitle(match.there);
		const found = key !== undefined && wanted.get(key) === match.there ? left.get(key) : undefined;
		return found && mayBeSame(found, match.there, known) ? { ...match, here: found } : match;
	});
}

/** Whether two rows of one number and title may be one print, for all that their names say. */
function mayBeSame(here: Row, there: Row, { exchanged, unnamed }: KnownNames): boolean {
	if (unnamed.has(there.id)) return true;
	return !exchanged.has(here.id) && !exchanged.has(printIdOf(there)) && !areNamedApart(here, there);
}

/** Whether both were given print ids by a person: then they are two prints, whatever their titles. */
const areNamedApart = (a: Row, b: Row): boolean =>
	a.typed['print id'] !== undefined && b.typed['print id'] !== undefined;

function numberAndTitle({ typed }: Row): string | undefined {
	const words = [typed.number, typed.title].map((text) => text?.trim().toLowerCase() ?? '');
	return words.every((text) => text === '') ? undefined : JSON.stringify(words);
}

/** The rows by number and title, without those that share them. */
function onlyOnes(rows: readonly Row[]): ReadonlyMap<string, Row> {
	const found = new Map<string, Row | undefined>();
	for (const row of rows) {
		const key = numberAndTitle(row);
		if (key !== undefined) found.set(key, found.has(key) ? undefined : row);
	}
	return new Map([...found].filter((entry): entry is [string, Row] => entry[1] !== undefined));
}
