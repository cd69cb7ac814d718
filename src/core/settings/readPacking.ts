import { isRecord } from '../values/isRecord.ts';
import { isAbsent, optionalSettings, type SettingContext, valueOf, wholeSetting } from './settingValue.ts';
import type { PackingSettings } from './settings.ts';

/** The most prints in a box where the show says nothing. Common practice. */
export const usualInBox = 6;

/** Reads how prints are packed; a bare number is the most in a box. */
export function readPacking(value: unknown, context: SettingContext): PackingSettings {
	const usual: PackingSettings = { most: usualInBox };
	if (isAbsent(value)) return usual;
	const most = (typed: unknown) => wholeSetting(typed, 1);
	if (!isRecord(value)) return { most: valueOf(most(value), 'packing', context) ?? usualInBox };
	return { ...usual, ...optionalSettings<PackingSettings>(value, 'packing', context, { most: ['most', most] }) };
}
