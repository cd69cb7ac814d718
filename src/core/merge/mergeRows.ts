import { isBlankRow } from '../show/blankRow.ts';
import { type ColumnName, columns, sharedColumns } from '../show/columns.ts';
import { distinctRows } from '../show/distinctRows.ts';
import type { Row, RowId } from '../show/row.ts';
import type { SpreadsheetChange } from '../imports/madeBySpreadsheet.ts';
import { type CellValue, cellOf, isSameCell, type Meaning, type MergeColumn, spreadsheetChangeOf } from './cells.ts';
import { type Doubt, doubtsOf } from './doubts.ts';
import type { Exchange } from './exchange.ts';
import { type MatchedRow, matchRows, printIdOf } from './matchRows.ts';
import { mergeOrder, type OrderDifference } from './mergeOrder.ts';
import { mendedRow } from './mendedRow.ts';
import { nearestExchange } from './nearestExchange.ts';

/** Columns that lists from before they were there do not have. */
const newerColumns: readonly ColumnName[] = [
	...(['medium', 'picture file', 'pixels', 'year', 'net', 'value', 'stage'] as const),
];

/** One of the two sides: the show that is open, or the file. */
export type Side = 'here' | 'there';

/** A cell that differs. */
export interface CellDifference {
	readonly column: MergeColumn;
	readonly here: CellValue;
	readonly there: CellValue;
	/** The text as which it came, where a spreadsheet had made a date or a time of what stands in `there`. */
	readonly cameAs?: string | undefined;
	/** What both began with; undefined where that is not known. */
	readonly base: CellValue | undefined;
	/** Who has changed it since; 'unknown' where that cannot be told. */
	readonly changedBy: Side | 'both' | 'unknown';
	/**
	 * Why nobody may have meant it, or why it needs one answer for all: a spreadsheet has made something else of what stood
	 * there, the print ids of the file were altered, its numbers only count its lines, or its column is not here yet.
	 */
	readonly aside?: SpreadsheetChange | 'print id' | 'numbering' | 'new column';
}

/** A print that differs. */
export type RowDifference =
	| { readonly kind: 'changed'; readonly id: RowId; readonly here: Row; readonly cells: readonly CellDifference[] }
	| {
			readonly kind: 'added';
			readonly id: RowId;
			readonly there: Row;
			/** Why it may be no print of its own: then it is left out unless it is asked for. */
			readonly doubt?: Doubt;
	  }
	/** The file no longer has it. */
	| { readonly kind: 'removed there'; readonly id: RowId; readonly here: Row; readonly isChangedHere: boolean }
	/** The show no longer has it. */
	| { readonly kind: 'removed here'; readonly id: RowId; readonly there: Row; readonly isChangedThere: boolean };

/** How the rows of a file differ from those of a show. */
export interface Merge {
	/** The rows that differ, in the order of the file; those that the file lacks come last. */
	readonly rows: readonly RowDifference[];
	readonly order: OrderDifference;
	/** How many rows of the file are here, the same. */
	readonly same: number;
	/** How many rows of the show the file lacks, as it did before: they stay. */
	readonly onlyHere: number;
	/** The exchange that the file comes from; undefined where there was none. */
	readonly base: Exchange | undefined;
	/** Whether the file, and the one before it, has all that a show has, so that a row that it lacks was removed. */
	readonly isComplete: boolean;
	/** The rows of the file, by the names that they have in the show, as they will be told apart from later edits. */
	readonly fileRows: readonly Row[];
}

/** The rows of a file, read under the unit of the show. */
export interface RowsThere {
	readonly rows: readonly Row[];
	/** The columns that the file has; it says nothing of others. */
	readonly columns: readonly ColumnName[];
	/** The rows that the file gives no print id; their names were made up as it was read. */
	readonly unnamed?: readonly RowId[];
	/** The rows that read like the sum under a list. */
	readonly totals?: readonly RowId[];
}

/**
 * Compares the rows of a file with those of a show, against the exchange that the file comes from.
 * @param exchanges those that stand, newest first
 * @param makeId names a row of the file whose name is taken
 */
export function mergeRows(
	here: readonly Row[],
	{ rows, columns: inFile, unnamed = [], totals = [] }: RowsThere,
	exchanges: readonly Exchange[],
	meaning: Meaning,
	makeId: () => RowId,
): Merge {
	const exchanged = namesExchanged(exchanges);
	const known = { exchanged, unnamed: new Set(unnamed), totals: new Set(totals), inFile, meaning };
	const found = matchRows(here, distinctRows(rows, makeId), known);
	const doubts = doubtsOf(here, found, known);
	const matches = named(found, here, exchanged, makeId);
	const asRead = matches.map(({ there }) => there);
	const base = nearestExchange(exchanges, asRead, inFile, meaning);
	const baseMeaning = { ...meaning, unit: base?.unit ?? meaning.unit };
	const bases = new Map(base?.rows.map((row) => [row.id, row]));
	const hasBase = new Set<string>(base?.columns ?? columns.map(({ name }) => name));
	const isUsed = (name: ColumnName) => [...here, ...bases.values()].some(({ typed }) => typed[name] !== undefined);
	const mayLack = (name: ColumnName) => newerColumns.includes(name) && !isUsed(name);
	const isComplete = sharedColumns.every(({ name }) => (inFile.includes(name) && hasBase.has(name)) || mayLack(name));
	const differences: RowDifference[] = [];
	const isCounted = isNumberedAnew(matches);
	const columnsHere = new Set([...here, ...(base?.rows ?? [])].flatMap(({ extra }) => Object.keys(extra ?? {})));
	const isNewColumn = (name: string) => !columnsHere.has(name);
	let [same, onlyHere] = [0, 0];

	const fileRows: Row[] = [];
	for (const [place, match] of matches.entries()) {
		const baseRow = bases.get(match.there.id);
		const known = [baseRow, match.here];
		const { row: there, cameAs } = known.some((each) => each !== undefined)
			? mendedRow(match.there, known)
			: { row: match.there, cameAs: undefined };
		fileRows.push(there);
		// What was cleared there in a print that is gone here stands in the base alone.
		const shared = columnsOf(inFile, there, match.here ?? baseRow);
		const isSince = (row: Row) =>
			shared.some(
				(column) =>
					!isSameCell(row, baseRow, column, meaning, baseMeaning) && !spreadsheetChangeOf(baseRow, row, column),
			);
		if (!match.here) {
			const doubt = doubts[place];
			if (!baseRow) differences.push({ kind: 'added', id: there.id, there, ...(doubt && { doubt }) });
			else differences.push({ kind: 'removed here', id: there.id, there, isChangedThere: isSince(there) });
			continue;
		}
		const row = match.here;
		const differing = shared.filter((column) => !isSameCell(row, there, column, meaning));
		const cells = differing.map((column): CellDifference => {
			const isBaseKnown = baseRow !== undefined && (column.isExtra || hasBase.has(column.name));
			const isAsBegun = (side: Row) => isSameCell(side, baseRow, column, meaning, baseMeaning);
			const [cellHere, cellThere] = [cellOf(row, column), cellOf(there, column)];
			const aside = column.isExtra
				? isNewColumn(column.name)
					? ('new column' as const)
					: undefined
				: column.name === 'print id' && match.isByWords
					? ('print id' as const)
					: column.name === 'number' && isCounted
						? ('numbering' as const)
						: undefined;
			const ofBase = isBaseKnown ? spreadsheetChangeOf(baseRow, there, column) : undefined;
			const why = aside ?? ofBase ?? spreadsheetChangeOf(row, there, column);
			const came = column.isExtra ? undefined : cameAs?.get(column.name);
			const sides = {
				...{ column, here: cellHere, there: cellThere },
				...(why && { aside: why }),
				...(came !== undefined && { cameAs: came }),
			};
			// With nothing to tell who changed it, what is blank here may well be filled; all else has to be decided.
			if (!isBaseKnown) return { ...sides, base: undefined, changedBy: isBlank(cellHere) ? 'there' : 'unknown' };
			const changedBy = isAsBegun(there) ? 'here' : isAsBegun(row) ? 'there' : 'both';
			return { ...sides, base: cellOf(baseRow, column), changedBy };
		});
		if (cells.length > 0) differences.push({ kind: 'changed', id: row.id, here: row, cells });
		else same++;
	}

	const isInFile = new Set(fileRows.map(({ id }) => id));
	const ofBase = columns.flatMap(({ name }): MergeColumn[] => (hasBase.has(name) ? [{ name, isExtra: false }] : []));
	for (const row of here) {
		if (isInFile.has(row.id) || rows.length === 0) continue;
		const baseRow = bases.get(row.id);
		if (!baseRow) {
			if (!isBlankRow(row)) onlyHere++;
			continue;
		}
		const isChangedHere = ofBase.some((column) => !isSameCell(row, baseRow, column, meaning, baseMeaning));
		differences.push({ kind: 'removed there', id: row.id, here: row, isChangedHere });
	}
	const idsOf = (list: readonly Row[] | undefined) => list?.map(({ id }) => id);
	const order = mergeOrder(idsOf(here)!, idsOf(fileRows)!, idsOf(base?.rows));
	return { rows: differences, order, same, onlyHere, base, isComplete, fileRows };
}

/** The rows that were exchanged, by their print ids then: of two that shared one the first, of two exchanges the newer. */
function namesExchanged(exchanges: readonly Exchange[]): ReadonlyMap<string, RowId> {
	const backwards = exchanges.toReversed().flatMap(({ rows }) => rows.toReversed());
	return new Map(backwards.map((row) => [printIdOf(row), row.id]));
}

/**
 * Whether the numbers of a file only count its lines, in an order that is not the one here: a list that was sorted and
 * numbered again.
 */
function isNumberedAnew(matches: readonly MatchedRow[]): boolean {
	const known = matches.filter(({ here }) => here !== undefined);
	const isInOrder = known.every(({ here }, place) => place === 0 || known[place - 1]!.here!.order < here!.order);
	const numbered = matches.filter(({ there }) => (there.typed.number ?? '').trim() !== '');
	const first = Number(numbered[0]?.there.typed.number);
	const areLines = numbered.every(({ there }, place) => Number(there.typed.number) === first + place);
	return !isInOrder && areLines && numbered.length > 1;
}

const isBlank = ({ text }: CellValue): boolean => text.trim() === '';

/** The columns of which both sides say something. */
function columnsOf(inFile: readonly ColumnName[], there: Row, here: Row | undefined): readonly MergeColumn[] {
	const isSaid = (name: ColumnName) => there.typed[name] !== undefined || here?.typed[name] !== undefined;
	const ours = inFile.filter(isSaid).map((name): MergeColumn => ({ name, isExtra: false }));
	const others = Object.keys(there.extra ?? {}).map((name): MergeColumn => ({ name, isExtra: true }));
	return [...ours, ...others];
}

/**
 * The rows of a file by the names that they have in the show, or had before they were removed there. A name that only
 * the file gave as a print id is not typed.
 */
function named(
	matches: readonly MatchedRow[],
	here: readonly Row[],
	exchanged: ReadonlyMap<string, RowId>,
	makeId: () => RowId,
): readonly MatchedRow[] {
	const taken = new Set(here.map(({ id }) => id));
	return matches.map(({ there, here: row, isByWords }) => {
		if (row) return { here: row, there: withId(there, row), isByWords };
		const wanted = [exchanged.get(printIdOf(there)), there.id].find((id) => id !== undefined && !taken.has(id));
		const id = wanted ?? makeId();
		taken.add(id);
		return { here: undefined, there: id === there.id ? there : { ...there, id }, isByWords };
	});
}

function withId(there: Row, { id, typed }: Row): Row {
	const { 'print id': given, ...others } = there.typed;
	const isGiven = typed['print id'] === undefined && given === id;
	return there.id === id && !isGiven ? there : { ...there, id, typed: isGiven ? others : there.typed };
}
