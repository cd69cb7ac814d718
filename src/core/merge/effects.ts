import { listed } from '../values/listed.ts';
import { type Choices, sideOfCell, sideOfOrder, sideOfRow } from './choices.ts';
import type { CellDifference, Merge, RowDifference } from './mergeRows.ts';
import { countOf } from '../values/countOf.ts';

/** What an import as it is chosen does to the prints that are here. */
export interface Effects {
	readonly removed: readonly RowDifference[];
	/** The prints of which cells that say something are replaced or cleared, with those cells. */
	readonly replaced: readonly { readonly row: RowDifference; readonly cells: readonly CellDifference[] }[];
	/** How many blank cells are filled. */
	readonly filled: number;
	/** How many prints are added or brought back. */
	readonly added: number;
	/** How many rows of the file are left out. */
	readonly leftOut: number;
	readonly isReordered: boolean;
}

/** What an import does, as it is chosen now. */
export function effectsOf(merge: Merge, choices: Choices): Effects {
	const removed: RowDifference[] = [];
	const replaced: Effects['replaced'][number][] = [];
	let [filled, added, leftOut] = [0, 0, 0];
	for (const row of merge.rows) {
		if (row.kind !== 'changed') {
			const isTheirs = sideOfRow(row, merge, choices) === 'there';
			if (row.kind === 'removed there') {
				if (isTheirs) removed.push(row);
			} else if (isTheirs) added++;
			else leftOut++;
			continue;
		}
		const taken = row.cells.filter((cell) => sideOfCell(row, cell, merge, choices) === 'there');
		const cells = taken.filter(({ here }) => here.text.trim() !== '');
		filled += taken.length - cells.length;
		if (cells.length > 0) replaced.push({ row, cells });
	}
	return { removed, replaced, filled, added, leftOut, isReordered: sideOfOrder(choices) === 'there' };
}

/** The most prints that are named in one sentence; the list below has all of them. */
const mostNamed = 6;

function named(names: readonly string[]): string {
	const more = names.length - mostNamed;
	return more > 0 ? `${names.slice(0, mostNamed).join(', ')} and ${more} more` : listed(names);
}

/** What would go, in sentences: first what is lost here, with the names of the prints. */
export function effectSentences(
	{ removed, replaced, filled, added, leftOut, isReordered }: Effects,
	nameOf: (row: RowDifference) => string,
): { readonly losses: readonly string[]; readonly others: readonly string[] } {
	const cells = replaced.reduce((sum, each) => sum + each.cells.length, 0);
	const whose = replaced.map(
		({ row, cells: those }) => `${nameOf(row)} (${those.map(({ column }) => column.name).join(', ')})`,
	);
	const losses = [
		removed.length > 0 ? `Removes ${countOf(removed.length, 'print')}: ${named(removed.map(nameOf))}.` : '',
		cells > 0 ? `Replaces ${countOf(cells, 'cell')}: ${named(whose)}.` : '',
		isReordered ? 'Puts the prints in the order of the file.' : '',
	].filter((sentence) => sentence !== '');
	const others = [
		losses.length === 0 ? 'Removes nothing, replaces nothing.' : '',
		added > 0 ? `Adds ${countOf(added, 'print')}.` : '',
		filled > 0 ? `Fills ${countOf(filled, 'blank cell')}.` : '',
		leftOut > 0 ? `Leaves out ${countOf(leftOut, 'row')} of the file.` : '',
	].filter((sentence) => sentence !== '');
	return { losses, others };
}
