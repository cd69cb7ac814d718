import type { Edit } from '../show/edit.ts';
import type { HungTick } from '../show/hungTick.ts';
import { itemDiff } from '../show/keyedList.ts';
import type { Show } from '../show/show.ts';

/** Ticks a print off as hung, or takes the tick off. */
export function tickHung(show: Show, tick: HungTick, isHung: boolean, label: string): Edit {
	const before = show.hung?.find(({ row }) => row === tick.row);
	const diff = itemDiff(before, isHung ? tick : undefined);
	return { label, rows: [], hung: before === undefined && !isHung ? [] : [diff] };
}
