import { greatestLength, type Length, length } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import type { Size } from '../length/size.ts';
import { type Cells, type SizeKey, sizeKeys } from '../row/cells.ts';
import { multiplyDivide } from '../row/multiplyDivide.ts';
import type { SlipWord } from './figures.ts';
import type { RowContext } from './found.ts';

/** How a length may have been meant: the factor that it is off by, in the words of the show's unit. */
export interface Slip {
	readonly as: SlipWord;
	readonly numerator: number;
	readonly denominator: number;
}

const tenTimes: Slip = { as: 'ten times', numerator: 10, denominator: 1 };
const aTenth: Slip = { as: 'a tenth', numerator: 1, denominator: 10 };
const inchTimes: Slip = { as: '25.4 times', numerator: 254, denominator: 10 };
const inchPart: Slip = { as: 'the 25.4th part', numerator: 10, denominator: 254 };

/** × 10, ÷ 10, × 25.4 and ÷ 25.4, the likeliest first. */
export const slips: Readonly<Record<Unit, readonly Slip[]>> = {
	mm: [{ ...tenTimes, as: 'cm' }, { ...inchTimes, as: 'inches' }, aTenth, inchPart],
	cm: [{ ...aTenth, as: 'mm' }, tenTimes, inchTimes, inchPart],
	in: [{ ...inchPart, as: 'mm' }, tenTimes, aTenth, inchTimes],
};

const spaceKeys = ['overlap', 'reveal', 'signingSpace', 'innerMount', 'marginLeft', 'marginTop'] as const;

/** A typed length, or the two that stand in the mount's or the paper's cell. */
export type SlipKey = SizeKey | (typeof spaceKeys)[number] | 'mount' | 'paper';

/** Cells that are read in another unit together. */
export type SlipGroup = readonly SlipKey[];

const pairs: readonly (readonly [SizeKey, SizeKey])[] = [
	['pictureWidth', 'pictureHeight'],
	['windowWidth', 'windowHeight'],
	['mountWidth', 'mountHeight'],
];

/**
 * The typed lengths that may be in another unit together: all; those of the picture, the window, the mount and the paper;
 * the borders; each size and border alone.
 */
export function slipGroups({ read: { cells } }: RowContext): readonly SlipGroup[] {
	const sizes = sizeKeys.filter((key) => cells[key] !== undefined);
	const named = (['mount', 'paper'] as const).filter((key) => hasTwoLengths(cells, key));
	const pick = (...keys: SlipGroup) => keys.filter((key) => sizes.some((size) => size === key));
	const all = [...sizes, ...named];
	const groups: SlipGroup[] = [
		[...all, ...spaceKeys.filter((key) => cells[key] !== undefined && cells[key] > 0)],
		all,
		...pairs.map((pair) => pick(...pair)),
		...named.map((key) => [key]),
		pick('side', 'top', 'bottom'),
		...sizes.map((key) => [key]),
	];
	const seen = new Set<string>();
	return groups.filter((keys) => {
		const isNew = keys.some((key) => all.includes(key as SizeKey)) && !seen.has(keys.join());
		seen.add(keys.join());
		return isNew;
	});
}

function hasTwoLengths(cells: Cells, key: 'mount' | 'paper'): boolean {
	if (key === 'paper') return sizeIn(cells, key) !== undefined && !cells.paper?.isNamed;
	return cells.mount.kind === 'size' && !cells.mount.isOfFrame && !cells.mount.isNamed;
}

/** The size in the mount's or the paper's cell. */
export function sizeIn(cells: Cells, key: 'mount' | 'paper'): Size | undefined {
	if (key === 'paper') {
		const { width, height, listed } = cells.paper ?? {};
		return width === undefined || height === undefined || listed !== undefined ? undefined : { width, height };
	}
	return cells.mount.kind === 'size' ? cells.mount.size : undefined;
}

/** The cells with a group of them read in another unit; undefined where a length comes out at nothing or past 10 m. */
export function readAnew(cells: Cells, keys: SlipGroup, slip: Slip): Cells | undefined {
	const lengths: Partial<Record<Exclude<SlipKey, 'mount' | 'paper'>, Length>> = {};
	let { mount, paper } = cells;
	for (const key of keys) {
		if (key === 'mount' || key === 'paper') {
			const size = sizeIn(cells, key)!;
			const [width, height] = [scaled(size.width, slip), scaled(size.height, slip)];
			if (width === undefined || height === undefined) return undefined;
			if (key === 'paper') paper = { ...cells.paper!, width, height };
			else mount = { kind: 'size', size: { width, height } };
		} else {
			const value = scaled(cells[key]!, slip);
			if (value === undefined) return undefined;
			lengths[key] = value;
		}
	}
	return { ...cells, ...lengths, mount, paper };
}

function scaled(value: Length, { numerator, denominator }: Slip): Length | undefined {
	const units = multiplyDivide(value, numerator, denominator, 'down');
	return units > 0 && units <= greatestLength ? length(units) : undefined;
}

/** Whether a reading makes one side of a typed pair more unlike the other: sides are typed in one unit, as a rule. */
export const tearsApart = (before: Cells, after: Cells): boolean =>
	pairs.some(([width, height]) => {
		const ratioOf = ({ [width]: across, [height]: down }: Cells) =>
			across === undefined || down === undefined ? 1 : Math.max(across, down) / Math.min(across, down);
		return ratioOf(after) > ratioOf(before) + 0.01;
	});
