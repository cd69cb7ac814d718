import { formatMark, formatMarkWithUnit } from '../length/formatMark.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { type Fixing, isFlat, ringsOf, safetyFactor } from './fixing.ts';

type Held = Pick<WorkedRow, 'frame' | 'framed' | 'read'>;
type Told = Pick<Settings, 'hanging' | 'unit' | 'ruler'>;

/** What stops so far below the frame's top where it hangs: the cord, pulled up to its hook, or what is screwed on. */
const stops = { cord: 'Cord pulled up,', 'two hooks': 'Hooks', rail: 'Rings' } as const;

/** What the drop of a frame is called where it is measured: "Cord pulled up, below the frame’s top". */
export const dropLabel = ({ hanging: { kind } }: Told): string => `${stops[kind]} below the frame’s top`;

/** The drop of a frame in words: "Cord pulled up, 90 mm below the frame’s top". */
export const dropWords = ({ drop }: Pick<Fixing, 'drop'>, settings: Told): string =>
	`${stops[settings.hanging.kind]} ${formatMarkWithUnit(drop, settings)} below the frame’s top`;

/**
 * Where the rings of a frame are, and what they are screwed to, which is narrower than a ring is in:
 * "195 below the frame’s top, 40 mm in from each side, screwed to the wood".
 */
export const ringPlaceWords = (held: Held, settings: Told): string =>
	`${formatMark(ringsOf(held, settings), settings)} below the frame’s top, ${formatMarkWithUnit(settings.hanging.inset, settings)} in from each side, screwed to the wood`;

/**
 * How a frame is corded, and what is measured then: "688 mm from ring to ring, more for the knots; rings 655 mm
 * apart. Pulled up, 90 mm below the frame’s top". Undefined where it has no cord of its own, or a typed drop leaves none.
 */
export function cordWords({ cord, drop, rise }: Fixing, settings: Told): string | undefined {
	if (cord === undefined || rise === undefined) return undefined;
	const say = (value: number) => formatMarkWithUnit(value, settings);
	const apart = 2 * Math.sqrt(Math.max(0, (cord / 2) ** 2 - rise ** 2));
	return `${say(cord)} from ring to ring, more for the knots; rings ${say(apart)} apart. Pulled up, ${say(drop)} below the frame’s top`;
}

/** Of what the height of a hook is, where the hook itself is marked on the wall: its nail is higher. */
export const bearingWords = (settings: Told): string =>
	`A hook’s height is that of its bearing, where the ${settings.hanging.kind === 'cord' ? 'cord lies' : 'ring hangs'}, not of its nail.`;

/**
 * What holds a print is rated for, at least. The hook bears the weight; the cord and each of its rings are pulled harder:
 * "Hook for 19 kg or more (4 × 4.6 kg). Rings for 61 kg or more a pair, cord for 31 kg (4 × the pull of 7.6 kg)". Undefined
 * where the weight is not known, and for a flat cord, for which no rating is enough. `heavy` holds a rating against the
 * larger: hook or pair of rings.
 * @param isShort without the sum, where there is no room for it
 */
export function ratingWords(
	weightKg: number | undefined,
	fixing: Fixing,
	settings: Told,
	isShort = false,
): string | undefined {
	if (weightKg === undefined || isFlat(fixing)) return undefined;
	const { kind } = settings.hanging;
	const { pullKg } = fixing;
	const safely = (kg: number) => `${Math.ceil(kg * safetyFactor - 1e-9)} kg`;
	const sum = (kg: number, of = '') => (isShort ? '' : ` (${safetyFactor} × ${of}${kg.toFixed(1)} kg)`);
	const what = kind === 'cord' ? 'Hook' : kind === 'rail' ? 'Cords and rail' : 'Each hook and its fixing';
	const least = `${what} for ${safely(weightKg)} or more${sum(weightKg)}`;
	if (pullKg === undefined) return least;
	if (isShort) return `${least}, rings ${safely(2 * pullKg)} a pair, cord ${safely(pullKg)}`;
	return `${least}. Rings for ${safely(2 * pullKg)} or more a pair, cord for ${safely(pullKg)}${sum(pullKg, 'the pull of ')}`;
}
