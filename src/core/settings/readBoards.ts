import type { Reading } from '../length/reading.ts';
import type { PlainRecord } from '../values/isRecord.ts';
import {
	isAbsent,
	lengthSetting,
	optionalSettings,
	priceSetting,
	recordsOf,
	type SettingContext,
	shown,
	sizeOfRecord,
	textSetting,
	thicknessSetting,
	valueOf,
	wholeSetting,
	wordSetting,
} from './settingValue.ts';
import type { Board, Offcut } from './settings.ts';

/** Reads the stock of board; an entry without a name, a width or a height is told and left out. */
export function readBoards(value: unknown, context: SettingContext): readonly Board[] {
	return recordsOf(value, 'boards', context).flatMap(([record, key]) => readBoard(record, key, context) ?? []);
}

function readBoard(record: PlainRecord, key: string, context: SettingContext): Board | undefined {
	const name = valueOf(textSetting(record['name']), `${key}.name`, context);
	const kind = isAbsent(record['kind'])
		? 'sheet'
		: valueOf(wordSetting(record['kind'], ['sheet', 'blank'] as const), `${key}.kind`, context);
	const size = sizeOfRecord(record, key, context);
	const rest = optionalSettings<Omit<Board, 'name' | 'kind' | 'width' | 'height' | 'grain'>>(record, key, context, {
		thickness: ['thickness', (typed) => thicknessSetting(typed, context)],
		colour: ['colour', wordsSetting],
		price: ['price', priceSetting],
		pack: ['pack', (typed) => wholeSetting(typed, 1)],
		count: ['count', (typed) => wholeSetting(typed, 0)],
		trim: ['trim', (typed) => lengthSetting(typed, context, true)],
	});
	const grain = readGrain(record, key, context);
	if (name === undefined || kind === undefined || size === undefined) return undefined;
	return { name, kind, ...size, ...rest, ...(grain && { grain }) };
}

/** Reads the offcuts kept from earlier; one without its board, a width or a height is told and left out. */
export function readOffcuts(value: unknown, context: SettingContext): readonly Offcut[] {
	return recordsOf(value, 'offcuts', context).flatMap(([record, key]) => {
		const board = valueOf(textSetting(record['board']), `${key}.board`, context);
		const size = sizeOfRecord(record, key, context);
		const rest = optionalSettings<Pick<Offcut, 'count'>>(record, key, context, {
			count: ['count', (typed) => wholeSetting(typed, 0)],
		});
		const grain = readGrain(record, key, context);
		return board === undefined || size === undefined ? [] : [{ board, ...size, ...rest, ...(grain && { grain }) }];
	});
}

/** The side that the grain runs along; undefined for none. */
function readGrain(record: PlainRecord, key: string, context: SettingContext): 'width' | 'height' | undefined {
	if (isAbsent(record['grain'])) return undefined;
	const grain = valueOf(wordSetting(record['grain'], ['width', 'height', 'none'] as const), `${key}.grain`, context);
	return grain === 'none' ? undefined : grain;
}

const wordsSetting = (value: unknown): Reading<string> =>
	typeof value === 'string' ? { value: value.trim() } : { problem: `${shown(value)} is not a text` };
