import type { Unit } from '../length/reading.ts';
import { defaultSettings } from '../settings/defaults.ts';
import { pinSettings } from '../settings/pinSettings.ts';
import { withUsualHanging } from '../settings/usualHanging.ts';
import { readSettings } from '../settings/readSettings.ts';
import { isAbsent } from '../settings/settingValue.ts';
import type { TypedSettings } from '../settings/settings.ts';
import { isUntyped } from '../show/blankRow.ts';
import type { Edit } from '../show/edit.ts';
import { entryDiffs } from '../show/recordByKey.ts';
import type { Row } from '../show/row.ts';
import type { Show } from '../show/show.ts';
import { pinRow } from './pinRow.ts';

/** What becomes of numbers without a unit when the show changes its unit. */
export type BareNumbers = 'keep sizes' | 'keep figures';

/**
 * Changes settings, as typed; undefined puts one back to its default. Where that changes the unit of the show, no size
 * changes by it: bare numbers typed before keep the old unit, in the rows and in the other settings, and a show that
 * has something typed in its rows keeps the defaults that they were worked out with.
 * @param bareNumbers what becomes of them: their sizes stay, or their figures, which are then of the new unit
 */
export function changeSettings(
	show: Show,
	changes: TypedSettings,
	label: string,
	bareNumbers: BareNumbers = 'keep sizes',
): Edit {
	const { unit: from, sizes } = readSettings(show.settings).settings;
	const to = readSettings({ ...show.settings, ...changes }).settings.unit;
	if (to === from || bareNumbers === 'keep figures')
		return { label, rows: [], settings: entryDiffs(show.settings, change(show.settings, changes)) };
	const isBegun = !show.rows.every(isUntyped);
	const typed = Object.fromEntries(Object.entries(show.settings).filter(([, value]) => !isAbsent(value)));
	const inForce = isBegun ? withUsualHanging({ ...defaultsThatDiffer(from, to), ...typed }, from) : show.settings;
	return {
		label,
		rows: show.rows
			.map((row) => ({ before: row, after: pinRow(row, from, to, sizes) }))
			.filter(({ before, after }) => before !== after),
		settings: entryDiffs(show.settings, change(pinSettings(inForce, from, to, sizes), changes)),
	};
}

/** How many rows have bare numbers that another unit would read as other lengths, and one such text. */
export function bareNumbersIn(show: Show, to: Unit): { readonly rows: number; readonly example: string } | undefined {
	const { unit: from, sizes } = readSettings(show.settings).settings;
	const pinned = show.rows.flatMap((row) => {
		const after = pinRow(row, from, to, sizes);
		const column = (Object.keys(after.units ?? {}) as (keyof Row['typed'])[]).find(
			(each) => row.units?.[each] === undefined,
		);
		return column === undefined ? [] : [row.typed[column] ?? ''];
	});
	return pinned[0] === undefined ? undefined : { rows: pinned.length, example: pinned[0] };
}

const change = (settings: TypedSettings, changes: TypedSettings): TypedSettings =>
	Object.fromEntries(Object.entries({ ...settings, ...changes }).filter(([, value]) => value !== undefined));

function defaultsThatDiffer(from: Unit, to: Unit): TypedSettings {
	const other = new Map(Object.entries(defaultSettings(to)));
	return Object.fromEntries(Object.entries(defaultSettings(from)).filter(([key, text]) => other.get(key) !== text));
}
