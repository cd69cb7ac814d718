import { bestTree, cutTable, type CutTable, fillTable } from './bestCut.ts';
import { type Pattern, patternOf } from './cutTree.ts';
import type { Problem, SheetType } from './problem.ts';

/** The best cuts of every entry of the stock; entries of one size and one grain share a table. */
export interface CutTables {
	/** Steps that one filling of all tables takes. */
	readonly steps: number;
	/** The table of each entry. */
	readonly tables: readonly CutTable[];
	/** Fills all tables and gives the value of the best cut of each entry. */
	fill(blankValues: readonly number[]): readonly number[];
	/** The pattern of an entry's best cut, out of its filled table. */
	best(sheet: number, blankValues: readonly number[]): Pattern;
}

/** Tables for a problem; undefined where a sheet has too many places for them. */
export function cutTables({ types, sheets }: Problem): CutTables | undefined {
	const shared = new Map<string, CutTable | undefined>();
	for (const sheet of sheets) if (!shared.has(shapeOf(sheet))) shared.set(shapeOf(sheet), cutTable(sheet, types));
	const tables = sheets.flatMap((sheet) => shared.get(shapeOf(sheet)) ?? []);
	if (tables.length < sheets.length) return undefined;
	const distinct = [...new Set(tables)];
	return {
		steps: distinct.reduce((sum, { steps }) => sum + steps, 0),
		tables,
		fill: (blankValues) => {
			const values = new Map(distinct.map((table) => [table, fillTable(table, blankValues)]));
			return tables.map((table) => values.get(table)!);
		},
		best: (sheet, blankValues) => patternOf(sheet, bestTree(tables[sheet]!, blankValues), types.length),
	};
}

const shapeOf = ({ width, height, givesAcross, givesDown }: SheetType) =>
	JSON.stringify([width, height, givesAcross, givesDown]);
