import { greatestRoll } from '../length/length.ts';
import { parseLength } from '../length/parseLength.ts';
import { parseSize } from '../length/parseSize.ts';
import { isProblem, type Reading, type Unit } from '../length/reading.ts';
import type { NamedSize } from '../length/size.ts';
import { isRecord } from '../values/isRecord.ts';
import { isSameValue } from '../values/isSameValue.ts';
import type { TypedSettings } from './settings.ts';

/** The settings that are lengths, wherever they stand: at the top, or in a board, a frame, a size, the bench. */
const lengthKeys = new Set([
	...['ruler', 'border', 'leastBorder', 'overlap', 'reveal', 'cuttingTolerance', 'hingeMargin', 'innerBlankSmaller'],
	...['width', 'height', 'thickness', 'trim', 'depth', 'lip', 'moulding', 'within'],
	...['rebateWidth', 'rebateHeight', 'clearance', 'frameClearance', 'pointsRoom', 'leastSpacer', 'backingSmaller'],
	...['saw', 'stick', 'roll', 'margin'],
	...['length', 'centre', 'gap', 'left', 'bottom', 'rings', 'inset', 'nail', 'stackGap'],
	...['top', 'gapAcross', 'gapDown'],
	...['greatest', 'least', 'correction', 'overcut', 'slipBoard'],
]);

/** The lengths of one size: a bare fraction in one of them makes the other inches too. Those of an obstacle are read alone. */
const sidesOfSizes: readonly (readonly string[])[] = [
	['width', 'height'],
	['rebateWidth', 'rebateHeight'],
];

/** The settings that are two lengths, or the name of a size. */
const sizeKeys = new Set(['mountSize', 'largest', 'smallest', 'exact']);

/**
 * Settings whose lengths stay what they are when the show changes its unit: texts whose bare numbers would be read as
 * another length are written with the old unit. Numbers are millimetres under every unit.
 * @param sizes the show's own sizes, whose names are left alone
 */
export const pinSettings = (typed: TypedSettings, from: Unit, to: Unit, sizes: readonly NamedSize[]): TypedSettings =>
	pinRecord(typed, '', from, to, sizes);

/** @param list the list that the record stands in; blank for one that stands in none */
function pinRecord(
	typed: TypedSettings,
	list: string,
	from: Unit,
	to: Unit,
	sizes: readonly NamedSize[],
): TypedSettings {
	const pairs = list === 'obstacles' ? [] : sidesOfSizes;
	const inches = pairs.filter((sides) => sides.some((side) => isBareFraction(typed[side]))).flat();

	function pin(key: string, value: unknown, within = ''): unknown {
		if (Array.isArray(value)) return value.map((item) => pin('', item, key));
		if (isRecord(value)) return pinRecord(value, within, from, to, sizes);
		if (typeof value !== 'string') return value;
		if (key === 'pictureArea') return /^\s*[\d.,]+\s*$/.test(value) ? `${value} ${from}²` : value;
		if (inches.includes(key)) return value;
		const [before, after] = [from, to].map((unit) => readUnder(unit, key, value, sizes));
		return isSameValue(before, after) ? value : `${value} ${from}`;
	}

	return Object.fromEntries(Object.entries(typed).map(([key, value]) => [key, pin(key, value)]));
}

/** The value of a setting under a unit; undefined where it is no length and no size, or cannot be read. */
function readUnder(unit: Unit, key: string, text: string, sizes: readonly NamedSize[]): unknown {
	if (sizeKeys.has(key)) return valueOf(parseSize(text, { unit, sizes }));
	if (lengthKeys.has(key))
		return valueOf(parseLength(text.replace(/^\s*[-−]/, ''), { unit, allowZero: true, greatest: greatestRoll }));
	return undefined;
}

const valueOf = <Value>(reading: Reading<Value>): Value | undefined => (isProblem(reading) ? undefined : reading.value);

const isBareFraction = (value: unknown): boolean =>
	typeof value === 'string' && valueOf(parseLength(value, { unit: 'mm' }))?.isBareFraction === true;
