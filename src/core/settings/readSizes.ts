import { bareName } from '../length/paperSizes.ts';
import type { NamedSize } from '../length/size.ts';
import { mountOfFrame, mountOfShow } from './frame.ts';
import { recordsOf, type SettingContext, sizeOfRecord, textSetting, valueOf } from './settingValue.ts';

/** Words that the mount cell of a row gives another meaning. */
const takenNames = ['fit', 'none', mountOfFrame, mountOfShow];

/**
 * Reads the show's own sizes; one without a name, a width or a height is reported and left out, and so is one whose name
 * another before it has.
 */
export function readSizes(value: unknown, context: SettingContext): readonly NamedSize[] {
	const names = new Set<string>();
	return recordsOf(value, 'sizes', context).flatMap(([record, key]) => {
		const name = valueOf(textSetting(record['name']), `${key}.name`, context);
		const size = sizeOfRecord(record, key, context);
		if (name === undefined || size === undefined) return [];
		if (takenNames.includes(bareName(name))) {
			context.report(`${key}.name`, `“${name}” has a meaning of its own in the mount cell and cannot name a size`);
			return [];
		}
		if (names.has(bareName(name))) {
			context.report(`${key}.name`, `“${name}” is the name of a size before it too; give this one another`);
			return [];
		}
		names.add(bareName(name));
		return [{ name, ...size }];
	});
}
