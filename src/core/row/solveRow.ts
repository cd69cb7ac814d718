import { isSame, type Length, length, minus, plus } from '../length/length.ts';
import { downToRuler, onRuler } from '../length/ruler.ts';
import type { Settings } from '../settings/settings.ts';
import { applyRules, type RuledRow } from './applyRules.ts';
import { type Cells, hasMount, type SizeKey } from './cells.ts';
import { type Cover, coverOf, floatCover, innerWindowIsSmaller } from './cover.ts';
import { type CutHeight, type CutWidth, heightOnRuler, widthOnRuler } from './cutSizes.ts';
import { isKnown, unknownValues } from './equations.ts';
import { floatSides } from './floatSides.ts';
import { onItsPaper } from './onItsPaper.ts';
import { pictureSides } from './pictureSides.ts';
import type { AxisOutcome, Solution } from './solution.ts';
import type { SolvedRow } from './solvedRow.ts';

/** The greatest size that is worked out: 100 m. Shapes and weights can ask for any. */
export const greatestWorkedOut = 1e12 as Length;

/** The cells that change nothing when they are typed as shown, in the order in which they are tried. */
const shownKeys = ['side', 'top', 'bottom', 'windowWidth', 'windowHeight'] as const;

/**
 * Works a row out from its typed cells: rules, ruler, picture, and what the mount then really covers.
 * Typed cells are kept as typed; on an axis that does not come out, the others have no result.
 */
export function solveRow(cells: Cells, settings: Settings): Solution {
	const isAnyShown = shownKeys.some((key) => cells[key] !== undefined);
	return isAnyShown ? solve(cells, settings, new Map()) : solveByRules(cells, settings);
}

/** @param seen solutions by which of `shownKeys` are typed, since leaving cells out one by one meets the same row again */
function solve(cells: Cells, settings: Settings, seen: Map<number, Solution>): Solution {
	const key = shownKeys.reduce((bits, shown, i) => bits | (cells[shown] === undefined ? 0 : 1 << i), 0);
	const known = seen.get(key);
	if (known) return known;
	const rest = withoutShown(cells, settings, seen);
	const solution = rest === cells ? solveByRules(cells, settings) : keepTyped(solve(rest, settings, seen), cells, rest);
	seen.set(key, solution);
	return solution;
}

/** The row without the typed cells that say what it shows anyway: each is tried on what is left of the row. */
function withoutShown(cells: Cells, settings: Settings, seen: Map<number, Solution>): Cells {
	let rest = cells;
	for (const key of shownKeys) {
		const typed = rest[key];
		if (typed === undefined) continue;
		const blank: Cells = { ...rest, [key]: undefined };
		const shown = solve(blank, settings, seen).solved[key];
		if (shown !== undefined && isSame(shown, typed)) rest = blank;
	}
	return rest;
}

function solveByRules(cells: Cells, settings: Settings): Solution {
	const cover = coverOf(cells, settings);
	if (!hasMount(cells)) return pictureAlone(cells, cover);
	if (cells.isFloat) return solveFloat(cells, settings);
	return onItsPaper(solveMounted(cells, cover, settings), cells, settings, solveRow);
}

/**
 * A float: the paper takes the window's place, with nothing covered and nothing revealed. Window and overlap have no
 * result. An axis on which the picture on the paper is not known stays open, and shows what the paper says.
 */
function solveFloat(cells: Cells, settings: Settings): Solution {
	const { paper, picture } = floatSides(cells, settings);
	const stands: Cells = {
		...cells,
		...(paper && { windowWidth: paper.width, windowHeight: paper.height }),
		...(paper && { pictureWidth: picture?.width, pictureHeight: picture?.height }),
		...(paper && !picture && { shape: undefined }),
	};
	const solution = solveMounted(stands, floatCover(paper, picture), settings);
	const isOpen = paper !== undefined && picture === undefined;
	const { pictureWidth, pictureHeight, ...others } = solution.solved;
	return {
		...solution,
		solved: {
			...others,
			pictureWidth: isOpen || solution.width !== 'fits' ? cells.pictureWidth : pictureWidth,
			pictureHeight: isOpen || solution.height !== 'fits' ? cells.pictureHeight : pictureHeight,
			windowWidth: undefined,
			windowHeight: undefined,
			overlapSide: undefined,
			overlapTop: undefined,
			overlapBottom: undefined,
		},
		...(isOpen && solution.width === 'fits' && cells.pictureWidth === undefined && { width: 'open' as const }),
		...(isOpen && solution.height === 'fits' && cells.pictureHeight === undefined && { height: 'open' as const }),
	};
}

/** A row with a mount, by the rules and on the ruler. */
function solveMounted(cells: Cells, cover: Cover, settings: Settings): Solution {
	const ruled = applyRules(cells, cover, settings);
	let width = outcomeBeforeRuler(ruled, ruled.agrees.width, widthKeys);
	let height = outcomeBeforeRuler(ruled, ruled.agrees.height, heightKeys);

	const cutWidth = width === 'fits' ? cutWidthOf(cells, ruled, cover, settings) : undefined;
	const cutHeight = height === 'fits' ? cutHeightOf(cells, ruled, cover, settings) : undefined;
	const picture = pictureOf(cells, cover, cutWidth?.window, cutHeight?.window);
	if (cutWidth && !isAboveZero(cutWidth.mount, cutWidth.side, cutWidth.window, picture.width)) width = 'does not fit';
	if (cutHeight && !isAboveZero(cutHeight.mount, cutHeight.top, cutHeight.bottom, cutHeight.window, picture.height))
		height = 'does not fit';

	const fitting = { width: width === 'fits' ? cutWidth : undefined, height: height === 'fits' ? cutHeight : undefined };
	const solved = resultsOf(cells, ruled, fitting, { width, height }, settings);
	const sides =
		fitting.width && fitting.height ? picture : pictureOf(cells, cover, fitting.width?.window, fitting.height?.window);
	const withPicture = {
		...solved,
		pictureWidth: width === 'fits' ? sides.width : cells.pictureWidth,
		pictureHeight: height === 'fits' ? sides.height : cells.pictureHeight,
	};
	return {
		solved: { ...withPicture, ...overlapsOf(withPicture, cells, cover, { width, height }) },
		width,
		height,
		mountSource: ruled.mountSource,
		cover,
		border: ruled.border,
		typed: ruled.typed,
		exact: ruled.regardlessOfRoom,
		weight: ruled.relations.weight,
		isShapeKept: ruled.isShapeKept,
	};
}

const widthKeys = ['mountWidth', 'side', 'windowWidth', 'pictureWidth'] as const;
const heightKeys = ['mountHeight', 'top', 'bottom', 'windowHeight', 'pictureHeight'] as const;

/** Undefined is a picture side by a shape so long that no length holds it. */
const isAboveZero = (...values: readonly (number | undefined)[]) =>
	values.every((value) => value !== undefined && value > 0);

function outcomeBeforeRuler(ruled: RuledRow, agrees: boolean, keys: readonly SizeKey[]): AxisOutcome {
	if (!agrees) return 'conflict';
	const { values } = ruled;
	if (keys.some((key) => values[key] < 0.5)) return 'does not fit'; // half a unit: zero with the error of a double
	if (keys.some((key) => values[key] > greatestWorkedOut)) return 'does not fit';
	if (keys.every((key) => isKnown(values[key]))) return 'fits';
	return keys.every((key) => isKnown(ruled.regardlessOfRoom[key])) ? 'does not fit' : 'open';
}

/** The mount side that stands: typed, named or the show's. */
const standing = (ruled: RuledRow, key: 'mountWidth' | 'mountHeight'): Length | undefined =>
	ruled.mountSource === 'show' || isKnown(ruled.typed[key]) ? length(Math.round(ruled.values[key])) : undefined;

function cutWidthOf(cells: Cells, ruled: RuledRow, cover: Cover, settings: Settings): CutWidth {
	const hasPicture =
		cells.pictureWidth !== undefined || (ruled.isShapeKept === true && cells.pictureHeight !== undefined);
	return widthOnRuler(
		{ side: ruled.values.side, window: ruled.values.windowWidth },
		cells.side,
		{ mount: standing(ruled, 'mountWidth'), window: cells.windowWidth, hasPicture },
		cover.width,
		settings.ruler,
	);
}

function cutHeightOf(cells: Cells, ruled: RuledRow, cover: Cover, settings: Settings): CutHeight {
	const hasPicture =
		cells.pictureHeight !== undefined || (ruled.isShapeKept === true && cells.pictureWidth !== undefined);
	const { top, bottom, windowHeight } = ruled.values;
	return heightOnRuler(
		{ top, bottom, window: windowHeight },
		{ top: cells.top, bottom: cells.bottom },
		{ mount: standing(ruled, 'mountHeight'), window: cells.windowHeight, hasPicture },
		cover.height,
		settings.ruler,
	);
}

const pictureOf = (cells: Cells, cover: Cover, windowWidth: Length | undefined, windowHeight: Length | undefined) =>
	pictureSides(
		{ width: cells.pictureWidth, height: cells.pictureHeight },
		{ width: windowWidth, height: windowHeight },
		cells.shape,
		cover,
	);

type Results = Omit<SolvedRow, 'pictureWidth' | 'pictureHeight' | 'overlapSide' | 'overlapTop' | 'overlapBottom'>;

/** Mount, window and borders. On an axis that is open, borders are shown as far as they are known. */
function resultsOf(
	cells: Cells,
	ruled: RuledRow,
	fitting: { width: CutWidth | undefined; height: CutHeight | undefined },
	outcomes: { width: AxisOutcome; height: AxisOutcome },
	{ ruler }: Settings,
): Results {
	const typed = (key: SizeKey) => (isKnown(ruled.typed[key]) ? length(ruled.typed[key]) : undefined);
	const aboveZero = (value: Length) => (value > 0 ? value : undefined);
	const border = (key: 'side' | 'top' | 'bottom', outcome: AxisOutcome) => {
		if (cells[key] !== undefined || outcome !== 'open' || !isKnown(ruled.values[key])) return cells[key];
		return aboveZero(onRuler(ruled.values[key], ruler));
	};
	const bottom = border('bottom', outcomes.height);
	let top = border('top', outcomes.height);
	const isRoundedOver = top !== undefined && bottom !== undefined && top > bottom && cells.top === undefined;
	if (isRoundedOver && ruled.values.top <= ruled.values.bottom) top = aboveZero(downToRuler(ruled.values.top, ruler));
	return {
		mountWidth: fitting.width?.mount ?? typed('mountWidth'),
		mountHeight: fitting.height?.mount ?? typed('mountHeight'),
		windowWidth: fitting.width?.window ?? cells.windowWidth,
		windowHeight: fitting.height?.window ?? cells.windowHeight,
		side: fitting.width?.side ?? border('side', outcomes.width),
		top: fitting.height?.top ?? top,
		bottom: fitting.height?.bottom ?? bottom,
	};
}

type Overlaps = Pick<SolvedRow, 'overlapSide' | 'overlapTop' | 'overlapBottom'>;

/**
 * What the mount covers on each side of its innermost window: the picture is centred in it, the signing space below it;
 * with a signing space and no reveal its top edge is covered by exactly the overlap. Half a unit is rounded down.
 */
function overlapsOf(
	results: Omit<SolvedRow, keyof Overlaps>,
	cells: Cells,
	cover: Cover,
	outcomes: { width: AxisOutcome; height: AxisOutcome },
): Overlaps {
	const { windowWidth, windowHeight, pictureWidth, pictureHeight } = results;
	const smaller = innerWindowIsSmaller(cells);
	const none = { overlapSide: undefined, overlapTop: undefined, overlapBottom: undefined };
	const isKnownWidth = outcomes.width === 'fits' && windowWidth !== undefined && pictureWidth !== undefined;
	const sideways = isKnownWidth ? length(Math.floor((pictureWidth - (windowWidth - smaller)) / 2)) : undefined;
	if (outcomes.height !== 'fits' || windowHeight === undefined || pictureHeight === undefined)
		return { ...none, overlapSide: sideways };
	const more = minus(pictureHeight, minus(windowHeight, smaller));
	const { signingSpace, reveal, overlap } = cover;
	if (cover.height.isStated || signingSpace === 0 || reveal !== undefined) {
		const top = length(Math.floor((more + signingSpace) / 2));
		return { overlapSide: sideways, overlapTop: top, overlapBottom: minus(more, top) };
	}
	return { overlapSide: sideways, overlapTop: overlap, overlapBottom: minus(more, overlap) };
}

/** A row with no mount: there is only the picture. */
function pictureAlone(cells: Cells, cover: Cover): Solution {
	const typed = { width: cells.pictureWidth, height: cells.pictureHeight };
	const { width, height } = pictureSides(typed, { width: undefined, height: undefined }, cells.shape, cover);
	const outcome = (side: Length | undefined): AxisOutcome => (side === undefined ? 'open' : 'fits');
	return {
		solved: { ...nothing, pictureWidth: width, pictureHeight: height },
		width: outcome(width),
		height: outcome(height),
		mountSource: 'none of them',
		cover,
		border: NaN,
		typed: { ...unknownValues, pictureWidth: cells.pictureWidth ?? NaN, pictureHeight: cells.pictureHeight ?? NaN },
		exact: { ...unknownValues, pictureWidth: width ?? NaN, pictureHeight: height ?? NaN },
		weight: undefined,
		isShapeKept: cells.shape && true,
	};
}

const nothing: SolvedRow = {
	mountWidth: undefined,
	mountHeight: undefined,
	windowWidth: undefined,
	windowHeight: undefined,
	pictureWidth: undefined,
	pictureHeight: undefined,
	side: undefined,
	top: undefined,
	bottom: undefined,
	overlapSide: undefined,
	overlapTop: undefined,
	overlapBottom: undefined,
};

/**
 * Puts back the typed cells that say what the row shows. They may be up to 1 µm off, so what was not typed gives way to
 * keep the sums exact.
 *
 * @param rest the cells that the solution was worked out from
 */
function keepTyped(solution: Solution, cells: Cells, rest: Cells): Solution {
	const solved = { ...solution.solved };
	const typed = { ...solution.typed };
	for (const key of shownKeys) {
		if (cells[key] === undefined) continue;
		solved[key] = cells[key];
		typed[key] = cells[key];
	}
	const { mountWidth, side, windowWidth, mountHeight, top, bottom, windowHeight } = solved;
	if (mountWidth !== undefined && side !== undefined && windowWidth !== undefined) {
		if (cells.windowWidth === undefined) solved.windowWidth = minus(mountWidth, side, side);
		else if (solution.mountSource === 'none of them' && cells.mountWidth === undefined)
			solved.mountWidth = plus(side, windowWidth, side);
		else if (cells.side === undefined) solved.side = length(Math.floor((mountWidth - windowWidth) / 2)); // exact where both are whole nanometres, as typed
	}
	if (mountHeight !== undefined && top !== undefined && bottom !== undefined && windowHeight !== undefined) {
		if (cells.windowHeight === undefined) solved.windowHeight = minus(mountHeight, top, bottom);
		else if (solution.mountSource === 'none of them' && cells.mountHeight === undefined)
			solved.mountHeight = plus(top, windowHeight, bottom);
		else if (cells.top === undefined) solved.top = minus(mountHeight, windowHeight, bottom);
		else if (cells.bottom === undefined) solved.bottom = minus(mountHeight, windowHeight, top);
	}
	const { windowHeight: was, overlapBottom } = solution.solved;
	if (was !== undefined && overlapBottom !== undefined && solved.windowHeight !== undefined)
		solved.overlapBottom = plus(overlapBottom, minus(was, solved.windowHeight));
	return { ...solution, solved, typed, counting: solution.counting ?? rest };
}
