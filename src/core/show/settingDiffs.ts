import { isSameValue } from './isSameValue.ts';
import type { SettingDiff } from './edit.ts';
import type { TypedSettings } from './settings.ts';

/** What changes from some settings to others. */
export function settingDiffs(from: TypedSettings, to: TypedSettings): readonly SettingDiff[] {
	const before = new Map(Object.entries(from));
	const after = new Map(Object.entries(to));
	return [...new Set([...before.keys(), ...after.keys()])]
		.map((key) => ({ key, before: before.get(key), after: after.get(key) }))
		.filter((diff) => !isSameValue(diff.before, diff.after));
}
