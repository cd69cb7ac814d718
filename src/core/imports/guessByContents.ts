import { type ColumnName, columns } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { ownValue } from '../values/ownValue.ts';

/** What a column of a file may mean by what stands in it, where its header says nothing. @param taken columns that others are */
export type GuessByContents = (
	header: string,
	cells: readonly string[],
	taken: ReadonlySet<string>,
) => readonly ColumnName[];

/** So many different texts must be the same, and this share of all that stand there: less may be by chance. */
const [fewestSame, mostSame] = [3, 0.6];

const plain = (text: string) => text.trim().replaceAll(/\s+/g, ' ').toLowerCase();

/**
 * Guesses columns by the prints that are here: one whose cells are the titles of a show is the title, whatever its header.
 * A column that was kept with the prints before, as it is, is kept again.
 */
export function guessByContents(rows: readonly Row[]): GuessByContents {
	let known: ReadonlyMap<ColumnName, ReadonlySet<string>> | undefined;
	const textsByColumn = () =>
		(known ??= new Map(
			columns.map(({ name }) => [
				name,
				new Set(rows.flatMap(({ typed }) => (typed[name] === undefined ? [] : [plain(typed[name])]))),
			]),
		));
	return (header, cells, taken) => {
		const filled = [...new Set(cells.map(plain).filter((text) => text !== ''))];
		if (filled.length < fewestSame || rows.some(({ extra }) => ownValue(extra, header.trim()) !== undefined)) return [];
		return [...textsByColumn()]
			.flatMap(([name, texts]) => {
				const same = filled.filter((text) => texts.has(text)).length;
				const isLike = !taken.has(name) && same >= fewestSame && same >= mostSame * filled.length;
				return isLike ? [{ name, same }] : [];
			})
			.sort((a, b) => b.same - a.same)
			.map(({ name }) => name);
	};
}
