import type { WorkedOutShow } from '../findings/workedOutShow.ts';
import { formatWithUnit, type Scale } from '../length/formatLength.ts';
import { compose, type Edit } from '../show/edit.ts';
import type { Row } from '../show/row.ts';
import type { Show } from '../show/show.ts';
import { type CutTick, isCutTick, ticksByRow } from '../show/tick.ts';
import { type CutsMade, cutsThatStand, isOtherBoard, tickFor } from './ticks.ts';

/** A row with cuts made that a change would make wrong. */
export interface WrongedRow extends CutsMade {
	/** The row before the change. */
	readonly row: Row;
	/** Its place in the show, from 0. */
	readonly index: number;
	/** Whether the change deletes it. */
	readonly isDeleted: boolean;
	/** What stands and what does not, in a sentence. */
	readonly sentence: string;
}

/** The rows whose cuts stand before a change and not after it, in the order of the show. */
export function rowsWronged(before: WorkedOutShow, after: WorkedOutShow): readonly WrongedRow[] {
	const ticks = ticksByRow(before.show.ticks ?? []);
	if (ticks.size === 0) return [];
	const places = new Map(after.show.rows.map(({ id }, place) => [id, place]));
	return before.show.rows.flatMap((row, index): WrongedRow[] => {
		const own = ticks.get(row.id);
		if (own === undefined) return [];
		const { standing } = cutsThatStand(row, before.results[index], before.settings, own);
		const place = places.get(row.id) ?? -1;
		const made = cutsThatStand(after.show.rows[place], after.results[place], after.settings, standing);
		if (made.wrong.length === 0) return [];
		return [{ row, index, ...made, isDeleted: place < 0, sentence: sentenceOf(made, after, place, before.settings) }];
	});
}

/** What makes the change says, where cuts are lost by it: a print that is deleted has no mount to start again. */
export function changeAnyway(wronged: readonly WrongedRow[]): string {
	if (wronged.length === 0) return 'Go on all the same';
	if (wronged.every(({ isDeleted }) => isDeleted)) return 'Delete all the same';
	return `Change it, start the ${wronged.length === 1 ? 'mount' : 'mounts'} again`;
}

function sentenceOf({ standing, wrong }: CutsMade, after: WorkedOutShow, place: number, scale: Scale): string {
	const made = `Cut${boardInWords(wrong, after, place, scale)}: ${inWords(wrong, scale)}.`;
	if (place < 0) return `${made} Its mount would be left over.`;
	const stands = standing.length === 0 ? 'All its cuts are lost.' : `Still right: ${inWords(standing, scale)}.`;
	return `${made.slice(0, -1)}, which would be wrong. ${stands}`;
}

/** The board that was cut, where another is asked for now: " in grey board". */
function boardInWords(
	wrong: readonly CutTick[],
	{ show, results, settings }: WorkedOutShow,
	place: number,
	scale: Scale,
) {
	const [row, result] = [show.rows[place], results[place]];
	const boards = wrong.flatMap((tick) => {
		const now = row && result && tickFor(row, result, settings, { ...tick, row: 0 });
		if (!now || !isOtherBoard(tick, now)) return [];
		return [tick.board ?? `board of ${formatWithUnit(tick.thickness!, scale)}`];
	});
	return boards.length === 0 ? '' : ` in ${[...new Set(boards)].join(' and ')}`;
}

/** Cuts in words: "left 65 mm, top 60 mm"; of several mounts with how many times. */
function inWords(cuts: readonly CutTick[], scale: Scale): string {
	const times = new Map<string, number>();
	for (const { part, side, border } of cuts) {
		const words = `${part === 'mount' ? '' : 'inner '}${side} ${formatWithUnit(border, scale)}`;
		times.set(words, (times.get(words) ?? 0) + 1);
	}
	return [...times].map(([words, count]) => (count === 1 ? words : `${words} (${count} ×)`)).join(', ');
}

/** An edit that removes the ticks which it makes wrong, and leaves those that stand. */
export function withoutWrongTicks(edit: Edit, wronged: readonly WrongedRow[]): Edit {
	const ticks = wronged.flatMap(({ wrong }) => wrong.map((before) => ({ before })));
	return compose(edit, { label: edit.label, rows: [], ticks });
}

/** An edit that removes every tick of the cuts of the rows that it makes wrong: their mounts are begun again. */
export function begunAgain(edit: Edit, wronged: readonly WrongedRow[], show: Show): Edit {
	const ids = new Set(wronged.map(({ row }) => row.id));
	const ticks = (show.ticks ?? []).filter((tick) => ids.has(tick.row) && isCutTick(tick));
	return compose(edit, { label: edit.label, rows: [], ticks: ticks.map((before) => ({ before })) });
}
