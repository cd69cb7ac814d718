import type { Edit } from '../show/edit.ts';
import { type ItemDiff, itemDiff } from '../show/keyedList.ts';
import type { Show } from '../show/show.ts';
import { type CutTick, isCutTick, type MountId, type Tick, tickKey, ticksByKey } from '../show/tick.ts';

/** Ticks cuts off as made, or removes the ticks again. */
export function tickCuts(show: Show, cuts: readonly CutTick[], isMade: boolean, label: string): Edit {
	const ticks = ticksByKey(show.ticks);
	const diffs = cuts.map((cut): ItemDiff<Tick> => itemDiff(ticks.get(tickKey(cut)), isMade ? cut : undefined));
	return { label, rows: [], ticks: diffs.filter(({ before, after }) => before ?? after) };
}

/** Counts a board as spoilt: the cuts in it are to be made again in another. */
export function spoilBoard(show: Show, mount: MountId, label: string): Edit {
	const { row, copy, part } = mount;
	const own = (show.ticks ?? []).filter((tick) => tick.row === row && tick.copy === copy && tick.part === part);
	const before = own.find(({ side }) => side === 'spoilt');
	const times = before?.side === 'spoilt' ? before.times : 0;
	const spoilt = itemDiff<Tick>(before, { row, copy, part, side: 'spoilt', times: times + 1 });
	return { label, rows: [], ticks: [...own.filter(isCutTick).map((tick) => itemDiff<Tick>(tick, undefined)), spoilt] };
}
