import { bareName } from '../length/paperSizes.ts';
import { greatestRoll, type Length, zero } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { PlainRecord } from '../values/isRecord.ts';
import type { StockContext } from './readBoards.ts';
import {
	isAbsent,
	lengthSetting,
	optionalSettings,
	recordsOf,
	type SettingContext,
	sizeOfRecord,
	textSetting,
	valueOf,
	wholeSetting,
	wordSetting,
} from './settingValue.ts';
import { type Paper, paperEdges, surfaceWords } from './paper.ts';

/**
 * Reads the papers; one without a name, a width, or a height or roll, is reported and left out, and so is one whose name
 * another before it has: a row's cell knows a paper by its name.
 */
export function readPapers(value: unknown, context: StockContext): readonly Paper[] {
	const names = new Set<string>();
	return recordsOf(value, 'papers', context).flatMap(([record, key]) => {
		const name = valueOf(textSetting(record['name']), `${key}.name`, context);
		const size = sizeOfPaper(record, key, context);
		const rest = optionalSettings<Omit<Paper, 'name' | 'width' | 'height' | 'roll'>>(record, key, context, {
			margin: ['margin', (typed) => lengthSetting(typed, context, true)],
			surface: ['surface', (typed) => wordSetting(typed, surfaceWords)],
			edge: ['edge', (typed) => wordSetting(typed, paperEdges)],
			price: ['price', context.price],
			pack: ['pack', (typed) => wholeSetting(typed, 1)],
			count: ['count', (typed) => wholeSetting(typed, 0)],
		});
		if (name === undefined || size === undefined) return [];
		if (names.has(bareName(name))) {
			context.report(`${key}.name`, `“${name}” is the name of a paper before it too; give this one another`);
			return [];
		}
		names.add(bareName(name));
		return [{ name, ...size, margin: zero, ...rest }];
	});
}

/** The two sides of a sheet, or the width and the length of a roll; undefined, with the problem reported, without them. */
function sizeOfPaper(
	record: PlainRecord,
	key: string,
	context: SettingContext,
): Size | { readonly width: Length; readonly roll: Length } | undefined {
	if (isAbsent(record['roll'])) return sizeOfRecord(record, key, context);
	if (!isAbsent(record['height'])) {
		context.report(`${key}.height`, 'a roll has a width and its length as roll, and no height');
		return undefined;
	}
	const size = sizeOfRecord(record, key, { ...context, greatest: greatestRoll }, ['width', 'roll']);
	return size && { width: size.width, roll: size.height };
}
