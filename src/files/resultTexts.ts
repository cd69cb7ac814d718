import type { BenchPlan } from '../core/bench/benchPlan.ts';
import { formatExact, formatTypeable } from '../core/length/formatLength.ts';
import { fraction } from '../core/length/fraction.ts';
import { escapedName, sizeWord } from '../core/imports/settingsOfRows.ts';
import type { NamedSize } from '../core/length/size.ts';
import type { Length } from '../core/length/length.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import type { BottomWeight } from '../core/length/bottomWeight.ts';
import { mountOfFrame } from '../core/settings/frame.ts';
import type { Settings } from '../core/settings/settings.ts';
import { type ResultKey, resultLengths } from './headers.ts';

/**
 * The texts of the result columns of one row, in the order of `resultLengths`, `resultWeight`, `resultPlaces` and
 * `resultTexts`.
 * @param stated the settings that the row was worked out with; see `settingsText`
 */
export function resultCells(
	result: RowResult,
	steps: readonly number[],
	{ unit }: Settings,
	stated: string,
): readonly string[] {
	const text = (length: Length | undefined) => (length === undefined ? '' : formatExact(length, unit));
	const lengths = resultLengths.map(({ key }) => text(resultLength(result, key)));
	const places = [result.hung?.left, result.hung?.hooks?.hooks[0]?.height].map(text);
	const codes = [...new Set(result.findings.map(({ code }) => code))];
	const { weightKg } = result.framed;
	const weight = weightKg === undefined ? '' : weightKg.toFixed(kgDecimals);
	return [...lengths, weight, ...places, codes.join(' '), steps.join(' '), stated];
}

/** Weights are written to the gram. */
const kgDecimals = 3;

/** A worked-out length of a row; undefined where it is not known. */
export function resultLength({ solved, framed: { size } }: RowResult, key: ResultKey): Length | undefined {
	if (key === 'framedWidth') return size?.width;
	if (key === 'framedHeight') return size?.height;
	return solved[key];
}

/** The steps of a row's cuts, by the row's place from 0; none where there is no plan. */
export const stepsOfRow = (bench: BenchPlan, index: number): readonly number[] => bench.stepsOfRows[index] ?? [];

/**
 * The settings that rows are worked out with, in one line that can be typed again.
 * @param sizes those that the rows name, if any: `size Small=400 x 300 mm`
 */
export function settingsText(settings: Settings, sizes: readonly NamedSize[] = []): string {
	const { unit, mountSize } = settings;
	const text = (length: typeof settings.ruler) => formatTypeable(length, unit);
	const entries: [string, string][] = [
		['unit', unit],
		['ruler', text(settings.ruler)],
		['mount', mountSize ? `${text(mountSize.width).replace(/ \w+$/, '')} x ${text(mountSize.height)}` : mountOfFrame],
		['border', text(settings.border)],
		['weight', weightText(settings.bottomWeight, settings)],
		['overlap', text(settings.overlap)],
	];
	if (settings.reveal !== undefined) entries.push(['reveal', text(settings.reveal)]);
	for (const { name, width, height } of sizes)
		entries.push([`${sizeWord}${escapedName(name)}`, `${text(width).replace(/ \w+$/, '')} x ${text(height)}`]);
	return entries.map(([key, value]) => `${key}=${value}`).join('; ');
}

function weightText(weight: BottomWeight, { unit }: Settings): string {
	if (weight.kind === 'optical centre') return 'optical centre';
	if (weight.kind === 'length') return formatTypeable(weight.more, unit);
	const percent = fraction(BigInt(weight.numerator) * 100n, BigInt(weight.denominator));
	if (percent.denominator === 1n) return `${percent.numerator} %`;
	const decimal = Number(percent.numerator) / Number(percent.denominator);
	return /^\d+\.\d{1,9}$/.test(`${decimal}`) ? `${decimal} %` : `${percent.numerator}/${percent.denominator} %`;
}
