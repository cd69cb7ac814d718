import type { BottomWeight } from '../length/bottomWeight.ts';
import { type Length, mm } from '../length/length.ts';
import { parseSize } from '../length/parseSize.ts';
import { parseWeight } from '../length/parseWeight.ts';
import type { Reading, Unit } from '../length/reading.ts';
import type { Size } from '../length/size.ts';
import { typedUnits } from '../length/tokens.ts';
import { defaultSettings } from './defaults.ts';
import { readBench } from './readBench.ts';
import { readBacking, readBoards, readGlazing, readOffcuts } from './readBoards.ts';
import { readCatalogue } from './readCatalogue.ts';
import { readFrames } from './readFrames.ts';
import { readLabelContents } from './readLabelContents.ts';
import { readLabels } from './readLabels.ts';
import { readLabelSheets } from './readLabelSheets.ts';
import { readLimits } from './readLimits.ts';
import { readPacking } from './readPacking.ts';
import { readPapers } from './readPapers.ts';
import { noCurrency } from '../values/money.ts';
import { showPrices } from './readPrice.ts';
import { commissionUnder, shareSetting, stepSetting } from './readSale.ts';
import { readSizes } from './readSizes.ts';
import { readHanging } from './readHanging.ts';
import { readSupplies } from './readSupplies.ts';
import { readWalls } from './readWalls.ts';
import {
	isAbsent,
	lengthSetting,
	percentSetting,
	type SettingContext,
	type SettingProblem,
	sizeSetting,
	textSetting,
	valueOf,
	wholeSetting,
	yesNoSetting,
} from './settingValue.ts';
import { shown } from '../values/shownText.ts';
import { named } from '../values/named.ts';
import { mountOfFrame } from './frame.ts';
import type { Settings, TypedSettings } from './settings.ts';

/** The keys that a show's settings may have. */
export const settingKeys = [
	'unit',
	'ruler',
	'mountSize',
	'sizes',
	'border',
	'leastBorder',
	'bottomWeight',
	'overlap',
	'reveal',
	'unevenTolerance',
	'cuttingTolerance',
	'hingeMargin',
	'innerBlankSmaller',
	'limits',
	'boards',
	'offcuts',
	'dropOuts',
	'spares',
	'undermount',
	'glazing',
	'backing',
	'backingSmaller',
	'supplies',
	'currency',
	'frames',
	'frame',
	'frameClearance',
	'saw',
	'papers',
	'pixelsAnInch',
	'proofs',
	'pointsRoom',
	'leastSpacer',
	'bench',
	'labels',
	'labelContents',
	'labelSheets',
	'walls',
	'hanging',
	'stackGap',
	'commission',
	'vat',
	'priceStep',
	'costInPrice',
	'catalogue',
	'packing',
	'views', // none of them, but a file of settings may give it: see `viewsApart`
] as const;

/** A key of a show's settings. */
export type SettingKey = (typeof settingKeys)[number];

/**
 * Reads the settings of a show as typed. A key that is absent or blank has its default, metric or inch after the unit;
 * so does one that cannot be read, and is reported.
 */
export function readSettings(typed: TypedSettings): {
	readonly settings: Settings;
	readonly problems: readonly SettingProblem[];
} {
	const problems: SettingProblem[] = [];
	const report = (key: string, problem: string) => void problems.push({ key, problem });
	const unit = readUnit(typed['unit'], report);
	const withoutSizes: SettingContext = { unit, sizes: [], report };
	const context: SettingContext = { unit, sizes: readSizes(typed['sizes'], withoutSizes), report };
	const defaults = defaultSettings(unit);

	/** What was typed, or the default where that is absent or cannot be read. */
	function read<Value>(key: keyof typeof defaults, reader: (value: unknown) => Reading<Value>): Value {
		const value = isAbsent(typed[key]) ? undefined : valueOf(reader(typed[key]), key, context);
		return value ?? mustRead(reader(defaults[key]));
	}
	const border = (value: unknown) => lengthSetting(value, context);
	const space = (value: unknown) => lengthSetting(value, context, true);

	const ruler = read('ruler', (value) => rulerSetting(value, context));
	const prices = showPrices(typed['currency'], report);
	const stock = { ...context, price: prices.read };
	const frameClearance = read('frameClearance', space);
	const frames = readFrames(typed['frames'], { ...stock, ruler, frameClearance });
	const frame = isAbsent(typed['frame']) ? undefined : valueOf(textSetting(typed['frame']), 'frame', context);
	const vat = read('vat', shareSetting);
	const settings: Omit<Settings, 'currency'> = {
		unit,
		ruler,
		mountSize: isOfFrame(typed['mountSize'])
			? named(frame, frames)?.size?.takes
			: readMountSize(typed['mountSize'], defaults.mountSize, context),
		sizes: context.sizes,
		border: read('border', border),
		leastBorder: read('leastBorder', space),
		bottomWeight: read('bottomWeight', weightSetting),
		overlap: read('overlap', space),
		reveal: readReveal(typed['reveal'], context),
		unevenTolerancePercent: read('unevenTolerance', percentSetting),
		cuttingTolerance: read('cuttingTolerance', space),
		hingeMargin: read('hingeMargin', space),
		innerBlankSmaller: read('innerBlankSmaller', space),
		limits: readLimits(typed['limits'], context),
		boards: readBoards(typed['boards'], stock),
		offcuts: readOffcuts(typed['offcuts'], context),
		hasDropOuts: isAbsent(typed['dropOuts'])
			? false
			: valueOf(yesNoSetting(typed['dropOuts']), 'dropOuts', context) === true,
		sparesPercent: read('spares', percentSetting),
		undermount: isAbsent(typed['undermount'])
			? undefined
			: valueOf(textSetting(typed['undermount']), 'undermount', context),
		glazing: readGlazing(typed['glazing'], stock),
		backing: readBacking(typed['backing'], stock),
		backingSmaller: read('backingSmaller', space),
		supplies: readSupplies(typed['supplies'], stock),
		frames,
		frame,
		frameClearance,
		saw: read('saw', space),
		papers: readPapers(typed['papers'], stock),
		pixelsAnInch: read('pixelsAnInch', (value) => wholeSetting(value, 0)),
		proofs: read('proofs', (value) => wholeSetting(value, 0)),
		pointsRoom: read('pointsRoom', space),
		leastSpacer: read('leastSpacer', space),
		bench: readBench(typed['bench'], context),
		labels: readLabels(typed['labels'], context),
		labelContents: readLabelContents(typed['labelContents'], context),
		labelSheets: readLabelSheets(typed['labelSheets'], context),
		walls: readWalls(typed['walls'], context),
		hanging: readHanging(typed['hanging'], context),
		stackGap: read('stackGap', space),
		commission: commissionUnder(read('commission', shareSetting), vat, context),
		vat,
		priceStep: read('priceStep', (value) => stepSetting(value, prices.read)),
		isCostInPrice: read('costInPrice', yesNoSetting),
		catalogue: readCatalogue(typed['catalogue'], context),
		packing: readPacking(typed['packing'], context),
	};
	// Only now is it known whether a price names one; those before it were read as hundredths.
	const currency = prices.currency();
	const isReadAnew = isAbsent(typed['currency']) && currency !== undefined && currency.decimals !== noCurrency.decimals;
	if (isReadAnew) return readSettings({ ...typed, currency: currency.code });
	return { settings: { ...settings, currency }, problems };
}

/** The keys among typed settings that are none of ours, such as a slip of the pen. */
export const unknownSettings = (typed: TypedSettings): readonly string[] =>
	Object.keys(typed).filter((key) => !(settingKeys as readonly string[]).includes(key));

function readUnit(value: unknown, report: SettingContext['report']): Unit {
	if (isAbsent(value)) return 'mm';
	const unit = typeof value === 'string' ? typedUnits.get(value.trim().toLowerCase()) : undefined;
	if (unit === 'mm' || unit === 'cm' || unit === 'in') return unit;
	report('unit', `${shown(value)} is none of: mm, cm, in`);
	return 'mm';
}

function mustRead<Value>(reading: Reading<Value>): Value {
	if ('value' in reading) return reading.value;
	throw new RangeError(`a default cannot be read: ${reading.problem}`);
}

const finestRuler: Length = mm(0.1);
const coarsestRuler: Length = mm(100);

function rulerSetting(value: unknown, context: SettingContext): Reading<Length> {
	const reading = lengthSetting(value, context);
	if ('problem' in reading || (reading.value >= finestRuler && reading.value <= coarsestRuler)) return reading;
	return { problem: `${shown(value)} is no graduation of a ruler: 1 mm, 0.5 mm, 1/8, 1/16 or 1/32 in` };
}

/** A number is per cent, as a share is. */
const weightSetting = (value: unknown): Reading<BottomWeight> =>
	typeof value === 'string' || typeof value === 'number'
		? parseWeight(`${value}`)
		: { problem: 'not a bottom weight, such as 10 % or 6 mm' };

/** Whether the mount size is said to be what the show's frame takes. */
const isOfFrame = (value: unknown): boolean => typeof value === 'string' && value.trim().toLowerCase() === mountOfFrame;

function readMountSize(value: unknown, byDefault: string, context: SettingContext): Size {
	const size = isAbsent(value) ? undefined : sizeSetting(value, 'mountSize', context);
	if (size !== undefined) return size;
	const { width, height } = mustRead(parseSize(byDefault, { unit: context.unit }));
	return { width, height };
}

function readReveal(value: unknown, context: SettingContext): Length | undefined {
	if (isAbsent(value) || (typeof value === 'string' && value.trim().toLowerCase() === 'none')) return undefined;
	return valueOf(lengthSetting(value, context, true), 'reveal', context);
}
