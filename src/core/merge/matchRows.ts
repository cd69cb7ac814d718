import type { Row, RowId } from '../show/row.ts';
import { cellText } from './cellText.ts';
import { bestPairs, likeness, type LikenessOptions } from './likeness.ts';
import { isSameNumberKey, numberKey, titleKey, titleKeys } from './printWords.ts';

/** A row of a file, and the row of the show that is the same print. */
export interface MatchedRow {
	readonly there: Row;
	/** Undefined where the show has none. */
	readonly here: Row | undefined;
	/** Whether it was found by what it says, not by a name that both know: then its print id was altered, or is not there. */
	readonly isByWords: boolean;
}

/** How a file names the print of a row: the print id that was typed, else the row's own name. */
export const printIdOf = ({ id, typed }: Row): string => cellText(typed['print id'] ?? id);

/** What is known of names, so that two prints of one title are not taken for one. */
export interface KnownNames extends LikenessOptions {
	/** The rows that were exchanged before, by their print ids then: both sides name them so. */
	readonly exchanged: ReadonlyMap<string, RowId>;
	/** The rows of the file that it gives no print id. */
	readonly unnamed: ReadonlySet<RowId>;
	/** The rows of the file that are no print: totals. */
	readonly totals: ReadonlySet<RowId>;
}

/**
 * Finds for each row of a file the row of the show that is the same print: by the print id that it had when it was
 * exchanged, by the one that it has now, by its name, by a print id whose zeros a spreadsheet has taken. Those that are
 * left on both sides are the same by a title and maker that only one of each has; of prints that share a title, by what
 * else agrees; then by their number, where the numbers of the file are those of here; then by what else agrees.
 */
export function matchRows(here: readonly Row[], there: readonly Row[], known: KnownNames): readonly MatchedRow[] {
	const { exchanged } = known;
	const byId = new Map(here.map((row) => [row.id, row]));
	const byPrintId = grouped(here.toReversed(), printIdOf);
	const found = new Map<Row, Row>();
	const matched = new Set<RowId>();
	const pair = (row: Row, other: Row) => {
		found.set(row, other);
		matched.add(other.id);
	};
	const match = (findHere: (row: Row) => Row | undefined) => {
		for (const row of there) {
			const other = found.has(row) ? undefined : findHere(row);
			if (other !== undefined && !matched.has(other.id)) pair(row, other);
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
	const left = (): readonly Row[] => here.filter(({ id }) => !matched.has(id));
	// A row that was exchanged by a name that only the file still has was removed here: it is no other print.
	const isOpen = (row: Row) =>
		!found.has(row) && !known.totals.has(row.id) && (known.unnamed.has(row.id) || !exchanged.has(printIdOf(row)));
	const open = (): readonly Row[] => there.filter(isOpen);
	const asFound = () => there.map((row) => ({ there: row, here: found.get(row), isByWords: false }));
	if (left().length === 0) return asFound(); // the keys of a large file are work
	for (const [one, other] of onlyOnes(left(), open(), printNumber)) pair(other, one);
	const isByName = new Set(found.keys());
	for (const [one, other] of byTitle(left(), open(), known)) pair(other, one);
	for (const [one, other] of byNumber(left(), open(), [...found], known)) pair(other, one);
	for (const [one, other] of bestPairs(left(), open().filter(isNameless), known, mostlyAlike)) pair(other, one);
	return there.map((row) => ({ there: row, here: found.get(row), isByWords: found.has(row) && !isByName.has(row) }));
}

type Pair = readonly [here: Row, there: Row];

/** Rows that are the only ones on their side with a key. */
function onlyOnes(
	here: readonly Row[],
	there: readonly Row[],
	keyOf: (row: Row) => string | undefined,
): readonly Pair[] {
	const [ours, theirs] = [grouped(here, keyOf), grouped(there, keyOf)];
	return [...theirs].flatMap(([key, group]): Pair[] => {
		const others = ours.get(key) ?? [];
		return group.length === 1 && others.length === 1 ? [[others[0]!, group[0]!]] : [];
	});
}

/** Prints of one title, whatever letters of it a spreadsheet has lost, whose makers do not differ. */
function byTitle(here: readonly Row[], there: readonly Row[], known: KnownNames): readonly Pair[] {
	if (!known.inFile.includes('title')) return [];
	const pairs: Pair[] = [];
	const paired = new Set<Row>();
	for (const keyOf of titleKeys) {
		const ours = grouped(
			here.filter((row) => !paired.has(row)),
			(row) => keyOf.here(row.typed.title),
		);
		const theirs = grouped(
			there.filter((row) => !paired.has(row)),
			(row) => keyOf.there(row.typed.title),
		);
		for (const [key, group] of theirs) {
			const others = ours.get(key) ?? [];
			const isSole = group.length === 1 && others.length === 1;
			for (const each of bestPairs(others, group, known, isSole ? isSameMaker : isSameCopy)) {
				pairs.push(each);
				each.forEach((row) => paired.add(row));
			}
		}
	}
	return pairs;
}

type May = (alike: ReturnType<typeof likeness>) => boolean;

const isSameMaker: May = ({ differs }) => !differs.has('maker');

/** Of several prints of one title and maker, another edition number is another print. */
const isSameCopy: May = ({ differs }) => !differs.has('maker') && !differs.has('edition');

/** How many of its cells a row without a name must have in common with the one that it is, and which share of them. */
const [fewestAlike, mostAlike] = [3, 0.8];
const mostlyAlike: May = ({ same, differs }) => same >= fewestAlike && same >= mostAlike * (same + differs.size);

/** Of the rows that are found already, so many must have the number that they have here: else the list was renumbered. */
const numbersHold = 0.9;
/** Half of the cells, and two at least, must agree where the titles do not. */
const [fewestBeside, half] = [2, 0.5];

/** Prints of one number, where the list was not renumbered. */
function byNumber(
	here: readonly Row[],
	there: readonly Row[],
	found: readonly (readonly [there: Row, here: Row])[],
	known: KnownNames,
): readonly Pair[] {
	if (!known.inFile.includes('number')) return [];
	const numbered = found.filter(([one, other]) => numberKey(one) !== undefined && numberKey(other) !== undefined);
	const agreeing = numbered.filter(([one, other]) => isSameNumberKey(one, other)).length;
	if (agreeing < numbersHold * numbered.length) return [];
	return onlyOnes(here, there, numberKey).filter(([one, other]) => {
		const alike = likeness(one, other, known);
		if (alike.differs.has('maker')) return false;
		const areTitled = titleKey(one.typed.title) !== undefined && titleKey(other.typed.title) !== undefined;
		if (!areTitled || !alike.differs.has('title')) return true;
		const { same, differs } = alike;
		return same >= fewestBeside && same >= half * (same + differs.size) && !differs.has('edition');
	});
}

const isNameless = ({ typed }: Row): boolean => titleKey(typed.title) === undefined;

/** A print id that is a number, without the zeros before it. */
const printNumber = (row: Row): string | undefined => /^0*(\d+)$/.exec(printIdOf(row))?.[1];

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
