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
	/** The show on this device where it differs, and how many prints are not the same in both. */
	readonly here: { readonly name: string; readonly prints: number; readonly differing: number } | undefined;
}

/** Looks which shows of a backup are on this device. */
export async function backupStandings(
	shelf: Shelf,
	shows: readonly BackedUpShow[],
): Promise<readonly StandingOfShow[]> {
	const device = new Map((await everyShow(shelf)).map(({ show }) => [show.id, show]));
	return shows.map((each): StandingOfShow => {
		const { show } = each;
		const found = device.get(show.id);
		const standing = found === undefined ? 'missing' : isSameShow(found, show) ? 'same' : 'differs';
		const here = standing === 'differs' && found ? whatIsHere(found, show) : undefined;
		return { ...each, name: show.name, prints: countPrints(show.rows), standing, here };
	});
}

function whatIsHere(found: Show, { rows }: Show) {
	const there = new Map(printsOf(rows).map((row) => [row.id, row]));
	const own = printsOf(found.rows);
	const inBoth = own.filter(({ id }) => there.has(id));
	const same = inBoth.filter((row) => isSameValue(asFiled(row), asFiled(there.get(row.id)))).length;
	return { name: found.name, prints: own.length, differing: own.length + there.size - inBoth.length - same };
}

/** Whether two shows are the same, as they are after they have been in a file. */
export const isSameShow = (one: Show, other: Show): boolean => isSameValue(plain(one), plain(other));

/** A show as it is after it has been in a file, where what is undefined is absent, and so are blank rows. */
const plain = (show: Show): unknown => asFiled({ ...show, rows: printsOf(show.rows) });

const asFiled = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
