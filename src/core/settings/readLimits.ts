import { unitsPerInch, unitsPerMm } from '../length/length.ts';
import type { Reading, Unit } from '../length/reading.ts';
import type { Size } from '../length/size.ts';
import { isRecord } from '../values/isRecord.ts';
import {
	isAbsent,
	lengthSetting,
	numberAndUnit,
	optionalSettings,
	type SettingContext,
	sizeSetting,
	thicknessSetting,
} from './settingValue.ts';
import { shown } from '../values/shownText.ts';
import type { Limits } from './limits.ts';

/** Reads what the show's rules allow. */
export function readLimits(value: unknown, context: SettingContext): Limits {
	if (isAbsent(value)) return {};
	if (!isRecord(value)) {
		context.report('limits', 'not a record of limits');
		return {};
	}
	const sizes: { largest?: Size; smallest?: Size; exact?: Size } = {};
	for (const name of ['largest', 'smallest', 'exact'] as const) {
		const size = isAbsent(value[name]) ? undefined : sizeSetting(value[name], `limits.${name}`, context);
		if (size !== undefined) sizes[name] = size;
	}
	const rest = optionalSettings<Omit<Limits, keyof typeof sizes>>(value, 'limits', context, {
		within: ['within', (typed) => lengthSetting(typed, context, true)],
		pictureAreaMm2: ['pictureArea', (typed) => areaSetting(typed, context.unit)],
		thickness: ['thickness', (typed) => thicknessSetting(typed, context)],
	});
	return { ...sizes, ...rest };
}

const squareMm: Readonly<Record<string, number>> = {
	mm: 1,
	cm: 100,
	m: 1_000_000,
	in: (unitsPerInch / unitsPerMm) ** 2,
};

/** An area in mm²: the number 50000 (mm²), or `500 cm²`, `80 in2`; a bare number in a text is in the show's unit. */
function areaSetting(value: unknown, unit: Unit): Reading<number> {
	if (typeof value === 'number' && Number.isFinite(value) && value > 0) return { value };
	const problem = `${shown(value)} is not an area, such as 500 cm²`;
	if (typeof value !== 'string') return { problem };
	const read = numberAndUnit(value, problem);
	if ('problem' in read) return read;
	const typed = /^(?:(mm|cm|m|in)\s*(?:²|\^?2)?)?$/.exec(read.value.unit);
	const area = typed === null ? 0 : Number(read.value.number) * squareMm[typed[1] ?? unit]!;
	return area > 0 ? { value: area } : { problem };
}
