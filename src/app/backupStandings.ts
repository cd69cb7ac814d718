import { countPrints, printsOf } from '../core/show/blankRow.ts';
import { isSameValue } from '../core/values/isSameValue.ts';
import type { Show } from '../core/show/show.ts';
import type { BackedUpShow } from '../files/backupFile.ts';
import { everyShow } from './copyOfAll.ts';
import type { Shelf } from './shelf.svelte.ts';

/** A show of a backup, and whether this device has it. */
export interface StandingOfShow extends BackedUpShow {
	readonly name: string;
	readonly prints: number;
	/** A show that was deleted here is missing: put back, it stands beside the deleted one. */
	readonly standing: 'missing' | 'same' | 'differs';
}

/** Looks which shows of a backup are on this device. */
export async function backupStandings(
	shelf: Shelf,
	shows: readonly BackedUpShow[],
): Promise<readonly StandingOfShow[]> {
	const here = new Map((await everyShow(shelf)).map(({ show }) => [show.id, show]));
	return shows.map((each): StandingOfShow => {
		const { show } = each;
		const found = here.get(show.id);
		const standing = found === undefined ? 'missing' : isSameShow(found, show) ? 'same' : 'differs';
		return { ...each, name: show.name, prints: countPrints(show.rows), standing };
	});
}

/** Whether two shows are the same, as they are after they have been in a file. */
export const isSameShow = (one: Show, other: Show): boolean => isSameValue(plain(one), plain(other));

/** A show as it is after it has been in a file, where what is undefined is absent, and so are blank rows. */
const plain = (show: Show): unknown => JSON.parse(JSON.stringify({ ...show, rows: printsOf(show.rows) }));
