import { greatestLength, type Length, length } from '../length/length.ts';
import { type Cells, type SizeKey, sizeKeys } from '../row/cells.ts';
import { multiplyDivide } from '../row/multiplyDivide.ts';
import { columnOf } from './candidates.ts';
import type { Found, RowContext } from './found.ts';

/** How a length may have been meant: the factor that it is off by. */
const slips = [
	{ as: 'cm', numerator: 10, denominator: 1 },
	{ as: 'a tenth', numerator: 1, denominator: 10 },
	{ as: 'inches', numerator: 254, denominator: 10 },
	{ as: 'mm', numerator: 10, denominator: 254 },
] as const;

/** A picture smaller than this share of the mount is taken for a slip if another unit makes sense of it. */
const smallestShare = 5;

/**
 * `unit-slip`: read × 10, ÷ 10, × 25.4 or ÷ 25.4 the row has no `stop`; and as typed it has one, or the picture's longer
 * side is under a fifth of the mount's. All typed sizes are tried together; a part of them, such as the two sides of the
 * picture, only counts where it leaves nothing to look at. Of several readings, those with the least to look at are told.
 */
export function findUnitSlip(context: RowContext, hasStop: boolean): readonly Found[] {
	if (!hasStop && !isPictureSmall(context)) return [];
	const { cells } = context.read;
	const typed = sizeKeys.filter((key) => cells[key] !== undefined);
	for (const keys of groupsOf(typed)) {
		const readings = slips.flatMap((slip) => {
			const scaled = scale(cells, keys, slip);
			const looks = scaled ? context.looksOf(scaled) : undefined;
			const isSound = looks !== undefined && (keys.length === typed.length || looks === 0);
			return scaled && isSound ? [{ slip, scaled, looks }] : [];
		});
		if (readings.length === 0) continue;
		const least = Math.min(...readings.map(({ looks }) => looks));
		const best = readings.filter(({ looks }) => looks === least);
		return [found(context, keys, best)];
	}
	return [];
}

/** Every typed size; then the pairs of picture, window and mount, and the borders; then each alone. */
function groupsOf(typed: readonly SizeKey[]): readonly (readonly SizeKey[])[] {
	const pick = (...keys: SizeKey[]) => keys.filter((key) => typed.includes(key));
	const groups = [
		typed,
		pick('pictureWidth', 'pictureHeight'),
		pick('windowWidth', 'windowHeight'),
		pick('mountWidth', 'mountHeight'),
		pick('side', 'top', 'bottom'),
		...typed.map((key) => [key]),
	];
	return groups.filter((keys) => keys.length > 0);
}

function scale(cells: Cells, keys: readonly SizeKey[], slip: (typeof slips)[number]): Cells | undefined {
	const scaled: Partial<Record<SizeKey, Length>> = {};
	for (const key of keys) {
		const units = multiplyDivide(cells[key]!, slip.numerator, slip.denominator, 'down');
		if (units <= 0 || units > greatestLength) return undefined;
		scaled[key] = length(units);
	}
	return { ...cells, ...scaled };
}

/** Whether the picture's longer side is under a fifth of the mount's. */
export function isPictureSmall({ solution: { solved } }: Pick<RowContext, 'solution'>): boolean {
	const { mountWidth, mountHeight, pictureWidth, pictureHeight } = solved;
	if (!mountWidth || !mountHeight || !pictureWidth || !pictureHeight) return false;
	return Math.max(pictureWidth, pictureHeight) * smallestShare < Math.max(mountWidth, mountHeight);
}

interface SlipReading {
	readonly slip: (typeof slips)[number];
	readonly scaled: Cells;
}

function found(
	{ text, figure, say, read }: RowContext,
	keys: readonly SizeKey[],
	readings: readonly SlipReading[],
): Found {
	const words = keys.map((key) => `${columnOf(key)} ${figure(read.cells[key]!)}`).join(', ');
	const meant = readings.map(
		({ slip, scaled }) => `${slip.as} (${keys.map((key) => figure(scaled[key]!)).join(', ')})`,
	);
	return {
		code: 'unit-slip',
		level: 'stop',
		cells: [...keys],
		message: () =>
			`${words[0]!.toUpperCase()}${words.slice(1)} may be in another unit: read as ${meant.join(' or ')}, the row works out.`,
		candidates: () =>
			readings.map(({ slip, scaled }) => ({
				label: () => `Read as ${slip.as}: ${keys.map((key) => say(scaled[key]!)).join(', ')}`,
				change: Object.fromEntries(keys.map((key) => [columnOf(key), text(scaled[key]!)])),
			})),
	};
}
