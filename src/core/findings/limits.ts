import { type Length, sameWithin, toMm } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import { clear, clearEach, cutToSuit, sizeColumns } from './candidates.ts';
import type { Candidate, Finder, Found, RowContext } from './found.ts';

/** `over-limit`: the mount is larger than the show's rules allow, either way round. */
export const overLimit: Finder = (context) => found(context, 'over-limit', mountLimits(context, 'over'));

/** `under-limit`: the mount is smaller than the rules allow, or the picture's area is. */
export const underLimit: Finder = (context) => {
	const area = pictureArea(context);
	return [...found(context, 'under-limit', mountLimits(context, 'under')), ...(area ? [area] : [])];
};

interface Breach {
	readonly limit: Size;
	readonly kind: 'largest' | 'smallest' | 'exact';
}

function mountLimits({ solution, settings }: RowContext, way: 'over' | 'under'): Breach | undefined {
	const { mountWidth: width, mountHeight: height } = solution.solved;
	if (width === undefined || height === undefined) return undefined;
	const { largest, smallest, exact, within } = settings.limits;
	const [outer, inner] = [way === 'over' ? largest : smallest, exact];
	const sign = way === 'over' ? 1 : -1;
	if (outer && isPast(width, height, outer, 0, sign))
		return { limit: outer, kind: way === 'over' ? 'largest' : 'smallest' };
	if (inner && isPast(width, height, inner, within ?? 0, sign)) return { limit: inner, kind: 'exact' };
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

function found(context: RowContext, code: 'over-limit' | 'under-limit', breach: Breach | undefined): Found[] {
	if (!breach) return [];
	const { mountWidth, mountHeight } = context.solution.solved;
	const { within } = context.settings.limits;
	return [
		{
			code,
			level: 'stop',
			cells: ['mountWidth', 'mountHeight'],
			figures: () => ({
				kind: breach.kind,
				mount: { width: mountWidth!, height: mountHeight! },
				limit: breach.limit,
				within: breach.kind === 'exact' && within ? within : undefined,
			}),
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
			offer: { kind: 'set size', of: 'mount', size: limit },
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
	return {
		code: 'under-limit',
		level: 'stop',
		cells: ['pictureWidth', 'pictureHeight'],
		figures: () => ({ kind: 'picture area', area: { mm2: areaMm2 }, least: { mm2: pictureAreaMm2 } }),
		candidates: () => clearEach(context, sizeColumns),
	};
}
