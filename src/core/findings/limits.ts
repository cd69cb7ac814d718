import { type Length, sameWithin, toMm, unitsPerInch } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import type { Size } from '../show/settings.ts';
import { clear, clearEach, cutToSuit, sizeColumns } from './candidates.ts';
import type { Candidate, Finder, Found, RowContext } from './found.ts';
import { sizeText } from './sizeText.ts';

/** `over-limit`: the mount is larger than the show's rules allow, either way round. */
export const overLimit: Finder = (context) => found(context, 'over-limit', mountLimits(context, 'over'));

/** `under-limit`: the mount is smaller than the rules allow, or the picture's area is. */
export const underLimit: Finder = (context) => {
	const area = pictureArea(context);
	return [...found(context, 'under-limit', mountLimits(context, 'under')), ...(area ? [area] : [])];
};

interface Breach {
	readonly limit: Size;
	readonly words: string;
}

function mountLimits({ solution, settings }: RowContext, way: 'over' | 'under'): Breach | undefined {
	const { mountWidth: width, mountHeight: height } = solution.solved;
	if (width === undefined || height === undefined) return undefined;
	const { largest, smallest, exact, within } = settings.limits;
	const [outer, inner] = [way === 'over' ? largest : smallest, exact];
	const sign = way === 'over' ? 1 : -1;
	if (outer && isPast(width, height, outer, 0, sign))
		return { limit: outer, words: way === 'over' ? 'the largest allowed is' : 'the smallest allowed is' };
	if (inner && isPast(width, height, inner, within ?? 0, sign)) return { limit: inner, words: 'the rules ask for' };
	return undefined;
}

/** Whether the size is past the limit both ways round: turned, it may keep to it. */
const isPast = (width: Length, height: Length, limit: Size, within: number, sign: number) =>
	[
		[limit.width, limit.height],
		[limit.height, limit.width],
	].every(
		([across, down]) => sign * (width - across!) > within + sameWithin || sign * (height - down!) > within + sameWithin,
	);

function found(context: RowContext, code: string, breach: Breach | undefined): Found[] {
	if (!breach) return [];
	const { mountWidth, mountHeight } = context.solution.solved;
	const { exact, within } = context.settings.limits;
	const tolerance = breach.limit === exact && within ? ` ± ${context.say(within)}` : '';
	return [
		{
			code,
			level: 'stop',
			cells: ['mountWidth', 'mountHeight'],
			message: () =>
				`The mount is ${sizeText(context, mountWidth!, mountHeight!)}; ${breach.words} ${sizeText(context, breach.limit.width, breach.limit.height)}${tolerance}, either way round.`,
			candidates: () => sizeMends(context, breach.limit),
		},
	];
}

function sizeMends(context: RowContext, limit: Size): Candidate[] {
	const typed = `${context.text(limit.width)} x ${context.text(limit.height)}`;
	return [
		clear('mount width', 'mount height'),
		...clearEach(context, sizeColumns),
		cutToSuit,
		{
			label: () => `Make the mount ${sizeText(context, limit.width, limit.height)}`,
			change: { mount: typed, 'mount width': '', 'mount height': '' },
		},
	];
}

function pictureArea(context: RowContext): Found | undefined {
	const { pictureWidth, pictureHeight } = context.solution.solved;
	const { pictureAreaMm2 } = context.settings.limits;
	if (pictureAreaMm2 === undefined || pictureWidth === undefined || pictureHeight === undefined) return undefined;
	const areaMm2 = toMm(pictureWidth) * toMm(pictureHeight);
	if (areaMm2 >= pictureAreaMm2 - 0.01) return undefined;
	const { unit } = context.settings;
	return {
		code: 'under-limit',
		level: 'stop',
		cells: ['pictureWidth', 'pictureHeight'],
		message: () => {
			const [is, least] = areasApart(areaMm2, pictureAreaMm2, unit);
			return `The picture’s area is ${is}, under the least that the rules allow, ${least}.`;
		},
		candidates: () => clearEach(context, sizeColumns),
	};
}

/** Two areas that differ, with as many decimals as show that: whole ones of cm² or in² if they do. */
function areasApart(areaMm2: number, otherMm2: number, unit: Unit): readonly [string, string] {
	const one = unit === 'in' ? toMm(unitsPerInch as Length) ** 2 : 100;
	const words = (mm2: number, places: number) =>
		`${Number((mm2 / one).toFixed(places))} ${unit === 'in' ? 'in' : 'cm'}²`;
	let places = 0;
	while (places < 5 && words(areaMm2, places) === words(otherMm2, places)) places++;
	return [words(areaMm2, places), words(otherMm2, places)];
}
