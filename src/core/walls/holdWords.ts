import { formatMark, formatMarkWithUnit, toMark } from '../length/formatMark.ts';
import type { Length } from '../length/length.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { type Fixing, isFlat, ringsOf, safetyFactor } from './fixing.ts';
import type { HangingLine } from './hangingList.ts';

type Held = Pick<WorkedRow, 'frame' | 'framed' | 'read'>;
type Told = Pick<Settings, 'hanging' | 'unit' | 'ruler'>;

/** What stops so far below the frame's top where it hangs: the cord, pulled up to its hook, or what is screwed on. */
const stops = { cord: 'Cord pulled up,', 'two hooks': 'Hooks', rail: 'Rings' } as const;

/** What the drop of a frame is called where it is measured: "Cord pulled up, below the frame’s top". */
export const dropLabel = ({ hanging: { kind } }: Told): string => `${stops[kind]} below the frame’s top`;

/** The drop of a frame in words: "Cord pulled up, 90 mm below the frame’s top". */
export const dropWords = ({ drop }: Pick<Fixing, 'drop'>, settings: Told): string =>
	`${stops[settings.hanging.kind]} ${formatMarkWithUnit(drop, settings)} below the frame’s top`;

/** What is said of a height that follows from a cord, while that is not measured. */
export const plannedWords = 'Planned until you pull the cord up and measure it.';

/** For which cord a hook's height is worked out, while that is not measured: ", if the cord is at 90"; else empty. */
export const ifCordWords = ({ isToMeasure, drop }: Pick<Fixing, 'isToMeasure' | 'drop'>, settings: Told): string =>
	isToMeasure ? `, if the cord is at ${formatMark(drop, settings)}` : '';

/** A hook's height as it is said: "about 1652" while its cord is not measured, for it may change by several millimetres. */
export const hookHeightWords = (height: string, fixing: Pick<Fixing, 'isToMeasure'> | undefined): string =>
	fixing?.isToMeasure ? `about ${height}` : height;

/** What is done with cords that are not measured yet, before a hook's height counts. */
export const measureCords =
	'Pull each cord up with a tape, measure it below the frame’s top and fill in its sum before you mark the hook.';

/**
 * The sum that is filled in on paper while a cord is not measured: "Frame’s top 1742 − cord ________ (90 planned) = hook
 * ________". With the drop as planned it gives the mark as it is shown. Undefined where nothing is to be measured.
 */
export function cordSum({ mark, hooks }: Pick<HangingLine, 'mark' | 'hooks'>, settings: Told): string | undefined {
	if (!hooks?.fixing.isToMeasure) return undefined;
	const { drop } = hooks.fixing;
	const { nail } = settings.hanging;
	const top = toMark(mark.height, settings) - toMark(nail, settings) + toMark(drop, settings);
	const [above, less, more] = [top, drop, nail].map((each) => formatMark(each, settings));
	return `Frame’s top ${above} − cord ________ (${less} planned)${nail ? ` + ${more}` : ''} = ${mark.what} ________`;
}

/**
 * Where the eyes of a frame's rings are, for there the cord bears, and where their screws go: in the middle of the wood at the
 * back, which is narrower than the eyes are in. "Eyes 195 mm below the frame’s top, 40 mm in from each outer edge; screws
 * 8 mm from that edge".
 */
export function ringPlaceWords(held: Held, settings: Told): string {
	const wood = woodAtBack(held);
	const at = wood === undefined ? 'in the wood' : `${formatMarkWithUnit(wood / 2, settings)} from that edge`;
	return `eyes ${formatMarkWithUnit(ringsOf(held, settings), settings)} below the frame’s top, ${formatMarkWithUnit(settings.hanging.inset, settings)} in from each outer edge; screws ${at}`;
}

/** How wide the wood of a frame is beside its rebate, in units, not whole: half of what is outside. Undefined where not known. */
function woodAtBack({ framed: { size }, frame: { seat } }: Held): number | undefined {
	const wood = size && seat && (size.width - seat.rebate.width) / 2;
	return wood !== undefined && wood > 0 ? wood : undefined;
}

/**
 * How a frame is corded, and what is measured then: "cut 1029 mm. 688 mm from ring to ring, the rest for knots; rings 655 mm
 * apart. Pulled up, 90 mm below the frame’s top". Undefined where it has no cord of its own, or a typed drop leaves none.
 * @param cut how much is cut off for it, where that is known
 */
export function cordWords({ cord, drop, rise }: Fixing, settings: Told, cut?: Length): string | undefined {
	if (cord === undefined || rise === undefined) return undefined;
	const say = (value: number) => formatMarkWithUnit(value, settings);
	const apart = 2 * Math.sqrt(Math.max(0, (cord / 2) ** 2 - rise ** 2));
	const own =
		cut !== undefined && cut > cord
			? `cut ${say(cut)}. ${say(cord)} from ring to ring, the rest for knots`
			: `${say(cord)} from ring to ring, more for the knots`;
	return `${own}; rings ${say(apart)} apart. Pulled up, ${say(drop)} below the frame’s top`;
}

/** Up to where the height of a hook is measured: where the hook itself is marked on the wall, its nail is higher. */
export const bearingWords = (settings: Told): string =>
	`Measure to where the ${settings.hanging.kind === 'cord' ? 'cord' : 'ring'} sits in the hook, not to the nail.`;

/** What something that holds a print is rated for, at least. */
export interface Rating {
	readonly word: string;
	readonly figure: string;
}

const kilograms = (kg: number) => `${Math.ceil(kg * safetyFactor - 1e-9)} kg`;

/**
 * What holds a print is rated for, at least. The hook bears the weight; the cord and each of its rings are pulled harder.
 * None where the weight is not known, and for a flat cord, for which no rating is enough. `heavy` holds a rating against the
 * larger: hook or pair of rings.
 * The first word says that they are what must be held, or ring and cord would be read as loads carried now.
 * @param why what is said after the last figure
 */
export function ratingsOf(
	weightKg: number | undefined,
	fixing: Fixing,
	{ hanging: { kind } }: Told,
	why = '',
): readonly Rating[] {
	if (weightKg === undefined || isFlat(fixing)) return [];
	const { pullKg } = fixing;
	const what = kind === 'cord' ? 'hook' : kind === 'rail' ? 'cords and rail' : 'each hook and its fixing';
	return [
		{ word: `Must hold: ${what}`, figure: `${kilograms(weightKg)} or more` },
		...(pullKg === undefined
			? []
			: [
					{ word: 'each ring', figure: kilograms(pullKg) },
					{ word: 'cord', figure: kilograms(pullKg) + why },
				]),
	];
}

/**
 * The same in a line, after what the cord pulls: "Must hold: hook 19 kg, each ring 31 kg, cord 31 kg (4 × that pull)".
 * Undefined where there is none.
 */
export function ratingWords(weightKg: number | undefined, fixing: Fixing, settings: Told): string | undefined {
	const [first, ...others] = ratingsOf(weightKg, fixing, settings, ` (${safetyFactor} × that pull)`);
	if (!first || weightKg === undefined) return undefined;
	const all = [{ ...first, figure: kilograms(weightKg) }, ...others];
	return all.map(({ word, figure }) => `${word} ${figure}`).join(', ');
}

/** Where those figures come from, for who asks; undefined where there are none. */
export function ratingReason(weightKg: number | undefined, fixing: Fixing, settings: Told): string | undefined {
	if (ratingsOf(weightKg, fixing, settings).length === 0) return undefined;
	const { pullKg } = fixing;
	const pull =
		pullKg === undefined
			? ''
			: ` Rings and cord: ${safetyFactor} × the pull of ${pullKg.toFixed(1)} kg on each ring, larger the flatter the cord.`;
	return `What holds it is rated for ${safetyFactor} times what it bears, ${safetyFactor} × ${weightKg!.toFixed(1)} kg.${pull}`;
}
