import { formatTypeable } from '../length/formatLength.ts';
import type { Length } from '../length/length.ts';
import { readSettings } from '../settings/readSettings.ts';
import type { Edit } from '../show/edit.ts';
import type { Show } from '../show/show.ts';
import { isRecord } from '../values/isRecord.ts';
import { nameKey } from '../values/named.ts';
import { changeSettings } from './changeSettings.ts';

/** Gives a wall of the settings a gap between its prints. */
export function setWallGap(show: Show, wall: string, gap: Length, label: string): Edit {
	const { unit } = readSettings(show.settings).settings;
	const { walls } = show.settings;
	const isIt = (entry: unknown) =>
		isRecord(entry) && typeof entry['name'] === 'string' && nameKey(entry['name']) === nameKey(wall);
	const list: readonly unknown[] = Array.isArray(walls) ? walls : [];
	const changed = list.map((entry) => (isIt(entry) ? { ...(entry as object), gap: formatTypeable(gap, unit) } : entry));
	return changeSettings(show, { walls: changed }, label);
}
