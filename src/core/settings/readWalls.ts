import { greatestWall, type Length, zero } from '../length/length.ts';
import type { PlainRecord } from '../values/isRecord.ts';
import { nameKey } from '../values/named.ts';
import {
	isAbsent,
	lengthSetting,
	optionalSettings,
	recordsOf,
	type SettingContext,
	textSetting,
	valueOf,
} from './settingValue.ts';
import type { Obstacle, Wall } from './wall.ts';
import { usualCentre } from './usualHanging.ts';

/**
 * Reads the walls; one without a name or a length is reported and left out, and so is one whose name another before it
 * has: a row's cell knows a wall by its name.
 */
export function readWalls(value: unknown, context: SettingContext): readonly Wall[] {
	const names = new Set<string>();
	return recordsOf(value, 'walls', context).flatMap(([record, key]): readonly Wall[] => {
		const name = valueOf(textSetting(record['name']), `${key}.name`, context);
		const length = alongWall(record, key, 'length', context);
		const rest = optionalSettings<{ height: Length; centre: Length; gap: Length }>(record, key, context, {
			height: ['height', (typed) => lengthSetting(typed, context)],
			centre: ['centre', (typed) => lengthSetting(typed, context)],
			gap: ['gap', (typed) => lengthSetting(typed, context, true)],
		});
		const obstacles = readObstacles(record['obstacles'], `${key}.obstacles`, context);
		if (name === undefined || length === undefined) return [];
		if (names.has(nameKey(name))) {
			context.report(`${key}.name`, `“${name}” is the name of a wall before it too; give this one another`);
			return [];
		}
		names.add(nameKey(name));
		const { height, centre = usualCentre(context.unit), gap } = rest;
		return [{ name, length, height, centre, gap, obstacles }];
	});
}

function readObstacles(value: unknown, key: string, context: SettingContext): readonly Obstacle[] {
	return recordsOf(value, key, context).flatMap(([record, place]): readonly Obstacle[] => {
		const name = isAbsent(record['name']) ? 'obstacle' : valueOf(textSetting(record['name']), `${place}.name`, context);
		const left = alongWall(record, place, 'left', context, true);
		const width = alongWall(record, place, 'width', context);
		const rest = optionalSettings<{ bottom: Length; height: Length }>(record, place, context, {
			bottom: ['bottom', (typed) => lengthSetting(typed, context, true)],
			height: ['height', (typed) => lengthSetting(typed, context)],
		});
		if (name === undefined || left === undefined || width === undefined) return [];
		return [{ name, left, bottom: rest.bottom ?? zero, width, height: rest.height }];
	});
}

/** A length along a wall, which must be given; a wall may be longer than a print. */
function alongWall(record: PlainRecord, key: string, side: string, context: SettingContext, allowZero = false) {
	if (!isAbsent(record[side]))
		return valueOf(
			lengthSetting(record[side], { ...context, greatest: greatestWall }, allowZero),
			`${key}.${side}`,
			context,
		);
	context.report(`${key}.${side}`, `the ${side} is missing`);
	return undefined;
}
