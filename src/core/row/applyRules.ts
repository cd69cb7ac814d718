import { isSame, sameWithin } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Settings } from '../settings/settings.ts';
import { evenWeight, fixedWeight, startingBorder, weightOf } from './border.ts';
import { type Cells, type SizeKey, sizeKeys } from './cells.ts';
import type { Cover } from './cover.ts';
import {
	type Axes,
	isKnown,
	type Relations,
	settle,
	settleWith,
	unknownValues,
	type Values,
	type Weight,
} from './equations.ts';

/** Where the mount's size comes from. */
export type MountSource = 'show' | 'named' | 'none of them';

/** A row by the rules, before the ruler. */
export interface RuledRow {
	/** What is typed, the size named in the mount cell among it. */
	readonly typed: Values;
	readonly values: Values;
	/** The axes whose typed cells can all be true. */
	readonly agrees: Axes;
	readonly relations: Relations;
	readonly mountSource: MountSource;
	/** The border that the row starts from. */
	readonly border: number;
	/** The values with the border set regardless of room: where they know more, only room is missing. */
	readonly regardlessOfRoom: Values;
	/** Whether the row's shape holds; undefined where it has none. */
	readonly isShapeKept: boolean | undefined;
}

const leastSize = 0.5; // of a unit: less is zero with the error of a double

/**
 * The rules of a row in order of strength, each kept where it agrees with those before it: sums, typed cells, shape, the
 * show's mount, bottom weight, border.
 */
export function applyRules(cells: Cells, cover: Cover, settings: Settings): RuledRow {
	const ratio = cells.shape && cells.shape.numerator / cells.shape.denominator;
	const named = cells.mount.kind === 'size' ? cells.mount.size : undefined;
	const start = (typed: Values, way?: Size) => startWith(typed, cover, ratio, way);

	let { typed, agrees, relations, values, isShapeKept } = start(typedValues(cells));
	let mountSource: MountSource = 'none of them';
	if (named) {
		mountSource = 'named';
		const before = { typed, agrees, values };
		const ways = waysRound(named, liesWide(typed, values, ratio));
		const tries = ways.map((way) => start(typedValues(cells), way));
		// An axis that is in conflict without the name may stay so, but its typed mount side must be that of the name.
		const agreeing = tries.filter(
			(tried, i) =>
				isMountTyped(before.typed, ways[i]!) &&
				(tried.agrees.width || !before.agrees.width) &&
				(tried.agrees.height || !before.agrees.height),
		);
		const first = agreeing.find((tried) =>
			hasRoom(before.values, withWeight(tried.values, tried.relations, cells, settings).values, settings),
		);
		({ typed, agrees, relations, values, isShapeKept } = first ?? agreeing[0] ?? tries[0]!);
	} else if (cells.mount.kind === 'show' && settings.mountSize) {
		for (const way of waysRound(settings.mountSize, liesWide(typed, values, ratio))) {
			const tried = withMount(values, typed, agrees, way, relations);
			const weighted = tried && withWeight(tried, relations, cells, settings);
			if (!weighted || !hasRoom(values, weighted.values, settings)) continue;
			({ values, relations } = weighted);
			mountSource = 'show';
			break;
		}
	}
	if (mountSource !== 'show') ({ values, relations } = withWeight(values, relations, cells, settings));

	const border = startingBorder(cells, settings);
	values = withBorder(values, relations, border);
	return {
		typed,
		values,
		agrees,
		relations,
		mountSource,
		border,
		regardlessOfRoom: isComplete(values, agrees) ? values : withBorderRegardless(values, relations, border),
		isShapeKept,
	};
}

function typedValues(cells: Cells): Values {
	const values: Record<SizeKey, number> = { ...unknownValues };
	for (const key of sizeKeys) if (cells[key] !== undefined) values[key] = cells[key];
	return values;
}

/**
 * Sums, typed cells and shape. Each axis is tried by itself: where its typed cells cannot all be true it takes no part.
 * @param named the size named in the mount cell, as it lies: it counts as typed
 */
function startWith(cellValues: Values, cover: Cover, ratio: number | undefined, named?: Size) {
	const added = { addedWidth: cover.width.added, addedHeight: cover.height.added };
	const typed = {
		...cellValues,
		mountWidth: isKnown(cellValues.mountWidth) ? cellValues.mountWidth : (named?.width ?? NaN),
		mountHeight: isKnown(cellValues.mountHeight) ? cellValues.mountHeight : (named?.height ?? NaN),
	};
	const isNamed = {
		width: !named || isSame(typed.mountWidth, named.width),
		height: !named || isSame(typed.mountHeight, named.height),
	};
	const both: Relations = { ...added, axes: { width: true, height: true } };
	const all = isNamed.width && isNamed.height ? settle(typed, both) : undefined;
	const isTrue = (axes: Axes) => settle(typed, { ...added, axes }) !== undefined;
	const agrees: Axes = all
		? both.axes
		: {
				width: isNamed.width && isTrue({ width: true, height: false }),
				height: isNamed.height && isTrue({ width: false, height: true }),
			};
	const plain: Relations = all ? both : { ...added, axes: agrees };
	const start = all ?? settle(onlyAxes(typed, agrees), plain)!;
	if (ratio === undefined) return { typed, agrees, relations: plain, values: start, isShapeKept: undefined };
	if (agrees.width && agrees.height) {
		const shaped: Relations = { ...plain, ratio };
		const values = settle(start, shaped);
		return values
			? { typed, agrees, relations: shaped, values, isShapeKept: true }
			: { typed, agrees, relations: plain, values: start, isShapeKept: false };
	}
	// Of an axis in conflict only a typed picture side still counts.
	const bySide: Partial<Values> = {};
	if (agrees.height && isKnown(typed.pictureWidth))
		Object.assign(bySide, { pictureHeight: typed.pictureWidth / ratio });
	if (agrees.width && isKnown(typed.pictureHeight))
		Object.assign(bySide, { pictureWidth: typed.pictureHeight * ratio });
	const values = settleWith(start, bySide, plain);
	return { typed, agrees, relations: plain, values: values ?? start, isShapeKept: values !== undefined };
}

function onlyAxes(typed: Values, axes: Axes): Values {
	const width = axes.width ? {} : { mountWidth: NaN, windowWidth: NaN, pictureWidth: NaN, side: NaN };
	const height = axes.height ? {} : { mountHeight: NaN, windowHeight: NaN, pictureHeight: NaN, top: NaN, bottom: NaN };
	return { ...typed, ...width, ...height };
}

/** Whether the picture lies wide (true), tall (false), or neither is known: by its sizes, else the window's, else the shape. */
function liesWide(typed: Values, values: Values, ratio: number | undefined): boolean | undefined {
	const known = (key: SizeKey) => (isKnown(values[key]) ? values[key] : typed[key]);
	const by = (width: number, height: number) => (Math.abs(width - height) < leastSize ? undefined : width > height);
	const [pictureWidth, pictureHeight] = [known('pictureWidth'), known('pictureHeight')];
	if (isKnown(pictureWidth) && isKnown(pictureHeight)) return by(pictureWidth, pictureHeight);
	const [windowWidth, windowHeight] = [known('windowWidth'), known('windowHeight')];
	if (isKnown(windowWidth) && isKnown(windowHeight)) return by(windowWidth, windowHeight);
	return ratio === undefined || ratio === 1 ? undefined : ratio > 1;
}

/** A size and the size turned, first as it lies: wide, tall, or as given. */
function waysRound(size: Size, wide: boolean | undefined): readonly Size[] {
	const turned: Size = { width: size.height, height: size.width };
	return wide === undefined || wide === size.width >= size.height ? [size, turned] : [turned, size];
}

/** Whether the typed sides of the mount, if any, are those of a size as it lies. */
const isMountTyped = ({ mountWidth, mountHeight }: Values, way: Size) =>
	(!isKnown(mountWidth) || isSame(mountWidth, way.width)) && (!isKnown(mountHeight) || isSame(mountHeight, way.height));

/** Both sides of the show's mount, or undefined: on an axis in conflict a typed side must still be the show's. */
function withMount(values: Values, typed: Values, agrees: Axes, way: Size, relations: Relations): Values | undefined {
	const set: Partial<Record<SizeKey, number>> = {};
	if (agrees.width) set.mountWidth = way.width;
	else if (isKnown(typed.mountWidth) && !isSame(typed.mountWidth, way.width)) return undefined;
	if (agrees.height) set.mountHeight = way.height;
	else if (isKnown(typed.mountHeight) && !isSame(typed.mountHeight, way.height)) return undefined;
	return settleWith(values, set, relations);
}

/** Whether all that a mount size settles has room: counting only what was not known before. */
function hasRoom(before: Values, after: Values, { ruler }: Settings): boolean {
	const least = ruler - sameWithin;
	for (const key of borderKeys) if (!isKnown(before[key]) && after[key] < least) return false;
	for (const key of innerKeys) if (!isKnown(before[key]) && after[key] <= leastSize) return false;
	// What typed borders settle already is not for the mount to answer for.
	const isWidthNew = !isKnown(before.side) && !(isKnown(before.mountWidth) && isKnown(before.windowWidth));
	if (isWidthNew && after.mountWidth - after.windowWidth < 2 * least) return false;
	const areBordersKnown = isKnown(before.top) && isKnown(before.bottom);
	const isHeightNew = !areBordersKnown && !(isKnown(before.mountHeight) && isKnown(before.windowHeight));
	return !(isHeightNew && after.mountHeight - after.windowHeight < 2 * least);
}

const borderKeys = ['side', 'top', 'bottom'] as const;
const innerKeys = ['windowWidth', 'windowHeight', 'pictureWidth', 'pictureHeight'] as const;

/** The bottom weight, where it agrees; none in the place of one that would leave top or bottom at zero or less. */
function withWeight(values: Values, relations: Relations, cells: Cells, settings: Settings) {
	if (!relations.axes.height) return { values, relations };
	const asked = weightOf(cells, settings);
	const weight = fixedWeight(asked) ?? opticalCentre(values, relations, startingBorder(cells, settings));
	const kept = settle(values, { ...relations, weight });
	if (!kept) return { values, relations };
	if (!(kept.top <= leastSize) && !(kept.bottom <= leastSize))
		return { values: kept, relations: { ...relations, weight } };
	const even = settle(values, { ...relations, weight: evenWeight });
	return even ? { values: even, relations: { ...relations, weight: evenWeight } } : { values, relations };
}

/**
 * The weight that centres the window optically: the top is (H − h)(W + w) / 4W. Where only the border is missing to know
 * both widths, with the side that the row starts from; else none.
 * Source: US Army SS0509, fig. 2-14, "method of optical centering".
 */
function opticalCentre(values: Values, relations: Relations, border: number): Weight {
	const known = isKnown(values.mountWidth) && isKnown(values.windowWidth);
	const at = known || !relations.axes.width ? values : (settleWith(values, { side: border }, relations) ?? values);
	// A window far off the mount has no optical centre: the share comes out at nothing, less, or past all bounds.
	const times = (4 * at.mountWidth) / (at.mountWidth + at.windowWidth) - 1;
	return times > 0 && Number.isFinite(times) ? { times, more: 0 } : evenWeight;
}

/** The values with side and top set to the border, or with as much of that as agrees and leaves room. */
function withBorder(values: Values, relations: Relations, border: number): Values {
	const { width, height } = relations.axes;
	const set = (side: boolean, top: boolean) => {
		const added = { ...(side && width ? { side: border } : {}), ...(top && height ? { top: border } : {}) };
		const next = settleWith(values, added, relations);
		return next && sizeKeys.every((key) => isKnown(values[key]) || !(next[key] <= leastSize)) ? next : undefined;
	};
	if (isComplete(values, relations.axes)) return values;
	const both = set(true, true);
	if (both) return both;
	// The larger picture of the two that keep the border on both sides and top.
	const bySide = width ? set(true, false) : undefined;
	if (bySide && bySide.top >= border - sameWithin) return bySide;
	const byTop = height ? set(false, true) : undefined;
	if (byTop && byTop.side >= border - sameWithin) return byTop;
	return bySide ?? byTop ?? values;
}

/** Whether nothing is open on the axes that take part. */
const isComplete = ({ mountWidth, side, mountHeight, top, bottom }: Values, { width, height }: Axes) =>
	(!width || (isKnown(mountWidth) && isKnown(side))) &&
	(!height || (isKnown(mountHeight) && isKnown(top) && isKnown(bottom)));

/** What either border would settle if there were room for anything. */
function withBorderRegardless(values: Values, relations: Relations, border: number): Values {
	const { width, height } = relations.axes;
	let next = values;
	if (width) next = settleWith(next, { side: border }, relations) ?? next;
	if (height) next = settleWith(next, { top: border }, relations) ?? next;
	return next;
}
