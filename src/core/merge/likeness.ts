import type { ColumnName } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import { cellText } from './cellText.ts';
import { isSameCell, type Meaning, type MergeColumn, spreadsheetChangeOf } from './cells.ts';
import { numberKey } from './printWords.ts';

/** What likeness is looked for in. */
export interface LikenessOptions {
	/** The columns that the file has. */
	readonly inFile: readonly ColumnName[];
	readonly meaning: Meaning;
}

/** How two rows agree in the cells that both have. */
export interface Likeness {
	/** In how many cells, counting what a spreadsheet has only spelled otherwise. */
	readonly same: number;
	/** The same, with what tells copies of one title apart counting more. */
	readonly weight: number;
	/** The columns in which they do not. */
	readonly differs: ReadonlySet<ColumnName>;
}

/** What an edition number that agrees counts beside other cells, and what a number in the list does. */
const weights: Partial<Record<ColumnName, number>> = { edition: 100, number: 2 };

/** Compares a row of the show with one of a file. */
export function likeness(here: Row, there: Row, { inFile, meaning }: LikenessOptions): Likeness {
	let [same, weight] = [0, 0];
	const differs = new Set<ColumnName>();
	for (const name of inFile) {
		if (name === 'print id' || isBlank(here, name) || isBlank(there, name)) continue;
		const column: MergeColumn = { name, isExtra: false };
		if (isSameCell(here, there, column, meaning) || spreadsheetChangeOf(here, there, column) !== undefined) {
			same++;
			weight += weights[name] ?? 1;
		} else differs.add(name);
	}
	return { same, weight, differs };
}

const isBlank = ({ typed }: Row, name: ColumnName) => (typed[name] ?? '').trim() === '';

/** The most pairs of rows that are compared: more prints of one title are found by all that they say, or by their numbers. */
const mostPairs = 40_000;

/**
 * Pairs rows that are most alike. Where a row is as like to two that are not the same, it is paired with neither.
 * @param may whether two rows may be one print at all
 */
export function bestPairs(
	here: readonly Row[],
	there: readonly Row[],
	options: LikenessOptions,
	may: (alike: Likeness) => boolean,
): readonly (readonly [here: Row, there: Row])[] {
	if (here.length === 0 || there.length === 0) return [];
	const contentOf = contents(options.inFile);
	const pairs: (readonly [Row, Row])[] = [];
	const paired = new Set<Row>();
	const pair = (one: Row, other: Row) => {
		pairs.push([one, other]);
		paired.add(one).add(other);
	};
	const byContent = new Map<string, Row[]>();
	for (const row of here.toReversed()) byContent.set(contentOf(row), [...(byContent.get(contentOf(row)) ?? []), row]);
	for (const row of there) {
		const same = byContent.get(contentOf(row))?.pop();
		if (same && may(likeness(same, row, options))) pair(same, row);
	}
	const [ours, theirs] = [here, there].map((rows) => rows.filter((row) => !paired.has(row))) as [Row[], Row[]];
	if (ours.length * theirs.length > mostPairs) return [...pairs, ...byNumberAlone(ours, theirs, options, may)];
	const possible = ours.flatMap((one) =>
		theirs.flatMap((other) => {
			const alike = likeness(one, other, options);
			return may(alike) ? [{ one, other, weight: alike.weight }] : [];
		}),
	);
	const levels = [...new Set(possible.map(({ weight }) => weight))].sort((a, b) => b - a);
	for (const level of levels) {
		const open = possible.filter(
			({ one, other, weight }) => weight === level && !paired.has(one) && !paired.has(other),
		);
		const isClear = (each: (typeof open)[number]) =>
			open.every(
				({ one, other }) =>
					(one !== each.one && other !== each.other) ||
					(contentOf(one) === contentOf(each.one) && contentOf(other) === contentOf(each.other)),
			);
		const clear = open.filter(isClear);
		for (const { one, other } of clear) if (!paired.has(one) && !paired.has(other)) pair(one, other);
		// Which of two it is cannot be told: the next best is no better.
		for (const { one, other } of open) paired.add(one).add(other);
	}
	return pairs;
}

/** Pairs rows whose number no other row on their side has. */
function byNumberAlone(
	here: readonly Row[],
	there: readonly Row[],
	options: LikenessOptions,
	may: (alike: Likeness) => boolean,
): readonly (readonly [here: Row, there: Row])[] {
	const [ours, theirs] = [groupBy(here, numberKey), groupBy(there, numberKey)];
	return [...theirs].flatMap(([number, [row, ...others]]) => {
		const [one, ...more] = number === undefined ? [] : (ours.get(number) ?? []);
		const isSole = one !== undefined && row !== undefined && others.length === 0 && more.length === 0;
		return isSole && may(likeness(one, row, options)) ? [[one, row] as const] : [];
	});
}

/** All that a row says in the columns of a file, but for its names. */
function contents(inFile: readonly ColumnName[]): (row: Row) => string {
	const known = new Map<Row, string>();
	const named = inFile.filter((name) => name !== 'print id' && name !== 'number');
	return (row) => {
		const content = known.get(row) ?? JSON.stringify(named.map((name) => cellText(row.typed[name] ?? '')));
		known.set(row, content);
		return content;
	};
}
