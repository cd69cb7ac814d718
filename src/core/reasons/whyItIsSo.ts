import { formatLength, formatWithUnit } from '../length/formatLength.ts';
import { isSame, type Length, nearestLength } from '../length/length.ts';
import { fixedWeight, weightOf } from '../row/border.ts';
import { type Cells, type SizeKey, sizeKeys } from '../row/cells.ts';
import { innerWindowIsSmaller } from '../row/cover.ts';
import { isKnown } from '../row/equations.ts';
import type { Solution } from '../row/solution.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { shownText } from '../values/shownText.ts';

/**
 * Why a size or border of a row is what it is, as the sum that gives it: "600 − 2 × 72 = 456".
 * @returns undefined where the row has no such result
 */
export function whyItIsSo(worked: WorkedRow, key: SizeKey, settings: Settings): string | undefined {
	const { solution } = worked;
	const { cells } = worked.read;
	const value = solution.solved[key];
	if (value === undefined) return undefined;
	if (cells[key] !== undefined) return `${formatWithUnit(value, settings)} is typed.`;
	return reasonOf({ worked, cells, solution, settings, key, value });
}

interface Asked {
	readonly worked: WorkedRow;
	readonly cells: Cells;
	readonly solution: Solution;
	readonly settings: Settings;
	readonly key: SizeKey;
	readonly value: Length;
}

function reasonOf(asked: Asked): string {
	switch (asked.key) {
		case 'mountWidth':
		case 'mountHeight':
			return mountReason(asked);
		case 'side':
			return sideReason(asked);
		case 'top':
			return topReason(asked);
		case 'bottom':
			return bottomReason(asked);
		case 'windowWidth':
		case 'windowHeight':
			return windowReason(asked);
		case 'pictureWidth':
		case 'pictureHeight':
			return pictureReason(asked);
	}
}

const sayer = ({ settings }: Asked) => ({
	n: (value: number) => formatLength(nearestLength(value), settings),
	say: (value: number) => formatWithUnit(nearestLength(value), settings),
});

function mountReason(asked: Asked): string {
	const { solution, key, value, cells } = asked;
	const { n, say } = sayer(asked);
	if (solution.mountSource === 'show') return `${say(value)} comes from the show’s mount.`;
	const { listed } = asked.worked.frame.named;
	if (solution.mountSource === 'named' && cells.mount.kind === 'size' && cells.mount.isOfFrame && listed)
		return `${say(value)} fits the frame “${shownText(listed.name)}”.`;
	if (solution.mountSource === 'named') return `${say(value)} comes from the mount cell.`;
	const { side, top, bottom, windowWidth, windowHeight } = solution.solved;
	const why = cells.mount.kind === 'fit' ? 'The mount is cut to fit' : 'The mount follows from what is typed';
	return key === 'mountWidth'
		? `${why}: 2 × ${n(side!)} + ${n(windowWidth!)} = ${say(value)}.`
		: `${why}: ${n(top!)} + ${n(windowHeight!)} + ${n(bottom!)} = ${say(value)}.`;
}

/** Where an exact figure was put on the ruler, what it was before. */
function onRulerWords(asked: Asked, exact: number): string {
	const { n, say } = sayer(asked);
	const { value, settings } = asked;
	return isSame(exact, value) ? '' : ` Rounded to the ${say(settings.ruler)} ruler: ${n(value)}.`;
}

function sideReason(asked: Asked): string {
	const { solution, value } = asked;
	const { n, say } = sayer(asked);
	const { exact, border } = solution;
	if (isSame(exact.side, border)) return `${borderWords(asked)}.${onRulerWords(asked, exact.side)}`;
	const { mountWidth, windowWidth } = exact;
	if (isKnown(mountWidth) && isKnown(windowWidth))
		return `(${n(mountWidth)} − ${n(windowWidth)}) ÷ 2 = ${say(exact.side)}.${onRulerWords(asked, exact.side)}`;
	return `${say(value)} is what is left.`;
}

function topReason(asked: Asked): string {
	const { solution, cells, value } = asked;
	const { n, say } = sayer(asked);
	const { exact, border, solved } = solution;
	if (cells.bottom !== undefined && solved.mountHeight && solved.windowHeight && !solution.weight)
		return `${n(solved.mountHeight)} − ${n(solved.windowHeight)} − ${n(cells.bottom)} = ${say(value)}.`;
	if (isSame(exact.top, border)) return `${borderWords(asked)}.${onRulerWords(asked, exact.top)}`;
	if (isKnown(exact.mountHeight) && isKnown(exact.windowHeight))
		return `${n(exact.mountHeight)} − ${n(exact.windowHeight)} = ${n(exact.mountHeight - exact.windowHeight)} is shared, ${weightWords(asked)}: ${say(exact.top)} above.${onRulerWords(asked, exact.top)}`;
	return `${say(exact.top)} follows from the bottom, ${weightWords(asked)}.${onRulerWords(asked, exact.top)}`;
}

function bottomReason(asked: Asked): string {
	const { solution, value } = asked;
	const { n, say } = sayer(asked);
	const { mountHeight, windowHeight, top } = solution.solved;
	const { bottom } = solution.exact;
	const byWeight = solution.weight ? solution.weight.times * solution.exact.top + solution.weight.more : NaN;
	if (isKnown(byWeight) && Math.abs(bottom - byWeight) < 1 && Math.abs(bottom - value) <= asked.settings.ruler)
		return `From the top ${n(solution.exact.top)}, ${weightWords(asked)}: ${say(bottom)}.${onRulerWords(asked, bottom)}`;
	if (mountHeight === undefined || windowHeight === undefined || top === undefined)
		return `${say(value)} is what is left.`;
	return `${n(mountHeight)} − ${n(windowHeight)} − ${n(top)} = ${say(value)}.`;
}

function borderWords(asked: Asked): string {
	const { cells, solution, settings } = asked;
	const { say } = sayer(asked);
	if (cells.side !== undefined) return `${say(solution.border)} is the side typed in this row`;
	if (cells.top !== undefined) return `${say(solution.border)} is the top typed in this row`;
	if (cells.bottom !== undefined && fixedWeight(weightOf(cells, settings)))
		return `${say(solution.border)} follows from the bottom typed in this row`;
	return `${say(solution.border)} is the show’s border`;
}

function weightWords(asked: Asked): string {
	const { say } = sayer(asked);
	const weight = weightOf(asked.cells, asked.settings);
	if (weight.kind === 'optical centre') return 'so that the window lies at the optical centre';
	if (weight.kind === 'length') return `the bottom ${say(weight.more)} wider`;
	const percent = (100 * weight.numerator) / weight.denominator;
	return percent === 0 ? 'the bottom as wide' : `the bottom ${Number(percent.toFixed(2))} % wider`;
}

function windowReason(asked: Asked): string {
	const { cells, solution, key, value } = asked;
	const { n, say } = sayer(asked);
	const { mountWidth, mountHeight, side, top, bottom } = solution.solved;
	const isByPicture = cells[key === 'windowWidth' ? 'pictureWidth' : 'pictureHeight'] !== undefined;
	if (isByPicture) return coveredWords(asked);
	if (key === 'windowWidth')
		return mountWidth !== undefined && side !== undefined && solution.mountSource !== 'none of them'
			? `${n(mountWidth)} − 2 × ${n(side)} = ${say(value)}.`
			: coveredWords(asked);
	return mountHeight !== undefined &&
		top !== undefined &&
		bottom !== undefined &&
		solution.mountSource !== 'none of them'
		? `${n(mountHeight)} − ${n(top)} − ${n(bottom)} = ${say(value)}.`
		: coveredWords(asked);
}

/** The window by the picture. */
function coveredWords(asked: Asked): string {
	const { solution, key, value } = asked;
	const { n, say } = sayer(asked);
	const axis = key === 'windowWidth' ? 'width' : 'height';
	const picture = axis === 'width' ? solution.solved.pictureWidth : solution.solved.pictureHeight;
	if (picture === undefined) return `${say(value)} is what the borders leave.`;
	const exact = picture + solution.cover[axis].added;
	return `The picture’s ${n(picture)} ${coverSum(asked, axis, false)} = ${say(exact)}.${onRulerWords(asked, exact)}`;
}

/** "− 2 × 3 overlap", or the other way round. */
function coverSum(asked: Asked, axis: 'width' | 'height', isTurned: boolean): string {
	const { cells, solution } = asked;
	const { n } = sayer(asked);
	const { reveal, overlap, signingSpace, [axis]: cover } = solution.cover;
	const sign = (isPlus: boolean) => (isPlus !== isTurned ? '+' : '−');
	if (cover.isStated) return `${sign(cover.added > 0)} ${n(Math.abs(cover.added))}`;
	const inner = innerWindowIsSmaller(cells);
	const parts = [
		reveal === undefined
			? axis === 'height' && signingSpace > 0
				? `${sign(false)} ${n(overlap)} overlap ${sign(true)} ${n(signingSpace)} signing space`
				: `${sign(false)} 2 × ${n(overlap)} overlap`
			: `${sign(true)} 2 × ${n(reveal)} reveal${axis === 'height' && signingSpace > 0 ? ` ${sign(true)} ${n(signingSpace)} signing space` : ''}`,
		...(inner > 0 ? [`${sign(true)} 2 × ${n(inner / 2)} inner mount`] : []),
	];
	return parts.join(' ');
}

function pictureReason(asked: Asked): string {
	const { cells, solution, key, value } = asked;
	const { n, say } = sayer(asked);
	const { windowWidth, windowHeight, pictureWidth, pictureHeight } = solution.solved;
	const bound = solution.boundByPaper;
	const side = key === 'pictureWidth' ? 'width' : 'height';
	if (bound?.sides.includes(side))
		return `${say(value)} is what the paper${paperName(asked)} holds; the mount has room for ${n(bound.unbound[side])}.`;
	if (bound?.isHeightHeld && side === 'height')
		return `${say(value)} is the height without the paper. A narrower picture gets no higher.`;
	if (cells.isFloat && cells.paper && !bound)
		return `${say(value)} is what the paper${paperName(asked)} holds of the shape.`;
	const [axis, window, other] =
		key === 'pictureWidth'
			? (['width', windowWidth, pictureHeight] as const)
			: (['height', windowHeight, pictureWidth] as const);
	const shape = cells.shape && `${cells.shape.numerator}:${cells.shape.denominator}`;
	const byWindow = window === undefined ? undefined : window - solution.cover[axis].added;
	if (byWindow !== undefined && isSame(byWindow, value))
		return `The window’s ${n(window!)} ${coverSum(asked, axis, true)} = ${say(value)}.`;
	if (shape && other !== undefined) return `By the shape ${shape}, ${n(other)} gives ${say(value)}.`;
	return `${say(value)} is what the window shows.`;
}

/** The name of the row's paper, where the show's list has it. */
const paperName = ({ cells }: Asked): string =>
	cells.paper?.listed === undefined ? '' : ` “${shownText(cells.paper.listed)}”`;

/** The cells that can be asked about. */
export const askableKeys: readonly SizeKey[] = sizeKeys;
