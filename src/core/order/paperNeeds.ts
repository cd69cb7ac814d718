import type { RowResult } from '../findings/rowResult.ts';
import type { Settings } from '../settings/settings.ts';
import { type Need, take } from './getLine.ts';
import { type PrintedPaper, printList, takenBy } from './printList.ts';

/** Papers by the pack, and rolls by their length, for copies and proofs. @param rows those that count, by their place */
export const paperNeeds = (
	rows: ReadonlyMap<number, RowResult>,
	nameOf: (place: number) => string,
	settings: Settings,
): readonly Need[] => printList(rows, nameOf, settings).map(paperNeed);

/** What is needed of one paper. */
export function paperNeed({ name, listed, size, pictures, pieces, rollLength }: PrintedPaper): Need {
	const taken = new Map<number, bigint>();
	for (const picture of pictures) take(taken, picture.place, BigInt(takenBy(picture)));
	const { count = 0, pack = 1, price, roll } = listed ?? {};
	const of = { kind: 'paper' as const, name, size, price, taken };
	if (rollLength === undefined || roll === undefined) return { ...of, wanted: pieces, there: count, pack };
	return { ...of, isByLength: true, wanted: rollLength, there: count * roll, pack: roll };
}
