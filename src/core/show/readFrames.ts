import type { Reading } from '../length/reading.ts';
import type { Frame } from './settings.ts';
import {
	lengthSetting,
	optionalSettings,
	recordsOf,
	type SettingContext,
	sizeOfRecord,
	textSetting,
	valueOf,
	wholeSetting,
} from './settingValue.ts';

/** Reads the frames; one without a name, a width or a height (of its rebate) is told and left out. */
export function readFrames(value: unknown, context: SettingContext): readonly Frame[] {
	return recordsOf(value, 'frames', context).flatMap(([record, key]) => {
		const name = valueOf(textSetting(record['name']), `${key}.name`, context);
		const size = sizeOfRecord(record, key, context);
		const rest = optionalSettings<Omit<Frame, 'name' | 'width' | 'height'>>(record, key, context, {
			depth: ['depth', (typed) => lengthSetting(typed, context)],
			lip: ['lip', (typed) => lengthSetting(typed, context, true)],
			moulding: ['moulding', (typed) => lengthSetting(typed, context)],
			weightKgPerMetre: ['weight', weightSetting],
			price: ['price', (typed) => wholeSetting(typed, 0)],
			count: ['count', (typed) => wholeSetting(typed, 0)],
		});
		return name === undefined || size === undefined ? [] : [{ name, ...size, ...rest }];
	});
}

/** The weight of a metre of moulding, in kg: `0.4`, `0.4 kg`, `400 g`, with or without `/m`. */
function weightSetting(value: unknown): Reading<number> {
	if (typeof value === 'number' && Number.isFinite(value) && value >= 0) return { value };
	const typed = typeof value === 'string' ? /^\s*(\d+(?:[.,]\d+)?)\s*(kg|g)?\s*(?:\/\s*m)?\s*$/i.exec(value) : null;
	if (typed === null) return { problem: `${String(value)} is not a weight of a metre, such as 0.4 kg` };
	return { value: Number(typed[1]!.replace(',', '.')) / (typed[2]?.toLowerCase() === 'g' ? 1000 : 1) };
}
