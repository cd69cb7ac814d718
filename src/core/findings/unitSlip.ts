import { type Length, sameWithin } from '../length/length.ts';
import type { Cells, SizeKey } from '../row/cells.ts';
import { isKnown } from '../row/equations.ts';
import type { Solution } from '../row/solution.ts';
import type { Settings } from '../settings/settings.ts';
import { columnOf } from '../row/columnOfSize.ts';
import type { Level } from './finding.ts';
import { axes, type AxisKeys, type Found, type RowContext } from './found.ts';
import {
	readAnew,
	sizeIn,
	type Slip,
	type SlipGroup,
	slipGroups,
	type SlipKey,
	slips,
	tearsApart,
} from './slipReadings.ts';

/** A picture whose longer side is under this share of the mount's is taken for a slip if another unit makes sense of it. */
const smallestShare = 5;

/** So is a border under this share of the least border. */
const thinnestShare = 4;

/** What does not add up counts as mended where less than this share of it is left: other cells may be a little off. */
const shareLeft = 10;

/** What a size brings that was not there before, or not known: no sign that it is the wrong one. */
const broughtBySize: readonly string[] = ['own-size', 'needs-size', 'off-ruler', 'weight-lost'];

/** A mount within this factor of the show's, either way, is near it: a reading may bring it there, not take it further. */
const nearShows = 3;

interface SlipReading {
	readonly slip: Slip;
	readonly cells: Cells;
	/** What is still to be looked at. */
	readonly looks: number;
	readonly isNearShows: boolean;
	/** Whether something of what did not add up is left. */
	readonly isNearly: boolean;
}

/**
 * `unit-slip`: the row does not fit or add up, its picture or a border is far too small, or it has a mount of its own;
 * and a group of its typed lengths, read × 10, ÷ 10, × 25.4 or ÷ 25.4, mends that and brings nothing else that is wrong.
 * Of the groups the first counts that leaves a mount near the show's, of its readings those with the least to look at.
 *
 * @param said what else is found in the row
 */
export function findUnitSlip(context: RowContext, said: readonly Found[]): readonly Found[] {
	if (!isSuspect(context)) return [];
	let best: { readonly keys: SlipGroup; readonly readings: readonly SlipReading[] } | undefined;
	for (const keys of slipGroups(context)) {
		const found = slips[context.settings.unit].flatMap((slip) => readingOf(context, said, keys, slip) ?? []);
		const near = found.filter(({ isNearShows }) => isNearShows);
		const readings = near.length > 0 ? near : found;
		if (readings.length > 0 && (best === undefined || near.length > 0)) best = { keys, readings };
		if (near.length > 0) break;
	}
	if (best === undefined) return [];
	const least = Math.min(...best.readings.map(({ looks }) => looks));
	return [
		foundIn(
			context,
			best.keys,
			best.readings.filter(({ looks }) => looks === least),
		),
	];
}

/** Whether something is so wrong that another unit may be meant. */
const isSuspect = (context: RowContext): boolean => isFarOff(context) || isStray(context);

const isFarOff = ({ solution, settings }: RowContext): boolean =>
	isInTrouble(solution) || isPictureSmall(solution) || leastOf(solution) * thinnestShare < settings.leastBorder;

const isInTrouble = ({ width, height }: Solution): boolean =>
	[width, height].some((outcome) => outcome === 'conflict' || outcome === 'does not fit');

/** Whether the row asks for the show's mount and does not come out in it. */
const isStray = ({ read, solution, settings }: RowContext): boolean =>
	read.cells.mount.kind === 'show' && settings.mountSize !== undefined && solution.mountSource !== 'show';

const leastOf = ({ solved }: Solution): number =>
	Math.min(...(['side', 'top', 'bottom'] as const).map((key) => solved[key] ?? Infinity));

/** Whether the picture's longer side is under a fifth of the mount's. */
function isPictureSmall({ solved }: Solution): boolean {
	const { mountWidth, mountHeight, pictureWidth, pictureHeight } = solved;
	if (!mountWidth || !mountHeight || !pictureWidth || !pictureHeight) return false;
	return Math.max(pictureWidth, pictureHeight) * smallestShare < Math.max(mountWidth, mountHeight);
}

function isPictureLarge({ solved }: Solution): boolean {
	const { mountWidth, mountHeight, pictureWidth, pictureHeight } = solved;
	if (!mountWidth || !mountHeight || !pictureWidth || !pictureHeight) return false;
	return Math.max(pictureWidth, pictureHeight) > Math.max(mountWidth, mountHeight);
}

/** The row with a group of its cells read in another unit; undefined where that mends nothing, or brings something. */
function readingOf(context: RowContext, said: readonly Found[], keys: SlipGroup, slip: Slip): SlipReading | undefined {
	const { read, settings } = context;
	const cells = readAnew(read.cells, keys, slip);
	const borders = [cells?.side, cells?.top, cells?.bottom];
	if (!cells || borders.some((border) => border !== undefined && border < settings.leastBorder - sameWithin))
		return undefined;
	if (tearsApart(read.cells, cells)) return undefined;
	const { solution, found } = context.readAs(cells);
	if (!isMended(context, cells, solution)) return undefined;
	const far = farFromShows(solution, settings);
	if (far > Math.max(nearShows, farFromShows(context.solution, settings))) return undefined;
	const others = found();
	if (bringsMore(said, others)) return undefined;
	return {
		slip,
		cells,
		looks: others.filter(({ level, code }) => level === 'look' && code !== 'needs-size').length,
		isNearShows: far <= nearShows,
		isNearly: isInTrouble(solution),
	};
}

function isMended(context: RowContext, cells: Cells, after: Solution): boolean {
	const { solution: before, settings } = context;
	if (isPictureSmall(after) || isPictureLarge(after)) return false;
	if (leastOf(after) < settings.leastBorder - sameWithin) return false;
	if (after.width === 'open' || after.height === 'open') return false;
	const isEachAxis = axes.every((keys) => {
		const [left, was] = [excessOf(after, cells, keys), excessOf(before, context.read.cells, keys)];
		// Both by itself and beside the sizes: an axis that is ten times as large has not lost what it does not fit by.
		return left.units === 0 || (left.units * shareLeft < was.units && left.share * shareLeft < was.share);
	});
	return isEachAxis && (isFarOff(context) || after.mountSource === 'show' || comesNear(before, after, settings));
}

/** How many times as large as the show's mount the row's is, or the other way round; 1 where it is not known. */
function farFromShows({ solved: { mountWidth, mountHeight } }: Solution, { mountSize }: Settings): number {
	if (!mountWidth || !mountHeight || !mountSize) return 1;
	const times = Math.max(mountWidth, mountHeight) / Math.max(mountSize.width, mountSize.height);
	return Math.max(times, 1 / times);
}

/** By how much an axis does not add up or fit, and by which share of its largest size; 0 where it does. */
function excessOf(
	solution: Solution,
	cells: Cells,
	keys: AxisKeys,
): { readonly units: number; readonly share: number } {
	const { typed, exact, cover, ...outcomes } = solution;
	const excess = (units: number, size: number) => ({
		units: units || Number.MIN_VALUE,
		share: units / size || Number.MIN_VALUE,
	});
	const outcome = outcomes[keys.axis];
	const named = cells.mount.kind === 'size' ? cells.mount.size[keys.axis] : NaN;
	const sizes = [...[keys.mount, keys.window, keys.picture].map((key) => typed[key]), named].filter(isKnown);
	if (outcome === 'does not fit') {
		const known = [keys.mount, keys.window, keys.picture, ...keys.borders].map((key) => exact[key]).filter(isKnown);
		return excess(largestOf(known.map((value) => -value)), largestOf(sizes.length > 0 ? sizes : known));
	}
	if (outcome !== 'conflict') return { units: 0, share: 0 };
	const asked = typed[keys.picture] + cover[keys.axis].added;
	const window = isKnown(typed[keys.window]) ? typed[keys.window] : asked;
	const [first, last] = keys.axis === 'width' ? [typed.side, typed.side] : [typed.top, typed.bottom];
	const misses = [
		first + window + last - typed[keys.mount],
		cover[keys.axis].isStated ? NaN : asked - window,
		(cells[keys.mount] ?? NaN) - named,
	].filter(isKnown);
	return excess(
		misses.reduce((sum, miss) => sum + Math.abs(miss), 0),
		largestOf(sizes),
	);
}

const largestOf = (values: readonly number[]): number => Math.max(1, ...values);

/** Whether a mount of the row's own comes so near to the show's that only a slip can have kept it away. */
function comesNear({ solved: before }: Solution, { solved: after }: Solution, { mountSize }: Settings): boolean {
	if (!mountSize) return false;
	const sides = [mountSize.width, mountSize.height];
	const missOf = ({ mountWidth, mountHeight }: Solution['solved'], [across, down]: readonly number[]) =>
		mountWidth === undefined || mountHeight === undefined
			? Infinity
			: Math.abs(mountWidth - across!) + Math.abs(mountHeight - down!);
	const least = (solved: Solution['solved']) => Math.min(missOf(solved, sides), missOf(solved, sides.toReversed()));
	return least(after) * shareLeft < least(before);
}

const gravity: Readonly<Record<Level, number>> = { note: 1, look: 2, stop: 3 };

/** Whether more is found than before, or something graver. */
function bringsMore(before: readonly Found[], after: readonly Found[]): boolean {
	return after.some(({ code, level }) => {
		if (level !== 'stop' && broughtBySize.includes(code)) return false;
		return !before.some((one) => one.code === code && gravity[one.level] >= gravity[level]);
	});
}

function foundIn({ text, read }: RowContext, keys: SlipGroup, readings: readonly SlipReading[]): Found {
	const lengthsOf = (cells: Cells, key: SlipKey): readonly Length[] => {
		if (key !== 'mount' && key !== 'paper') return [cells[key]!];
		const { width, height } = sizeIn(cells, key)!;
		return [width, height];
	};
	const columnOfKey = (key: SlipKey) =>
		key === 'mount' || key === 'paper' || key === 'overlap' || key === 'reveal' ? key : columnOf(key as SizeKey);
	const meant = readings.map(({ slip, cells }) => ({
		as: slip.as,
		lengths: keys.map((key) => lengthsOf(cells, key)),
	}));
	return {
		code: 'unit-slip',
		level: 'stop',
		cells: keys.flatMap((key) => (key === 'mount' ? ['mountWidth', 'mountHeight'] : [cellOf(key)])),
		figures: () => ({
			typed: keys.map((key) => ({ column: columnOfKey(key), lengths: lengthsOf(read.cells, key) })),
			readings: meant,
			outcome: readings.every(({ isNearly }) => isNearly) ? 'nearly fits' : 'fits',
		}),
		candidates: () =>
			meant.map(({ lengths }) => ({
				offer: { kind: 'read in a unit', lengths },
				change: Object.fromEntries(keys.map((key, i) => [columnOfKey(key), lengths[i]!.map(text).join(' x ')])),
			})),
	};
}

/** A cell as findings name it: by its result, else by its column. */
const cellOf = (key: SlipKey): string =>
	['signingSpace', 'innerMount', 'marginLeft', 'marginTop'].includes(key) ? columnOf(key as SizeKey) : key;
