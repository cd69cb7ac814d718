import type { ColumnName } from '../show/columns.ts';
import type { Row, RowId } from '../show/row.ts';
import { cellText } from './cellText.ts';

/** A row of a file, and the row of the show that is the same print. */
export interface MatchedRow {
	readonly there: Row;
	/** Undefined where the show has none. */
	readonly here: Row | undefined;
}

/** How a file names the print of a row: the print id that was typed, else the row's own name. */
export const printIdOf = ({ id, typed }: Row): string => cellText(typed['print id'] ?? id);

/** What is known of names, so that two prints of one title are not taken for one. */
export interface KnownNames {
	/** The rows that were exchanged before, by their print ids then: both sides name them so. */
	readonly exchanged: ReadonlyMap<string, RowId>;
	/** The rows of the file that it gives no print id. */
	readonly unnamed: ReadonlySet<RowId>;
	/** The columns that the file has. */
	readonly inFile: readonly ColumnName[];
}

/**
 * Finds for each row of a file the row of the show that is the same print: by the print id that it had when it was
 * exchanged, by the one that it has now, by its name; then, for those that are left on both sides, where only one row on
 * each side has them, by a print id whose noughts a spreadsheet has taken, and by number and title.
 */
export function matchRows(here: readonly Row[], there: readonly Row[], known: KnownNames): readonly MatchedRow[] {
	const { exchanged } = known;
	const byId = new Map(here.map((row) => [row.id, row]));
	const byPrintId = grouped(here.toReversed(), printIdOf);
	const found = new Map<Row, Row>();
	const matched = new Set<RowId>();
	const match = (findHere: (row: Row) => Row | undefined) => {
		for (const row of there) {
			const other = found.has(row) ? undefined : findHere(row);
			if (other === undefined || matched.has(other.id)) continue;
			found.set(row, other);
			matched.add(other.id);
		}
	};
	match((row) => byId.get(exchanged.get(printIdOf(row)) ?? ''));
	// Of rows with the same print id the first is meant, for a second one the second.
	match((row) => {
		const group = byPrintId.get(printIdOf(row));
		while (group && matched.has(group.at(-1)?.id ?? '')) group.pop();
		return group?.at(-1);
	});
	match((row) => byId.get(row.id));
	const matchOnlyOnes = (keyOf: (row: Row) => string | undefined, maySuit: (here: Row, there: Row) => boolean) => {
		const left = grouped(
			here.filter(({ id }) => !matched.has(id)),
			keyOf,
		);
		if (left.size === 0) return; // the keys of a large file are work
		const wanted = grouped(
			there.filter((row) => !found.has(row)),
			keyOf,
		);
		match((row) => {
			const key = keyOf(row);
			const isSole = key !== undefined && wanted.get(key)?.length === 1;
			const [one, ...others] = isSole ? (left.get(key) ?? []) : [];
			return one && others.length === 0 && maySuit(one, row) ? one : undefined;
		});
	};
	matchOnlyOnes(printNumber, () => true);
	const words = (['number', 'title'] as const).filter((name) => known.inFile.includes(name));
	matchOnlyOnes(
		(row) => wordsOf(row, words),
		(one, other) => mayBeSame(one, other, known),
	);
	return there.map((row) => ({ there: row, here: found.get(row) }));
}

/** Whether two rows of one number and title may be one print, for all that their names say. */
function mayBeSame(here: Row, there: Row, { exchanged, unnamed }: KnownNames): boolean {
	if (unnamed.has(there.id)) return true;
	const [isNamedHere, isNamedThere] = [here, there].map(({ typed }) => typed['print id'] !== undefined);
	// Where a person has given both print ids, they are two prints, whatever their titles.
	if (exchanged.has(printIdOf(there)) || (isNamedHere && isNamedThere)) return false;
	// One that was exchanged is known to both sides by its name, unless one of them has given it a print id since.
	return isNamedThere === true || ![printIdOf(here), here.id].some((name) => exchanged.has(name));
}

/** A print id that is a number, without the noughts before it. */
const printNumber = (row: Row): string | undefined => /^0*(\d+)$/.exec(printIdOf(row))?.[1];

/** The texts of some columns, by which a print is known; undefined where all are blank. */
function wordsOf({ typed }: Row, columns: readonly ColumnName[]): string | undefined {
	const words = columns.map((column) =>
		cellText(typed[column] ?? '')
			.replaceAll(/\s+/g, ' ')
			.toLowerCase(),
	);
	return words.every((text) => text === '') ? undefined : JSON.stringify(words);
}

/** The rows that share a key, in their order. */
function grouped(rows: readonly Row[], keyOf: (row: Row) => string | undefined): ReadonlyMap<string, Row[]> {
	const groups = new Map<string, Row[]>();
	for (const row of rows) {
		const key = keyOf(row);
		if (key === undefined) continue;
		const group = groups.get(key);
		if (group) group.push(row);
		else groups.set(key, [row]);
	}
	return groups;
}
