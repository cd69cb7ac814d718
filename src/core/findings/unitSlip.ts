import { greatestLength, type Length, length } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import { type Cells, type SizeKey, sizeKeys } from '../row/cells.ts';
import { multiplyDivide } from '../row/multiplyDivide.ts';
import type { Solution } from '../row/solution.ts';
import { columnOf } from './candidates.ts';
import type { Found, RowContext } from './found.ts';

/** How a length may have been meant: the factor that it is off by, in the words of the show's unit. */
interface Slip {
	readonly as: string;
	readonly numerator: number;
	readonly denominator: number;
}

const tenTimes: Slip = { as: 'ten times as much', numerator: 10, denominator: 1 };
const aTenth: Slip = { as: 'a tenth', numerator: 1, denominator: 10 };
const inchTimes: Slip = { as: '25.4 times as much', numerator: 254, denominator: 10 };
const inchPart: Slip = { as: 'the 25.4th part', numerator: 10, denominator: 254 };

/** × 10, ÷ 10, × 25.4 and ÷ 25.4; between inches and cm also the tenth of those. */
const slips: Readonly<Record<Unit, readonly Slip[]>> = {
	mm: [{ ...tenTimes, as: 'cm' }, { ...inchTimes, as: 'inches' }, aTenth, inchPart],
	cm: [{ ...aTenth, as: 'mm' }, { as: 'inches', numerator: 254, denominator: 100 }, tenTimes, inchTimes, inchPart],
	in: [{ ...inchPart, as: 'mm' }, { as: 'cm', numerator: 100, denominator: 254 }, tenTimes, aTenth, inchTimes],
};

/** A picture smaller than this share of the mount is taken for a slip if another unit makes sense of it. */
const smallestShare = 5;

/** With more cells typed than this, single cells are not tried: too many, and the slip is in all of them. */
const mostAlone = 6;

/** Cells that are read in another unit together; `mount` is the cell that names a size. */
type Group = readonly (SizeKey | 'mount')[];

/**
 * `unit-slip`: read × 10, ÷ 10, × 25.4 or ÷ 25.4 the row has no `stop`; and as typed it has one, or the picture's longer
 * side is under a fifth of the mount's. All typed sizes are tried together; a part of them, such as the two sides of the
 * picture, only counts where it leaves nothing to look at. Of several readings, those with the least to look at are told.
 * A row that has come out, but in a mount of its own, is told too where another unit brings it back to the show's.
 */
export function findUnitSlip(context: RowContext, hasStop: boolean): readonly Found[] {
	const isStray = context.read.cells.mount.kind === 'show' && context.solution.mountSource !== 'show';
	const isTold = hasStop || isPictureSmall(context);
	if (!isTold && !isStray) return [];
	const typed = typedGroup(context);
	for (const keys of groupsOf(typed)) {
		const isPart = keys.length < typed.length;
		const readings = slips[context.settings.unit].flatMap((slip) => {
			const scaled = scale(context.read.cells, keys, slip);
			const read = scaled && context.judge(scaled);
			if (!read || ((isPart || !isTold) && read.looks > 0) || (!isTold && read.mountSource !== 'show')) return [];
			return [{ slip, scaled, looks: read.looks }];
		});
		if (readings.length > 0) {
			const least = Math.min(...readings.map(({ looks }) => looks));
			return [
				found(
					context,
					keys,
					readings.filter(({ looks }) => looks === least),
				),
			];
		}
		if (!isTold) return []; // only the whole row is read anew where nothing is wrong with it
	}
	return [];
}

/** The typed sizes and borders, and the mount cell where two lengths stand in it. */
function typedGroup({ read: { cells }, row, settings }: RowContext): Group {
	const text = row.typed.mount?.trim() ?? '';
	const isName = settings.sizes.some(({ name }) => name.trim().toLowerCase() === text.toLowerCase());
	const hasLengths = cells.mount.kind === 'size' && /^[\d½⅓¼⅛]/.test(text) && !isName;
	return [...sizeKeys.filter((key) => cells[key] !== undefined), ...(hasLengths ? (['mount'] as const) : [])];
}

/** Every typed size; then the pairs of picture, window and mount, and the borders; then each alone. */
function groupsOf(typed: Group): readonly Group[] {
	const pick = (...keys: Group) => keys.filter((key) => typed.includes(key));
	const groups: Group[] = [
		typed,
		pick('pictureWidth', 'pictureHeight'),
		pick('windowWidth', 'windowHeight'),
		pick('mountWidth', 'mountHeight'),
		pick('side', 'top', 'bottom'),
		...(typed.length > mostAlone ? [] : typed.map((key) => [key])),
	];
	return groups.filter((keys) => keys.length > 0);
}

function scaleLength(value: Length, { numerator, denominator }: Slip): Length | undefined {
	const units = multiplyDivide(value, numerator, denominator, 'down');
	return units > 0 && units <= greatestLength ? length(units) : undefined;
}

function scale(cells: Cells, keys: Group, slip: Slip): Cells | undefined {
	const scaled: Partial<Record<SizeKey, Length>> = {};
	let { mount } = cells;
	for (const key of keys) {
		if (key !== 'mount') {
			const value = scaleLength(cells[key]!, slip);
			if (value === undefined) return undefined;
			scaled[key] = value;
		} else if (mount.kind === 'size') {
			const [width, height] = [scaleLength(mount.size.width, slip), scaleLength(mount.size.height, slip)];
			if (width === undefined || height === undefined) return undefined;
			mount = { kind: 'size', size: { width, height } };
		}
	}
	return { ...cells, ...scaled, mount };
}

/** Whether the picture's longer side is under a fifth of the mount's. */
export function isPictureSmall({ solution: { solved } }: { readonly solution: Pick<Solution, 'solved'> }): boolean {
	const { mountWidth, mountHeight, pictureWidth, pictureHeight } = solved;
	if (!mountWidth || !mountHeight || !pictureWidth || !pictureHeight) return false;
	return Math.max(pictureWidth, pictureHeight) * smallestShare < Math.max(mountWidth, mountHeight);
}

/** Whether a reading makes sense: the picture between a fifth of the mount and all of it, and no third of it covered. */
export function isPlausible({ solution }: { readonly solution: Pick<Solution, 'solved'> }): boolean {
	const { mountWidth, mountHeight, pictureWidth, pictureHeight, overlapSide, overlapTop } = solution.solved;
	if (!mountWidth || !mountHeight || !pictureWidth || !pictureHeight) return true;
	if (isPictureSmall({ solution })) return false;
	if (Math.max(pictureWidth, pictureHeight) > Math.max(mountWidth, mountHeight)) return false;
	return 6 * (overlapSide ?? 0) < pictureWidth && 6 * (overlapTop ?? 0) < pictureHeight;
}

interface SlipReading {
	readonly slip: Slip;
	readonly scaled: Cells;
}

function found(context: RowContext, keys: Group, readings: readonly SlipReading[]): Found {
	const { text, figure, say, read } = context;
	const typedWords = keys.map((key) =>
		key === 'mount' ? `mount ${sizeOf(read.cells, figure)}` : `${columnOf(key)} ${figure(read.cells[key]!)}`,
	);
	const all = (cells: Cells) =>
		keys.map((key, i) => {
			const shown = i === keys.length - 1 ? say : figure;
			return key === 'mount' ? sizeOf(cells, figure, shown) : shown(cells[key]!);
		});
	return {
		code: 'unit-slip',
		level: 'stop',
		cells: keys.flatMap((key) => (key === 'mount' ? ['mountWidth', 'mountHeight'] : [key])),
		message: () => {
			const words = typedWords.join(', ');
			const meant = readings.map(({ slip, scaled }) => `${slip.as} (${all(scaled).join(', ')})`);
			return `${words[0]!.toUpperCase()}${words.slice(1)} may be in another unit: read as ${meant.join(' or ')}, the row works out.`;
		},
		candidates: () =>
			readings.map(({ slip, scaled }) => ({
				label: () => `Read as ${slip.as}: ${all(scaled).join(', ')}`,
				change: Object.fromEntries(
					keys.map((key) => (key === 'mount' ? ['mount', sizeOf(scaled, text)] : [columnOf(key), text(scaled[key]!)])),
				),
			})),
	};
}

type Say = (value: Length) => string;

function sizeOf({ mount }: Cells, first: Say, last: Say = first): string {
	return mount.kind === 'size' ? `${first(mount.size.width)} x ${last(mount.size.height)}` : '';
}
