import { type Length, length, minus, plus } from '../length/length.ts';
import type { RowResult } from '../row/rowResult.ts';
import { boardOf, boardThickness } from '../row/stack.ts';
import type { Row } from '../show/row.ts';
import type { Settings } from '../show/settings.ts';
import type { Cut, CutPart, CutSide } from './benchPlan.ts';
import type { BoardSetUp } from './setUps.ts';

/** A cut and what the bench is set to for it. */
export interface SetCut {
	readonly setUp: BoardSetUp;
	readonly cut: Cut;
}

/** The borders and the outer size of a mount in which a window is cut. */
export interface CutMount {
	readonly part: CutPart;
	readonly borders: Readonly<Record<CutSide, Length>>;
	readonly width: Length;
	readonly height: Length;
}

/** The order in which the cuts of a window are listed. */
export const cutSides: readonly CutSide[] = ['left', 'right', 'top', 'bottom'];

/**
 * The borders at the two ends of a cut, where the blade goes in and where it comes out. A mount lies face down with the
 * edge in hand against the guide, and the blade's slant lets it lie one way only; so from cut to cut it is turned the
 * same way round, and the end of one is the start of the next:
 *
 *     seen from the front     top ──────────▶ left ─▶ bottom ─▶ right
 *     along the left edge     in at the top border, out at the bottom border
 *     along the right edge    in at the bottom border, out at the top border
 */
const ends: Readonly<Record<CutSide, readonly [CutSide, CutSide]>> = {
	top: ['right', 'left'],
	left: ['top', 'bottom'],
	bottom: ['left', 'right'],
	right: ['bottom', 'top'],
};

/** The border of an inner mount that shows `innerMount` beside one of the outer: it is set by its own, smaller blank. */
export const innerBorder = (border: Length, innerMount: Length, { innerBlankSmaller }: Settings): Length =>
	minus(plus(border, innerMount), innerBlankSmaller);

/** The mounts of one copy of a row that have a window, the outer one first; none where a size is missing. */
export function cutMounts({ solved, innerMount }: RowResult, settings: Settings): readonly CutMount[] {
	const { side, top, bottom, windowWidth, windowHeight, mountWidth, mountHeight } = solved;
	if (side === undefined || top === undefined || bottom === undefined) return [];
	if (windowWidth === undefined || windowHeight === undefined) return [];
	if (mountWidth === undefined || mountHeight === undefined) return [];
	const borders = { top, bottom, left: side, right: side };
	const outer: CutMount = { part: 'mount', borders, width: mountWidth, height: mountHeight };
	if (innerMount === undefined || innerMount === 0) return [outer];
	const smaller = settings.innerBlankSmaller;
	const inward = (border: Length) => innerBorder(border, innerMount, settings);
	const inner: CutMount = {
		part: 'inner mount',
		borders: { top: inward(top), bottom: inward(bottom), left: inward(side), right: inward(side) },
		width: minus(mountWidth, smaller, smaller),
		height: minus(mountHeight, smaller, smaller),
	};
	return [outer, inner];
}

/** How far a cut runs past the corner of the window: the show's, else the thickness of the row's board. */
export const overcutOf = (row: Row, settings: Settings): Length =>
	settings.bench.overcut ?? boardThickness(row, settings).thickness;

/**
 * The four cuts of each window of a row and its copies, one mount after the other.
 * @param number place of the row in the show, from 1
 * @returns none where the row has a `stop` or no window
 */
export function windowCuts(row: Row, result: RowResult, number: number, settings: Settings): readonly SetCut[] {
	if (result.isStopped) return [];
	const { kind, correction = 0 } = settings.bench;
	const thickness = boardOf(row, settings)?.thickness;
	const overcut = overcutOf(row, settings);
	const stop = (border: Length) =>
		kind === 'guide and stops' ? length(Math.max(0, minus(border, overcut))) : undefined;
	const setUpOf = ({ borders }: CutMount, side: CutSide): BoardSetUp => {
		const [start, end] = ends[side];
		return {
			guide: kind === 'straight edge' ? borders[side] : length(borders[side] - correction),
			start: stop(borders[start]),
			end: stop(borders[end]),
			border: borders[side],
			thickness,
		};
	};
	const mounts = cutMounts(result, settings);
	return Array.from({ length: result.copies }, (_, index) => index + 1).flatMap((copy) =>
		mounts.flatMap((mount) =>
			cutSides.map((side) => ({
				setUp: setUpOf(mount, side),
				cut: { row: number, copy, part: mount.part, side },
			})),
		),
	);
}
