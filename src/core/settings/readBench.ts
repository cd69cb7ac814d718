import { type Length, zero } from '../length/length.ts';
import type { Reading } from '../length/reading.ts';
import { isRecord } from '../values/isRecord.ts';
import {
	isAbsent,
	lengthSetting,
	optionalSettings,
	type SettingContext,
	signedLengthSetting,
	thicknessSetting,
	valueOf,
	wholeSetting,
	wordSetting,
} from './settingValue.ts';
import {
	type Bench,
	benchHands,
	benchWays,
	cutterHeads,
	endStops,
	guideSides,
	innerWays,
	secondUnitWords,
} from './bench.ts';

const isNone = (typed: unknown) => typeof typed === 'string' && typed.trim().toLowerCase() === 'none';
/** Nothing under the mount may be typed as zero too. */
function slipBoardSetting(typed: unknown, context: SettingContext): Reading<Length> {
	const asLength = lengthSetting(typed, context, true);
	return 'value' in asLength ? asLength : thicknessSetting(typed, context);
}

const kinds = ['straight edge', 'guide', 'guide and stops'] as const;

/** Reads how windows are cut; a bare word is the kind of bench. Without a kind it is a guide. */
export function readBench(value: unknown, context: SettingContext): Bench {
	if (isAbsent(value)) return { kind: 'guide' };
	if (!isRecord(value)) return { kind: valueOf(wordSetting(value, kinds), 'bench', context) ?? 'guide' };
	const kind = isAbsent(value['kind']) ? 'guide' : valueOf(wordSetting(value['kind'], kinds), 'bench.kind', context);
	const rest = optionalSettings<Omit<Bench, 'kind'>>(value, 'bench', context, {
		greatest: ['greatest', (typed) => lengthSetting(typed, context)],
		least: ['least', (typed) => lengthSetting(typed, context, true)],
		correction: ['correction', (typed) => signedLengthSetting(typed, context)],
		overcut: ['overcut', (typed) => lengthSetting(typed, context, true)],
		slipBoard: ['slipBoard', (typed) => (isNone(typed) ? { value: zero } : slipBoardSetting(typed, context))],
		way: ['way', (typed) => wordSetting(typed, benchWays)],
		bladeEvery: ['bladeEvery', (typed) => wholeSetting(typed, 1)],
		hand: ['hand', (typed) => wordSetting(typed, benchHands)],
		inner: ['inner', (typed) => wordSetting(typed, innerWays)],
		secondUnit: ['secondUnit', (typed) => wordSetting(typed, secondUnitWords)],
		head: ['head', (typed) => wordSetting(typed, cutterHeads)],
		guideSide: ['guideSide', (typed) => wordSetting(typed, guideSides)],
		endStop: ['endStop', (typed) => wordSetting(typed, endStops)],
	});
	return { kind: kind ?? 'guide', ...rest };
}
