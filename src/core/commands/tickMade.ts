import type { Edit } from '../show/edit.ts';
import { itemDiff } from '../show/keyedList.ts';
import { madeKey, type MadeTick } from '../show/madeTick.ts';
import type { Show } from '../show/show.ts';

/** Ticks steps of making prints off as done, or takes the ticks off; what is so already stays. */
export function tickMade(show: Show, ticks: readonly MadeTick[], isDone: boolean, label: string): Edit {
	const known = new Map((show.made ?? []).map((tick) => [madeKey(tick), tick]));
	const open = ticks.filter((tick) => known.has(madeKey(tick)) !== isDone);
	return { label, rows: [], made: open.map((tick) => itemDiff(known.get(madeKey(tick)), isDone ? tick : undefined)) };
}
