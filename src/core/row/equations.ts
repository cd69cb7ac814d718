import { sameWithin } from '../length/length.ts';
import type { SizeKey } from './cells.ts';

/**
 * Sizes and borders before they are put on the ruler, in units of a `Length`; NaN where not known. They are doubles,
 * exact to far less than one unit: whatever is cut is rounded to whole units from them, and summed as whole units.
 */
export type Values = Readonly<Record<SizeKey, number>>;

/** The axes of a row that take part: an axis in conflict does not. */
export interface Axes {
	readonly width: boolean;
	readonly height: boolean;
}

/** How the bottom follows from the top: `bottom = times · top + more`. */
export interface Weight {
	readonly times: number;
	readonly more: number;
}

/** What holds between the sizes of a row. */
export interface Relations {
	readonly axes: Axes;
	/** Window less picture, on each axis. */
	readonly addedWidth: number;
	readonly addedHeight: number;
	/** Picture width by picture height; undefined where the row has no shape or it was given up. */
	readonly ratio?: number | undefined;
	readonly weight?: Weight | undefined;
}

/** Nothing known. */
export const unknownValues: Values = {
	mountWidth: NaN,
	mountHeight: NaN,
	windowWidth: NaN,
	windowHeight: NaN,
	pictureWidth: NaN,
	pictureHeight: NaN,
	side: NaN,
	top: NaN,
	bottom: NaN,
};

/** Whether a value is known. */
export const isKnown = (value: number): boolean => !Number.isNaN(value);

/** Whether an equation that is all known is out by more than 1 µm. */
const isOut = (difference: number) => difference > sameWithin + 1 || difference < -sameWithin - 1;

/**
 * All that follows from what is known, one equation at a time: no two unknowns of a row ever need more than that. It is
 * written out, equation by equation, because every row runs through it some ten times whenever a setting changes.
 * @returns undefined where an equation is out by more than 1 µm
 */
export function settle(start: Values, relations: Relations): Values | undefined {
	const values: Record<SizeKey, number> = { ...start };
	const { axes, addedWidth, addedHeight, ratio, weight } = relations;
	for (let isNew = true; isNew;) {
		isNew = false;
		if (axes.width) {
			const { mountWidth, side, windowWidth } = values;
			// mountWidth = 2·side + windowWidth
			if (Number.isNaN(mountWidth)) {
				if (!Number.isNaN(side + windowWidth)) [values.mountWidth, isNew] = [2 * side + windowWidth, true];
			} else if (Number.isNaN(side)) {
				if (!Number.isNaN(windowWidth)) [values.side, isNew] = [(mountWidth - windowWidth) / 2, true];
			} else if (Number.isNaN(windowWidth)) [values.windowWidth, isNew] = [mountWidth - 2 * side, true];
			else if (isOut(mountWidth - 2 * side - windowWidth)) return undefined;
			// windowWidth = pictureWidth + addedWidth
			if (Number.isNaN(values.windowWidth)) {
				if (!Number.isNaN(values.pictureWidth)) [values.windowWidth, isNew] = [values.pictureWidth + addedWidth, true];
			} else if (Number.isNaN(values.pictureWidth))
				[values.pictureWidth, isNew] = [values.windowWidth - addedWidth, true];
			else if (isOut(values.windowWidth - values.pictureWidth - addedWidth)) return undefined;
		}
		if (axes.height) {
			// mountHeight = top + windowHeight + bottom
			const { mountHeight, top, windowHeight, bottom } = values;
			const unknowns =
				Number(Number.isNaN(mountHeight)) +
				Number(Number.isNaN(top)) +
				Number(Number.isNaN(windowHeight)) +
				Number(Number.isNaN(bottom));
			if (unknowns === 1) {
				isNew = true;
				if (Number.isNaN(mountHeight)) values.mountHeight = top + windowHeight + bottom;
				else if (Number.isNaN(top)) values.top = mountHeight - windowHeight - bottom;
				else if (Number.isNaN(windowHeight)) values.windowHeight = mountHeight - top - bottom;
				else values.bottom = mountHeight - top - windowHeight;
			} else if (unknowns === 0 && isOut(mountHeight - top - windowHeight - bottom)) return undefined;
			// windowHeight = pictureHeight + addedHeight
			if (Number.isNaN(values.windowHeight)) {
				if (!Number.isNaN(values.pictureHeight))
					[values.windowHeight, isNew] = [values.pictureHeight + addedHeight, true];
			} else if (Number.isNaN(values.pictureHeight))
				[values.pictureHeight, isNew] = [values.windowHeight - addedHeight, true];
			else if (isOut(values.windowHeight - values.pictureHeight - addedHeight)) return undefined;
			// bottom = times·top + more
			if (weight !== undefined) {
				if (Number.isNaN(values.top)) {
					if (!Number.isNaN(values.bottom)) [values.top, isNew] = [(values.bottom - weight.more) / weight.times, true];
					else if (!Number.isNaN(values.mountHeight - values.windowHeight)) {
						// Neither this equation nor the sum can find one border alone: together they share out what is left.
						const shared = values.mountHeight - values.windowHeight;
						[values.top, isNew] = [(shared - weight.more) / (1 + weight.times), true];
					}
				} else if (Number.isNaN(values.bottom))
					[values.bottom, isNew] = [values.top * weight.times + weight.more, true];
				else if (isOut(values.bottom - values.top * weight.times - weight.more)) return undefined;
			}
		}
		if (ratio !== undefined) {
			// pictureWidth = ratio·pictureHeight
			if (Number.isNaN(values.pictureWidth)) {
				if (!Number.isNaN(values.pictureHeight)) [values.pictureWidth, isNew] = [values.pictureHeight * ratio, true];
			} else if (Number.isNaN(values.pictureHeight))
				[values.pictureHeight, isNew] = [values.pictureWidth / ratio, true];
			// 1 µm of the longer side
			else if (isOut((values.pictureWidth - values.pictureHeight * ratio) / Math.max(1, ratio))) return undefined;
		}
	}
	return values;
}

/** The values with some of them set, where they were not known, and all that follows; undefined where they disagree. */
export function settleWith(start: Values, set: Partial<Values>, relations: Relations): Values | undefined {
	const values: Record<SizeKey, number> = { ...start };
	for (const key of Object.keys(set) as SizeKey[]) {
		const value = set[key]!;
		if (Number.isNaN(values[key])) values[key] = value;
		else if (Math.abs(values[key] - value) > sameWithin + 1) return undefined;
	}
	return settle(values, relations);
}
