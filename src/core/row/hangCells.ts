import type { Settings } from '../settings/settings.ts';
import { hangNumber } from '../show/hangOrder.ts';
import type { Row } from '../show/row.ts';
import { isSameWord } from '../values/words.ts';

/** Where a row hangs, as its cells of words say. */
export interface HangCells {
	/** The place of its wall in the show's list, from 0: the one it names, else the only one. Undefined: on none. */
	readonly wall: number | undefined;
	/** Its number in the order on the wall; undefined where none is typed. */
	readonly order: number | undefined;
}

/** Reads the wall and the hang order of a row. A wall that is in no list counts as blank. */
export function readHangCells({ typed }: Row, { walls }: Settings): HangCells {
	const text = typed.wall?.trim() ?? '';
	const named = text === '' ? -1 : walls.findIndex(({ name }) => isSameWord(name, text));
	const only = walls.length === 1 ? 0 : undefined;
	return { wall: named >= 0 ? named : only, order: hangNumber(typed['hang order']) };
}
