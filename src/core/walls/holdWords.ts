import { formatMark, formatMarkWithUnit } from '../length/formatMark.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { type Fixing, isFlat, loadOf, ringsOf, safetyFactor } from './fixing.ts';

type Held = Pick<WorkedRow, 'frame' | 'framed' | 'read'>;
type Told = Pick<Settings, 'hanging' | 'unit' | 'ruler'>;

/** What stops so far below the frame's top where it hangs: the cord, pulled up to its hook, or what is screwed on. */
const stops = { cord: 'Cord pulled up,', 'two hooks': 'Hooks', rail: 'Rings' } as const;

/** What the drop of a frame is called where it is measured: "Cord pulled up, below the frame’s top". */
export const dropLabel = ({ hanging: { kind } }: Told): string => `${stops[kind]} below the frame’s top`;

/** The drop of a frame in words: "Cord pulled up, 90 mm below the frame’s top". */
export const dropWords = ({ drop }: Pick<Fixing, 'drop'>, settings: Told): string =>
	`${stops[settings.hanging.kind]} ${formatMarkWithUnit(drop, settings)} below the frame’s top`;

/** Where the rings of a frame are screwed in: "195 below the frame’s top, 40 mm in from each side". */
export const ringPlaceWords = (held: Held, settings: Told): string =>
	`${formatMark(ringsOf(held, settings), settings)} below the frame’s top, ${formatMarkWithUnit(settings.hanging.inset, settings)} in from each side`;

/** How a frame is corded, and what is measured then; undefined where it has no cord of its own, or a typed drop leaves none. */
export function cordWords({ cord, drop }: Pick<Fixing, 'cord' | 'drop'>, settings: Told): string | undefined {
	if (cord === undefined) return undefined;
	return `${formatMark(cord, settings)} between the rings; pulled up, ${formatMarkWithUnit(drop, settings)} below the frame’s top`;
}

/**
 * What a hook and its fixing are rated for, at least: "Hook and fixing for 19 kg or more (4 × 4.6 kg)". Undefined where the
 * weight is not known, and for a flat cord, for which no rating is enough. It is what `heavy` holds a rating against.
 * @param isShort without the sum, where there is no room for it
 */
export function ratingWords(
	weightKg: number | undefined,
	fixing: Fixing,
	settings: Told,
	isShort = false,
): string | undefined {
	if (weightKg === undefined || isFlat(fixing)) return undefined;
	const load = loadOf(weightKg, fixing);
	const { kind } = settings.hanging;
	const what = kind === 'cord' ? 'Hook and fixing' : kind === 'rail' ? 'Cords and rail' : 'Each hook and its fixing';
	const least = `${what} for ${Math.ceil(load * safetyFactor - 1e-9)} kg or more`;
	if (isShort) return least;
	const of = load > weightKg ? `${load.toFixed(1)} kg, twice the pull on a ring` : `${load.toFixed(1)} kg`;
	return `${least} (${safetyFactor} × ${of})`;
}
