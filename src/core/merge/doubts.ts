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
	const seen = new Set<string>();
	return matches.map(({ there, here: row }) => {
		const content = contentOf(there);
		const isTwice = content !== undefined && seen.has(content);
		if (content !== undefined) seen.add(content);
		// One that was exchanged before is known to both sides.
		if (row || (!unnamed.has(there.id) && exchanged.has(printIdOf(there)))) return undefined;
		if (totals.has(there.id)) return 'total';
		return isTitleHere(there) ? 'title is here' : isTwice ? 'twice in the file' : undefined;
	});
}

/** All that a row says of its print; undefined where that is not more than a title. */
function contentOf({ typed, extra }: Row): string | undefined {
	const said = Object.entries(typed);
	if (titleKey(typed.title) === undefined || said.length < 2) return undefined;
	return JSON.stringify([said.sort(([a], [b]) => (a < b ? -1 : 1)), Object.entries(extra ?? {}).sort()]);
}
