import { zero } from '../length/length.ts';
import type { Reading } from '../length/reading.ts';
import { isRecord } from '../values/isRecord.ts';
import { usualInset } from './usualHanging.ts';
import {
	isAbsent,
	lengthSetting,
	numberAndUnit,
	optionalSettings,
	percentSetting,
	type SettingContext,
	valueOf,
	wordSetting,
} from './settingValue.ts';
import { shown } from '../values/shownText.ts';
import { type Hanging, hangingKinds, type RingsAt } from './hanging.ts';

/** Reads what frames hang by; a bare word is its kind. Without a kind it is a cord. */
export function readHanging(value: unknown, context: SettingContext): Hanging {
	const usual = usualHanging(context);
	if (isAbsent(value)) return usual;
	if (!isRecord(value))
		return { ...usual, kind: valueOf(wordSetting(value, hangingKinds), 'hanging', context) ?? 'cord' };
	const read = optionalSettings<Hanging>(value, 'hanging', context, {
		kind: ['kind', (typed) => wordSetting(typed, hangingKinds)],
		rings: ['rings', (typed) => ringsSetting(typed, context)],
		inset: ['inset', (typed) => lengthSetting(typed, context, true)],
		slackPercent: ['slack', percentSetting],
		ratingKg: ['rating', kilogramsSetting],
		nail: ['nail', (typed) => lengthSetting(typed, context, true)],
	});
	return { ...usual, ...read };
}

/** Common practice: a cord between rings a third down, an inch or so in, that gives a little. */
const usualHanging = ({ unit }: SettingContext): Hanging => ({
	kind: 'cord',
	rings: { kind: 'share', percent: 100 / 3 },
	inset: usualInset(unit),
	slackPercent: 5,
	ratingKg: undefined,
	nail: zero,
});

/** A length, or a share of the frame's height in per cent; a number is mm. */
function ringsSetting(value: unknown, context: SettingContext): Reading<RingsAt> {
	if (typeof value === 'string' && value.includes('%')) {
		const share = percentSetting(value);
		return 'value' in share ? { value: { kind: 'share', percent: share.value } } : share;
	}
	const read = lengthSetting(value, context, true);
	return 'value' in read ? { value: { kind: 'length', length: read.value } } : read;
}

/** A weight: `10`, `10 kg`, `500 g`, `30 lb` (0.45359237 kg); a bare number is kg. */
function kilogramsSetting(value: unknown): Reading<number> {
	const problem = `${shown(value)} is not a weight, such as 10 kg`;
	if (typeof value === 'number') return Number.isFinite(value) && value > 0 ? { value } : { problem };
	if (typeof value !== 'string') return { problem };
	const read = numberAndUnit(value, problem);
	if ('problem' in read) return read;
	const inKg = new Map([
		['', 1],
		['kg', 1],
		['g', 0.001],
		['lb', 0.45359237],
		['lbs', 0.45359237],
	]).get(read.value.unit);
	const kg = Number(read.value.number) * (inKg ?? NaN);
	return kg > 0 ? { value: kg } : { problem };
}
