import type { RowResult } from '../findings/rowResult.ts';
import { formatSize } from '../length/formatLength.ts';
import { type Length, length, minus, zero } from '../length/length.ts';
import { innerBorder, isInnerTaped } from '../row/innerMount.ts';
import { boardThickness } from '../row/stack.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { type CutPart, type CutSide, cutSides } from '../show/tick.ts';
import { shownText } from '../values/shownText.ts';
import type { Cut } from './benchPlan.ts';
import { endsOf } from './cutEnds.ts';
import { type BoardSetUp, setUpKey } from './setUps.ts';

/** A cut and what the bench is set to for it. */
export interface SetCut {
	readonly setUp: BoardSetUp;
	/** Tells the set-up apart from others (`setUpKey`). */
	readonly key: string;
	readonly cut: Cut;
}

/** A mount in which a window is cut, by the edges that it is cut from. */
export interface CutMount {
	readonly part: CutPart;
	/** From those edges to the sight edge. */
	readonly borders: Readonly<Record<CutSide, Length>>;
	/** From edge to edge: of its own blank, or of the outer mount that it is taped behind. */
	readonly width: Length;
	readonly height: Length;
	/** Its own blank, taped or not. */
	readonly blank: { readonly width: Length; readonly height: Length };
	/** Whether it is taped behind its outer mount, and so is cut after that. */
	readonly isTaped: boolean;
}

/** The mounts of one copy of a row that have a window, the outer one first; none where a size is missing. */
export function cutMounts({ solved, read }: WorkedRow, settings: Settings): readonly CutMount[] {
	const { side, top, bottom, windowWidth, windowHeight, mountWidth, mountHeight } = solved;
	if (side === undefined || top === undefined || bottom === undefined) return [];
	if (windowWidth === undefined || windowHeight === undefined) return [];
	if (mountWidth === undefined || mountHeight === undefined) return [];
	const borders = { top, bottom, left: side, right: side };
	const { innerMount } = read.cells;
	const size = { width: mountWidth, height: mountHeight };
	const outer: CutMount = { part: 'mount', borders, ...size, blank: size, isTaped: false };
	if (innerMount === undefined || innerMount === 0) return [outer];
	const isTaped = isInnerTaped(settings);
	const smaller = isTaped ? zero : settings.innerBlankSmaller;
	const inward = (border: Length) => innerBorder(border, innerMount, settings);
	const inwardBy = (by: Length) => ({ width: minus(mountWidth, by, by), height: minus(mountHeight, by, by) });
	const inner: CutMount = {
		part: 'inner mount',
		borders: { top: inward(top), bottom: inward(bottom), left: inward(side), right: inward(side) },
		...inwardBy(smaller),
		blank: inwardBy(settings.innerBlankSmaller),
		isTaped,
	};
	return [outer, inner];
}

/** The blank that a mount's windows are cut in, and its board, in words: "Blank 700 × 550 mm, Chalk". */
export function blankWords(result: WorkedRow, part: CutPart, settings: Settings): string {
	const mount = cutMounts(result, settings).find((each) => each.part === part);
	if (mount === undefined) return '';
	const { name } = result.boards[part];
	const size = `Blank ${formatSize(mount.blank.width, mount.blank.height, settings)}`;
	return name === '' ? size : `${size}, ${shownText(name)}`;
}

/** How far a cut runs past the corner of the window: the show's, else the thickness of the board. */
export const overcutOf = ({ boards }: Pick<WorkedRow, 'boards'>, part: CutPart, settings: Settings): Length =>
	settings.bench.overcut ?? boardThickness(boards[part]).thickness;

/**
 * The four cuts of each window of a row and its copies, one mount after the other.
 * @param number place of the row in the show, from 1
 * @returns none where the row has a `stop` or no window
 */
export function windowCuts(result: RowResult, number: number, settings: Settings): readonly SetCut[] {
	if (result.isStopped) return [];
	const { bench } = settings;
	const { kind, correction = 0 } = bench;
	const stopsOf = ({ part, borders, width, height }: CutMount, side: CutSide) => {
		const overcut = overcutOf(result, part, settings);
		const fromEdge = (border: Length) => length(Math.max(0, minus(border, overcut)));
		if (kind !== 'guide and stops') return { start: undefined, end: undefined };
		const [start, end] = endsOf(side, bench);
		const edge = side === 'left' || side === 'right' ? height : width;
		const fromEnd = fromEdge(borders[end]);
		return {
			start: fromEdge(borders[start]),
			end: bench.endStop === 'from the start' ? minus(edge, fromEnd) : fromEnd,
		};
	};
	const setUpOf = (mount: CutMount, side: CutSide): BoardSetUp => {
		const border = mount.borders[side];
		const guide = kind === 'straight edge' ? border : length(border - correction);
		const thickness = result.boards[mount.part].board?.thickness;
		return { guide, ...stopsOf(mount, side), border, thickness, isTaped: mount.isTaped };
	};
	const mounts = cutMounts(result, settings);
	return Array.from({ length: result.copies }, (_, index) => index + 1).flatMap((copy) =>
		mounts.flatMap((mount) =>
			cutSides.map((side) => {
				const setUp = setUpOf(mount, side);
				return { setUp, key: setUpKey(setUp), cut: { row: number, copy, part: mount.part, side } };
			}),
		),
	);
}
