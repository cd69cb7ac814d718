import { formatWithUnit } from '../length/formatLength.ts';
import { formatMark, formatMarkWithUnit, toMark } from '../length/formatMark.ts';
import { isSame, length, type Length } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import type { Obstacle, Wall } from '../settings/wall.ts';
import { nameOfPrint } from '../show/nameOfPrint.ts';
import type { Row } from '../show/row.ts';
import { shownText } from '../values/shownText.ts';
import type { Hooks } from './fixing.ts';
import { hookHeightWords } from './holdWords.ts';
import { topOf } from './obstacleBox.ts';
import type { HungPrint, HungWall } from './hungPrint.ts';

/** What is to either side of a print: another print, what is in the way at its height, or the end of the wall. */
export interface Neighbour {
	/** Undefined where it is no print. */
	readonly print: HungPrint | undefined;
	/** Undefined where it is no obstacle; with neither, it is the end of the wall. */
	readonly obstacle: Obstacle | undefined;
	/** From edge to edge; below zero where they overlap. */
	readonly distance: Length;
}

/** What is nearest beside a print, as it hangs or with its left edge elsewhere; prints of its own column are not. */
export function neighboursOf(
	{ wall, prints }: HungWall,
	own: HungPrint,
	left: Length = own.left,
): { readonly left: Neighbour; readonly right: Neighbour } {
	const right = left + own.size.width;
	const middle = left + own.size.width / 2;
	let [before, after]: [Neighbour, Neighbour] = [
		{ print: undefined, obstacle: undefined, distance: left },
		{ print: undefined, obstacle: undefined, distance: length(wall.length - right) },
	];
	const put = (from: number, width: number, beside: Omit<Neighbour, 'distance'>) => {
		if (from + width / 2 < middle) {
			const distance = left - from - width;
			if (distance < before.distance) before = { ...beside, distance: length(distance) };
		} else if (from - right < after.distance) after = { ...beside, distance: length(from - right) };
	};
	for (const print of prints) {
		if (print.column === own.column) continue;
		put(print.left, print.size.width, { print, obstacle: undefined });
	}
	const [low, high] = [own.centre - own.size.height / 2, own.centre + own.size.height / 2];
	for (const obstacle of wall.obstacles) {
		const isBeside = obstacle.bottom < high && (topOf(obstacle) ?? Infinity) > low;
		if (isBeside) put(obstacle.left, obstacle.width, { print: undefined, obstacle });
	}
	return { left: before, right: after };
}

/** The place of a print on its wall in words: heard, and said in lists. */
export function placeWords(
	hungWall: HungWall,
	print: HungPrint,
	rows: readonly Row[],
	settings: Settings,
	hooks: Hooks | undefined,
): string {
	const say = (value: Length) => formatMarkWithUnit(value, settings);
	const { left, right } = neighboursOf(hungWall, print);
	const from = ({ print: other, obstacle, distance }: Neighbour, side: string) => {
		if (other) return `${say(distance)} from “${nameOfPrint(rows[other.place]!, other.place)}”`;
		return obstacle
			? `${say(distance)} from the ${shownText(obstacle.name)}`
			: `${say(distance)} to the wall’s ${side} end`;
	};
	const height = hooks?.hooks[0]?.height;
	const typed = [...(print.isLeftTyped ? ['left typed'] : []), ...(print.isCentreTyped ? ['centre typed'] : [])];
	return [
		`on ${shownText(hungWall.wall.name)}`,
		`left ${say(print.left)}`,
		`centre ${say(print.centre)}`,
		...(height === undefined ? [] : [`hook ${hookHeightWords(say(height), hooks?.fixing)} above the floor`]),
		from(left, 'left'),
		from(right, 'right'),
		...typed,
	].join(', ');
}

/** What is in the way on a wall in words: "door on North, 300 mm from the left, 900 mm wide, on the floor, 2000 mm high". */
export function obstacleWords({ name, left, bottom, width, height }: Obstacle, wall: Wall, settings: Settings): string {
	const say = (value: Length) => formatWithUnit(value, settings);
	return [
		`${shownText(name)} on ${shownText(wall.name)}`,
		`${say(left)} from the left`,
		`${say(width)} wide`,
		bottom === 0 ? 'on the floor' : `${say(bottom)} above the floor`,
		height === undefined ? 'up to the ceiling' : `${say(height)} high`,
	].join(', ');
}

/** What warms what hangs over it, by the names that people give it. */
const warm = /radiator|heater|stove|fireplace/i;

/** That a print hangs over something warm, and how far, in words; undefined where it does not. */
export function heatWords(
	{ wall }: HungWall,
	{ left, centre, size }: Omit<HungPrint, 'place'>,
	settings: Settings,
): string | undefined {
	const low = centre - size.height / 2;
	const under = wall.obstacles.find(
		({ name, left: from, width, bottom }) =>
			warm.test(name) && from < left + size.width && from + width > left && bottom < low,
	);
	if (!under) return undefined;
	const distance = low - (topOf(under) ?? low);
	const far = distance > 0 ? `${formatMarkWithUnit(length(distance), settings)} ` : '';
	return `Hangs ${far}above the ${shownText(under.name)}. Heat cockles paper.`;
}

/** How a wall is filled, in a line: "5 prints, gaps of 120 mm"; "about" where a gap lies between what is marked. */
export function wallLine({ prints, stretches, wall }: HungWall, settings: Settings): string {
	const count = `${prints.length === 0 ? 'no' : prints.length} print${prints.length === 1 ? '' : 's'}`;
	const gaps = stretches.flatMap(({ columns, gap, ends }) => {
		if (gap === undefined) return [];
		return wall.gap !== undefined && columns.length === 1 ? [ends!] : [gap];
	});
	if (stretches.some(({ isCrowded }) => isCrowded)) return `${count}, edge to edge, as they do not fit`;
	if (gaps.length === 0) return count;
	const [least, most] = [Math.min(...gaps), Math.max(...gaps)];
	const [narrow, wide] = [toMark(least, settings), toMark(most, settings)];
	const about = isSame(narrow, least) && isSame(wide, most) ? '' : 'about ';
	return narrow === wide
		? `${count}, gaps of ${about}${formatMarkWithUnit(least, settings)}`
		: `${count}, gaps of ${about}${formatMark(least, settings)} to ${formatMarkWithUnit(most, settings)}`;
}

/** What is said beside each print. */
export const hangingAtStep =
	'Two people for a large print. Ladder level and held. No cables or pipes behind the hook. Gloves for glass. Nobody stands under it.';

/** The usual cautions of hanging. What holds is for who knows the wall to say. */
export const hangingCautions = [
	'Two people hang a large print. One holds it, one finds the hook. Stand the ladder on level ground and have it held.',
	'Carry glass upright, with gloves, its edge away from your face. Nobody stands under a print while it is being hung.',
	'What the wall is made of decides what holds. Ask someone who knows it, and have heavy pieces fixed by them.',
	'Keep away from cables and pipes, and from above a radiator, as heat cockles paper. Your local rules and your training come first.',
] as const;
