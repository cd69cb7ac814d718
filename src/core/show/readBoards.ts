import type { Reading } from '../length/reading.ts';
import type { Board } from './settings.ts';
import {
	isAbsent,
	lengthSetting,
	optionalSettings,
	recordsOf,
	type SettingContext,
	type SettingRecord,
	sizeOfRecord,
	textSetting,
	valueOf,
	wholeSetting,
	wordSetting,
} from './settingValue.ts';

/** Reads the stock of board; an entry without a name, a width or a height is told and left out. */
export function readBoards(value: unknown, context: SettingContext): readonly Board[] {
	return recordsOf(value, 'boards', context).flatMap(([record, key]) => readBoard(record, key, context) ?? []);
}

function readBoard(record: SettingRecord, key: string, context: SettingContext): Board | undefined {
	const name = valueOf(textSetting(record['name']), `${key}.name`, context);
	const kind = isAbsent(record['kind'])
		? 'sheet'
		: valueOf(wordSetting(record['kind'], ['sheet', 'blank'] as const), `${key}.kind`, context);
	const size = sizeOfRecord(record, key, context);
	const rest = optionalSettings<Omit<Board, 'name' | 'kind' | 'width' | 'height' | 'grain'>>(record, key, context, {
		thickness: ['thickness', (typed) => lengthSetting(typed, context)],
		price: ['price', (typed) => wholeSetting(typed, 0)],
		pack: ['pack', (typed) => wholeSetting(typed, 1)],
		count: ['count', (typed) => wholeSetting(typed, 0)],
		trim: ['trim', (typed) => lengthSetting(typed, context, true)],
	});
	const grain = isAbsent(record['grain']) ? 'none' : valueOf(grainSetting(record['grain']), `${key}.grain`, context);
	if (name === undefined || kind === undefined || size === undefined) return undefined;
	return { name, kind, ...size, ...rest, ...(grain === undefined || grain === 'none' ? {} : { grain }) };
}

const grainSetting = (value: unknown): Reading<'width' | 'height' | 'none'> =>
	wordSetting(value, ['width', 'height', 'none']);
