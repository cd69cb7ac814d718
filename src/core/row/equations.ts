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

/** A sum of at most four terms: `a·x + b·y + c·z + d·v = constant`. */
interface Equation {
	readonly keys: readonly SizeKey[];
	readonly factors: readonly number[];
	readonly constant: number;
	/** One that only finds a value, and follows from the others, is not checked. */
	readonly isChecked: boolean;
}

const widthSum: Equation = sum(['mountWidth', 'side', 'windowWidth'], [1, -2, -1]);
const heightSum: Equation = sum(['mountHeight', 'top', 'bottom', 'windowHeight'], [1, -1, -1, -1]);

function sum(keys: readonly SizeKey[], factors: readonly number[], constant = 0, isChecked = true): Equation {
	return { keys, factors, constant, isChecked };
}

/** Equations are made once for each set of relations: a row settles the same ones again and again. */
const made = new WeakMap<Relations, readonly Equation[]>();

function equationsOf(relations: Relations): readonly Equation[] {
	let equations = made.get(relations);
	if (!equations) made.set(relations, (equations = makeEquations(relations)));
	return equations;
}

function makeEquations({ axes, addedWidth, addedHeight, ratio, weight }: Relations): readonly Equation[] {
	const equations: Equation[] = [];
	if (axes.width) equations.push(widthSum, sum(['windowWidth', 'pictureWidth'], [1, -1], addedWidth));
	if (axes.height) equations.push(heightSum, sum(['windowHeight', 'pictureHeight'], [1, -1], addedHeight));
	if (ratio !== undefined) {
		const scale = Math.max(1, ratio); // so that 1 µm is a µm of the longer side
		equations.push(sum(['pictureWidth', 'pictureHeight'], [1 / scale, -ratio / scale]));
	}
	if (weight !== undefined && axes.height) {
		equations.push(sum(['bottom', 'top'], [1, -weight.times], weight.more));
		// Both borders from what they share: neither of the two equations that this follows from can find one alone.
		equations.push(sum(['mountHeight', 'windowHeight', 'top'], [1, -1, -(1 + weight.times)], weight.more, false));
	}
	return equations;
}

/**
 * All that follows from what is known, one equation at a time: no two unknowns of a row ever need more than that.
 * @returns undefined where an equation is out by more than 1 µm
 */
export function settle(start: Values, relations: Relations): Values | undefined {
	const values: Record<SizeKey, number> = { ...start };
	const equations = equationsOf(relations);
	for (let isNew = true; isNew;) {
		isNew = false;
		for (const { keys, factors, constant, isChecked } of equations) {
			let rest = constant;
			let unknown = -1;
			let unknowns = 0;
			for (let i = 0; i < keys.length; i++) {
				const value = values[keys[i]!];
				if (!Number.isNaN(value)) rest -= factors[i]! * value;
				else {
					unknown = i;
					unknowns++;
				}
			}
			if (unknowns === 1) {
				values[keys[unknown]!] = rest / factors[unknown]!;
				isNew = true;
			} else if (unknowns === 0 && isChecked && (rest > sameWithin + 1 || rest < -sameWithin - 1)) return undefined;
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
