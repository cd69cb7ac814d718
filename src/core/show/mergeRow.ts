import type { Row } from './row.ts';

/**
 * A row after a diff. Where the row is no longer the diff's `before`, only the cells that the diff changes are changed:
 * two tabs that type into different cells of one row both keep what was typed.
 * @param current the row as it is now; undefined where there is none
 * @returns undefined where the diff removes the row
 */
export function mergeRow(
	current: Row | undefined,
	{ before, after }: { readonly before?: Row; readonly after?: Row },
): Row | undefined {
	if (!after || !before || !current || current === before) return after;
	const units = mergeRecord(current.units, before.units, after.units);
	const extra = mergeRecord(current.extra, before.extra, after.extra);
	return {
		id: current.id,
		order: before.order === after.order ? current.order : after.order,
		typed: mergeRecord(current.typed, before.typed, after.typed),
		...(Object.keys(units).length > 0 && { units }),
		...(Object.keys(extra).length > 0 && { extra }),
	};
}

function mergeRecord<Value>(
	current: Readonly<Record<string, Value>> = {},
	before: Readonly<Record<string, Value>> = {},
	after: Readonly<Record<string, Value>> = {},
): Record<string, Value> {
	const merged = new Map(Object.entries(current));
	for (const key of Object.keys(before)) if (!Object.hasOwn(after, key)) merged.delete(key);
	for (const [key, value] of Object.entries(after)) if (before[key] !== value) merged.set(key, value);
	return Object.fromEntries(merged);
}
