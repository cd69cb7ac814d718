import type { Row } from '../show/row.ts';
import { type KnownNames, type MatchedRow, printIdOf } from './matchRows.ts';
import { titleKey } from './printWords.ts';

/** Why a row of a file may be no print of its own: a print of its title is here, a row before it says the same, or it is a sum. */
export type Doubt = 'title is here' | 'twice in the file' | 'total';

/** For each row of a file that no row here is: why it may be no print of its own. */
export function doubtsOf(
	here: readonly Row[],
	matches: readonly MatchedRow[],
	{ totals, exchanged, unnamed }: Pick<KnownNames, 'totals' | 'exchanged' | 'unnamed'>,
): readonly (Doubt | undefined)[] {
	const makers = new Map<string, Set<string>>();
	for (const row of here) {
		const title = titleKey(row.typed.title);
		if (title === undefined) continue;
		const known = makers.get(title) ?? new Set();
		makers.set(title, known.add(titleKey(row.typed.maker) ?? ''));
	}
	/** Whether a print of the title is here; not where both say that their makers differ. */
	const isTitleHere = ({ typed }: Row) => {
		const [known, maker] = [makers.get(titleKey(typed.title) ?? ''), titleKey(typed.maker) ?? ''];
		return known !== undefined && (maker === '' || known.has(maker) || known.has(''));
	};
	const isTwiceAmong = seenBefore();
	return matches.map(({ there, here: row }) => {
		const isTwice = isTwiceAmong(there);
		// One that was exchanged before is known to both sides.
		if (row || (!unnamed.has(there.id) && exchanged.has(printIdOf(there)))) return undefined;
		if (totals.has(there.id)) return 'total';
		return isTitleHere(there) ? 'title is here' : isTwice ? 'twice in the file' : undefined;
	});
}

/** @returns whether a row was asked about before that says all the same of its print, and more than a title */
function seenBefore(): (row: Row) => boolean {
	// Other columns, of which there may be very many, are looked at only in rows of which all else is the same.
	const seen = new Map<string, { readonly first: Row; others?: Set<string> }>();
	return (row) => {
		const said = Object.entries(row.typed);
		if (titleKey(row.typed.title) === undefined || said.length < 2) return false;
		const key = inOrder(said);
		const known = seen.get(key);
		if (known === undefined) {
			seen.set(key, { first: row });
			return false;
		}
		known.others ??= new Set([othersOf(known.first)]);
		const others = othersOf(row);
		const isTwice = known.others.has(others);
		known.others.add(others);
		return isTwice;
	};
}

const othersOf = ({ extra }: Row): string => inOrder(Object.entries(extra ?? {}));

/** Cells as one text, in whatever order they stand. */
const inOrder = (cells: readonly (readonly [name: string, text: string])[]): string =>
	JSON.stringify(cells.toSorted(([a], [b]) => (a < b ? -1 : 1)));
