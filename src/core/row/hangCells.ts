import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { isProblem } from '../length/reading.ts';
import { namedOrAlike } from '../values/named.ts';
import { readHangOrder } from './readHangOrder.ts';

/** Where a row hangs, as its cells of words say. */
export interface HangCells {
	/** The place of its wall in the show's list, from 0: the one it names, else the only one. Undefined: on none. */
	readonly wall: number | undefined;
	/** Its number in the order on the wall; undefined where none is typed, or it cannot be read. */
	readonly order: number | undefined;
}

/** Reads the wall and the hang order of a row. A wall that is in no list counts as blank. */
export function readHangCells({ typed }: Row, { walls }: Settings): HangCells {
	const text = typed.wall?.trim() ?? '';
	const named = namedOrAlike(text, walls);
	const only = walls.length === 1 ? 0 : undefined;
	const order = readHangOrder(typed['hang order']?.trim() ?? '');
	return { wall: named ? walls.indexOf(named) : only, order: isProblem(order) ? undefined : order.value };
}
