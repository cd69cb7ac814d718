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

type Term = readonly [SizeKey, number];

/** The terms add up to the constant. One that only finds a value, and follows from the others, is not checked. */
interface Equation {
	readonly terms: readonly Term[];
	readonly constant: number;
	readonly isChecked: boolean;
}

function equationsOf({ axes, addedWidth, addedHeight, ratio, weight }: Relations): Equation[] {
	const equations: Equation[] = [];
	const add = (constant: number, ...terms: Term[]) => equations.push({ terms, constant, isChecked: true });
	if (axes.width) {
		add(0, ['mountWidth', 1], ['side', -2], ['windowWidth', -1]);
		add(addedWidth, ['windowWidth', 1], ['pictureWidth', -1]);
	}
	if (axes.height) {
		add(0, ['mountHeight', 1], ['top', -1], ['bottom', -1], ['windowHeight', -1]);
		add(addedHeight, ['windowHeight', 1], ['pictureHeight', -1]);
	}
	if (ratio !== undefined) {
		const scale = Math.max(1, ratio); // so that 1 µm is a µm of the longer side
		add(0, ['pictureWidth', 1 / scale], ['pictureHeight', -ratio / scale]);
	}
	if (weight !== undefined && axes.height) {
		add(weight.more, ['bottom', 1], ['top', -weight.times]);
		// Both borders from what they share: neither of the two equations that this follows from can find one alone.
		const shared: Term[] = [
			['mountHeight', 1],
			['windowHeight', -1],
			['top', -(1 + weight.times)],
		];
		equations.push({ terms: shared, constant: weight.more, isChecked: false });
	}
	return equations;
}

/**
 * All that follows from what is known, one equation at a time: no two unknowns of a row ever need more than that.
 * @returns undefined where an equation is out by more than 1 µm
 */
export function settle(start: Values, relations: Relations): Values | undefined {
	const values: Record<SizeKey, number> = { ...start };
	let open = equationsOf(relations);
	for (;;) {
		const left: Equation[] = [];
		for (const equation of open) {
			let sum = equation.constant;
			let unknown: Term | undefined;
			let unknowns = 0;
			for (const term of equation.terms) {
				const value = values[term[0]];
				if (Number.isNaN(value)) {
					unknown = term;
					unknowns += 1;
				} else sum -= term[1] * value;
			}
			if (unknowns > 1) left.push(equation);
			else if (unknown) values[unknown[0]] = sum / unknown[1];
			else if (equation.isChecked && Math.abs(sum) > sameWithin + 1) return undefined;
		}
		if (left.length === open.length) return values;
		open = left;
	}
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
