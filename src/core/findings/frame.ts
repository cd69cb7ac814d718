import { sameWithin } from '../length/length.ts';
import { hiddenByFrame } from '../row/frame.ts';
import { innerBorder } from '../row/innerMount.ts';
import { fixingOf, isFlat, loadOf, safetyFactor } from '../walls/fixing.ts';
import { type Layer, mountLayers, thicknessOf } from '../row/stack.ts';
import { clearEach, sizeColumns } from './candidates.ts';
import type { CutBorder, StackWord } from './figures.ts';
import { axes, type Finder } from './found.ts';
import { otherFrames, otherMaterials } from './otherFrames.ts';

/** `too-thick`: mounts, print and undermount are thicker than the show's rules allow. */
export const tooThick: Finder = (context) => {
	const { hasMount, settings } = context;
	const { thickness } = settings.limits;
	if (thickness === undefined || !hasMount) return [];
	const layers = mountLayers(context, settings);
	const total = thicknessOf(layers);
	if (total <= thickness + sameWithin) return [];
	return [
		{
			code: 'too-thick',
			level: 'stop',
			cells: ['board'],
			figures: () => ({ what: layerWords(layers), parts: thicknesses(layers), total, most: thickness }),
			candidates: () => clearEach(context, ['inner board', 'inner mount', 'board']),
		},
	];
};

/**
 * `too-deep`: glazing, spacer, mounts, print, undermount and backing are deeper than the frame's rebate (`stop`), or
 * leave too little of it for the points behind them (`look`).
 */
export const tooDeep: Finder = (context) => {
	const { frame, framed, settings } = context;
	const depth = frame.frame?.depth;
	if (depth === undefined) return [];
	const { layers, depth: total } = framed;
	const left = depth - total;
	if (left >= settings.pointsRoom - sameWithin) return [];
	const isOver = left < -sameWithin;
	return [
		{
			code: 'too-deep',
			level: isOver ? 'stop' : 'look',
			cells: ['frame'],
			figures: () => ({
				what: layerWords(layers),
				parts: thicknesses(layers),
				total,
				depth,
				left,
				points: isOver ? undefined : settings.pointsRoom,
			}),
			candidates: () => [
				...clearEach(context, ['frame', 'inner board', 'inner mount', 'spacer', 'board', 'glazing', 'backing']),
				...otherFrames(context),
				...otherMaterials(context),
			],
		},
	];
};

const thicknesses = (layers: readonly Layer[]) => layers.map(({ thickness }) => thickness);

/** What the parts of a stack are called: two mounts in one word. */
function layerWords(layers: readonly Layer[]): readonly StackWord[] {
	const isDouble = layers.some(({ what }) => what === 'inner mount');
	return layers.flatMap(({ what }) => {
		if (what === 'inner mount') return [];
		return what === 'mount' && isDouble ? 'mounts' : what;
	});
}

/** `lip-shrinks`: what the lip of the frame leaves to be seen of a border is under the least border. */
export const lipShrinks: Finder = (context) => {
	const { settings, solution } = context;
	const hidden = hiddenByFrame(context);
	if (!hidden) return [];
	return axes.flatMap(({ axis, borders }) => {
		const thin = borders.filter((key) => {
			const border = solution.solved[key];
			return border !== undefined && border - hidden[axis] < settings.leastBorder - sameWithin;
		});
		if (thin.length === 0) return [];
		return [
			{
				code: 'lip-shrinks',
				level: 'look' as const,
				cells: thin,
				figures: () => ({
					frame: hidden.frame.name,
					seen: thin.map((border) => {
						const whole = solution.solved[border]!;
						return { border, shows: Math.round(whole - hidden[axis]), length: whole };
					}),
					least: settings.leastBorder,
				}),
				candidates: () => [
					...clearEach(context, ['frame', 'board']),
					...otherFrames(context),
					...clearEach(context, sizeColumns),
				],
			},
		];
	});
};

/** `past-guide`: a border past the guide's greatest setting, or under the least that it can hold. */
export const pastGuide: Finder = (context) => {
	const { read, settings, solution } = context;
	const { greatest, least, kind, correction = 0 } = settings.bench;
	if (kind === 'straight edge' || read.cells.isFloat) return [];
	// A guide that cuts short of what it reads is set wider than the border.
	const settingOf = (border: number) => border - correction;
	const isBelowZero = (border: number) => settingOf(border) < -sameWithin;
	const isPast = (border: number) =>
		isBelowZero(border) ||
		(greatest !== undefined && settingOf(border) > greatest + sameWithin) ||
		(least !== undefined && border < least - sameWithin);
	const withSetting = (cut: CutBorder): CutBorder => ({ ...cut, setting: settingOf(cut.length) });
	const { innerMount } = read.cells;
	return axes.flatMap(({ borders }) => {
		const cuts = borders.flatMap((key) => {
			const border = solution.solved[key];
			if (border === undefined) return [];
			const outer: CutBorder = { of: 'mount', border: key, length: border };
			if (!innerMount) return [outer];
			const inner = innerBorder(border, innerMount, settings);
			return [outer, { of: 'inner mount' as const, border: key, length: inner }];
		});
		const beyond = cuts.filter(({ length: border }) => isPast(border));
		if (beyond.length === 0) return [];
		const past = borders.filter((name) => beyond.some(({ border }) => border === name));
		const below = beyond.find(({ length: border }) => isBelowZero(border));
		return [
			{
				code: 'past-guide',
				level: 'look' as const,
				cells: past,
				figures: () =>
					below
						? { kind: 'below nothing', cuts: beyond, setting: settingOf(below.length) }
						: { kind: 'out of range', cuts: correction === 0 ? beyond : beyond.map(withSetting), least, greatest },
				candidates: () => clearEach(context, sizeColumns),
			},
		];
	});
};

/** A framed print heavier than this is for two people to lift. Common practice. */
const mostKg = 25;

/**
 * `heavy`: framed, it is more than one person lifts, or its fixing is not rated for what it has to hold: the weight, or
 * what its cord pulls at both rings where that is more. No rating is enough for a flat cord, whatever hangs on it.
 */
export const heavy: Finder = (context) => {
	const { frame, framed, read, settings } = context;
	const { weightKg } = framed;
	const { ratingKg } = settings.hanging;
	const isLifted = weightKg !== undefined && weightKg > mostKg;
	const fixing = ratingKg === undefined ? undefined : fixingOf({ frame, framed, read }, settings);
	const below = fixing && isFlat(fixing) ? Math.max(0, -fixing.rise!) : undefined;
	const load = fixing && below === undefined && weightKg !== undefined ? loadOf(weightKg, fixing) : undefined;
	const isOver = load !== undefined && load * safetyFactor > ratingKg!;
	if (!isLifted && !isOver && below === undefined) return [];
	return [
		{
			code: 'heavy',
			level: 'look',
			cells: ['frame'],
			figures: () => ({
				...(isLifted && { weight: { kg: weightKg }, most: { kg: mostKg } }),
				...(isOver && { load: { kg: load }, factor: { count: safetyFactor }, rating: { kg: ratingKg! } }),
				...(below !== undefined && { below, rating: { kg: ratingKg! } }),
			}),
			candidates: () => [
				...clearEach(context, ['drop', 'glazing', 'backing']),
				...otherMaterials(context),
				...otherFrames(context),
			],
		},
	];
};

/** `no-frame` of one row: a leg of its frame and the saw's cut are longer than a stick of the moulding. */
export const shortStick: Finder = (context) => {
	const {
		frame: { frame },
		framed,
		settings,
	} = context;
	if (!frame?.stick || frame.size || !framed.size) return [];
	const { stick } = frame;
	const leg = Math.max(framed.size.width, framed.size.height) + settings.saw;
	if (leg <= stick + sameWithin) return [];
	return [
		{
			code: 'no-frame',
			level: 'stop',
			cells: ['frame'],
			figures: () => ({ kind: 'short stick', frame: frame.name, leg, stick }),
			candidates: () => [...clearEach(context, ['frame']), ...otherFrames(context), ...clearEach(context, sizeColumns)],
		},
	];
};
