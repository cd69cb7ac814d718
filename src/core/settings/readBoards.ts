import { isSameValue } from '../values/isSameValue.ts';
import type { Reading } from '../length/reading.ts';
import type { PlainRecord } from '../values/isRecord.ts';
import {
	isAbsent,
	lengthSetting,
	numberAndUnit,
	optionalSettings,
	recordsOf,
	type SettingContext,
	sizeOfRecord,
	textSetting,
	thicknessSetting,
	valueOf,
	wholeSetting,
	wordSetting,
	wordsSetting,
} from './settingValue.ts';
import { shown } from '../values/shownText.ts';
import type { PriceReader } from './readPrice.ts';
import { type Board, type Glazing, glazingMaterials, type Offcut } from './board.ts';

/** What stock is read by. */
export interface StockContext extends SettingContext {
	readonly price: PriceReader;
}

/**
 * Reads the stock of board. An entry without a name, a width or a height is reported and left out; so is one that says
 * the same as one before it. Two of a size that differ are two ways to get it: those that are there, and those to buy.
 */
export function readBoards(value: unknown, context: StockContext): readonly Board[] {
	const boards: Board[] = [];
	for (const [record, key] of recordsOf(value, 'boards', context)) {
		const board = readBoard(record, key, context);
		if (!board) continue;
		if (boards.some((other) => isSameValue(withPlainName(other), withPlainName(board))))
			context.report(
				`${key}.name`,
				`“${board.name}” of this size is in the list already. Put the number of sheets there`,
			);
		else boards.push(board);
	}
	return boards;
}

const withPlainName = (board: Board): Board => ({ ...board, name: board.name.toLowerCase() });

/** Reads the stock of what lies behind the print: as boards, but without grain. */
export const readBacking = (value: unknown, context: StockContext): readonly Board[] =>
	recordsOf(value, 'backing', context).flatMap(([record, key]) => {
		const read = readBoard(record, key, context);
		return read && isName(read, ['none'], key, context) ? [withoutGrain(read)] : [];
	});

/** Reads the stock of glass and acrylic: as boards, but without grain; what is of no material is glass. */
export const readGlazing = (value: unknown, context: StockContext): readonly Glazing[] =>
	recordsOf(value, 'glazing', context).flatMap(([record, key]) => {
		const read = readBoard(record, key, context);
		const material = isAbsent(record['material'])
			? 'glass'
			: valueOf(wordSetting(record['material'], glazingMaterials), `${key}.material`, context);
		if (!read || !material || !isName(read, ['none'], key, context)) return [];
		return [{ ...withoutGrain(read), material }];
	});

const withoutGrain = ({ grain: _, ...board }: Board): Board => board;

/** Whether a name is none of the words that say something else in a cell; one that is is reported. */
function isName({ name }: Board, words: readonly string[], key: string, context: SettingContext): boolean {
	if (!words.includes(name.toLowerCase())) return true;
	context.report(`${key}.name`, `“${name}” says in a cell that a print has none, and cannot name one`);
	return false;
}

function readBoard(record: PlainRecord, key: string, context: StockContext): Board | undefined {
	const name = valueOf(textSetting(record['name']), `${key}.name`, context);
	const kind = isAbsent(record['kind'])
		? 'sheet'
		: valueOf(wordSetting(record['kind'], ['sheet', 'blank'] as const), `${key}.kind`, context);
	const size = sizeOfRecord(record, key, context);
	const rest = optionalSettings<Omit<Board, 'name' | 'kind' | 'width' | 'height' | 'grain'>>(record, key, context, {
		thickness: ['thickness', (typed) => thicknessSetting(typed, context)],
		density: ['density', densitySetting],
		colour: ['colour', wordsSetting],
		price: ['price', context.price],
		pack: ['pack', (typed) => wholeSetting(typed, 1)],
		count: ['count', (typed) => wholeSetting(typed, 0)],
		trim: ['trim', (typed) => lengthSetting(typed, context, true)],
	});
	const grain = readGrain(record, key, context);
	if (name === undefined || kind === undefined || size === undefined) return undefined;
	return { name, kind, ...size, ...rest, ...(grain && { grain }) };
}

/** Reads the offcuts kept from earlier; one without its board, a width or a height is reported and left out. */
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

/** Weight of a square metre of 1 mm, in kg: `2.5`, or the number 2.5. */
function densitySetting(value: unknown): Reading<number> {
	if (typeof value === 'number' && Number.isFinite(value) && value > 0) return { value };
	const problem = `${shown(value)} is not a weight of a square metre of 1 mm in kg, such as 2.5`;
	if (typeof value !== 'string') return { problem };
	const read = numberAndUnit(value, problem);
	if ('problem' in read) return read;
	const isKilograms = ['', 'kg', 'kg/m²', 'kg/m2', 'kg/m²/mm', 'kg/m2/mm'].includes(
		read.value.unit.replaceAll(' ', ''),
	);
	const density = Number(read.value.number);
	return isKilograms && density > 0 ? { value: density } : { problem };
}
