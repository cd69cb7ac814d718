import type { CellChange } from '../commands/typeCells.ts';
import { formatTypeable } from '../length/formatLength.ts';
import { type Length, length, minus } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import type { CellTexts, Row } from '../show/row.ts';
import { columnsOfWall } from './columnsOfWall.ts';
import { freeRuns } from './hangWall.ts';
import { type Hangable, toHang } from './hangWalls.ts';
import type { HungWall } from './hungPrint.ts';
import { shareColumns } from './shareColumns.ts';
import { sizeOnWall } from './sizeOnWall.ts';

/** A show as it is arranged: its rows with what they work out, in one order. */
export interface Arranged {
	readonly rows: readonly Row[];
	readonly results: readonly Hangable[];
	readonly settings: Settings;
}

/** Prints that hang under each other, by their places in the show from 0. */
export type Places = readonly number[];

/** The columns of a wall in the order in which they hang, whatever is typed of their places. */
export function orderOnWall({ results, settings }: Omit<Arranged, 'rows'>, wall: number): readonly Places[] {
	const prints = results.flatMap((result, place) => {
		if (result.copies === 0 || result.hangs.wall !== wall) return [];
		const print = toHang(result, place);
		return print ? [print] : [];
	});
	const { centre } = settings.walls[wall]!;
	return columnsOfWall(prints, { centre, stackGap: settings.stackGap }).map(({ parts }) =>
		parts.map(({ place }) => place),
	);
}

/** Changes of cells by the place of their row. */
type Changes = Map<number, Record<string, string>>;

const cellsOf = (changes: Changes, { rows }: Arranged): readonly CellChange[] =>
	[...changes].flatMap(([place, cells]) => {
		const { id, typed } = rows[place]!;
		const changed = Object.entries(cells).filter(([column, text]) => (typed[column as 'wall'] ?? '') !== text);
		return changed.length === 0 ? [] : [{ id, cells: Object.fromEntries(changed) as CellTexts }];
	});

function add(changes: Changes, place: number, cells: CellTexts): void {
	changes.set(place, { ...changes.get(place), ...(cells as Record<string, string>) });
}

/** Puts columns on a wall, numbered from 1 in an order; prints that stand so without numbers get none. */
function number(changes: Changes, columns: readonly Places[], wall: number, show: Arranged): void {
	const { results, settings } = show;
	const inOrder = columns.flat();
	const isAsItStands =
		inOrder.length === columns.length &&
		inOrder.every((place, at) => results[place]!.hangs.order === undefined && place > (inOrder[at - 1] ?? -1));
	for (const [at, column] of columns.entries())
		for (const place of column) {
			const { hangs } = results[place]!;
			if (hangs.wall !== wall) add(changes, place, { wall: settings.walls[wall]!.name });
			if (isAsItStands) continue;
			if (hangs.order !== at + 1 || changes.get(place)?.['hang order'] !== undefined)
				add(changes, place, { 'hang order': `${at + 1}` });
		}
}

/** The cells that put prints on a wall, behind all that hangs there. */
export function giveToWall(show: Arranged, places: Places, wall: number): readonly CellChange[] {
	const changes: Changes = new Map();
	const { name } = show.settings.walls[wall]!;
	for (const place of places)
		if (show.results[place]!.hangs.wall !== wall)
			add(changes, place, { wall: name, 'hang order': '', 'hang left': '', 'hang centre': '' });
	return cellsOf(changes, show);
}

/** The cells that take prints off their walls; where there is one wall, all hang on it. */
export function takeDown(show: Arranged, places: Places): readonly CellChange[] {
	const changes: Changes = new Map();
	for (const place of places) add(changes, place, { wall: '', 'hang order': '', 'hang left': '', 'hang centre': '' });
	return cellsOf(changes, show);
}

/** The cells that put the column of a print on a wall, so many columns from its left; its own place is worked out then. */
export function putInOrder(show: Arranged, place: number, wall: number, at: number): readonly CellChange[] {
	const own = columnWith(show, place);
	const others = orderOnWall(show, wall).filter((column) => !column.includes(place));
	const changes: Changes = new Map();
	for (const each of own) add(changes, each, { 'hang left': '' });
	number(changes, others.toSpliced(at, 0, own), wall, show);
	return cellsOf(changes, show);
}

/** The column that a print is in; the print alone where it hangs on no wall. */
export function columnWith(show: Omit<Arranged, 'rows'>, place: number): Places {
	const { wall } = show.results[place]!.hangs;
	const columns = wall === undefined ? [] : orderOnWall(show, wall);
	return columns.find((column) => column.includes(place)) ?? [place];
}

/** The cells by which the columns of two prints change places, typed ones too. */
export function swapPrints(show: Arranged, one: number, other: number): readonly CellChange[] {
	const [first, second] = [columnWith(show, one), columnWith(show, other)];
	const [firstWall, secondWall] = [show.results[one]!.hangs.wall, show.results[other]!.hangs.wall];
	if (first === second || first.includes(other) || firstWall === undefined || secondWall === undefined) return [];
	const changes: Changes = new Map();
	const swapped = (columns: readonly Places[]) =>
		columns.map((column) => (column.includes(one) ? second : column.includes(other) ? first : column));
	for (const wall of new Set([firstWall, secondWall])) number(changes, swapped(orderOnWall(show, wall)), wall, show);
	const leftOf = (column: Places) =>
		column.map((place) => show.rows[place]!.typed['hang left']).find((text) => text !== undefined) ?? '';
	const [firstLeft, secondLeft] = [leftOf(first), leftOf(second)];
	for (const [column, left] of [
		[first, secondLeft],
		[second, firstLeft],
	] as const)
		for (const [at, place] of column.entries()) add(changes, place, { 'hang left': at === 0 ? left : '' });
	return cellsOf(changes, show);
}

/** The cells that turn a wall round: the order, and what is typed from its left. */
export function mirrorWall(show: Arranged, wall: number): readonly CellChange[] {
	const { settings, results } = show;
	const changes: Changes = new Map();
	const columns = orderOnWall(show, wall);
	number(changes, columns.toReversed(), wall, show);
	for (const place of columns.flat()) {
		const { hangLeft } = results[place]!.read.cells;
		if (hangLeft === undefined) continue;
		const left = minus(settings.walls[wall]!.length, hangLeft, sizeOnWall(results[place]!)!.width);
		add(changes, place, { 'hang left': leftText(left, settings) });
	}
	return cellsOf(changes, show);
}

/** A left edge as it is typed; nothing is left of the wall. */
export const leftText = (left: Length, { unit }: Pick<Settings, 'unit'>): string =>
	formatTypeable(length(Math.max(0, left)), unit);

/** Ways to order a wall by height. */
export const heightOrders = ['tallest first', 'shortest first', 'tallest in the middle'] as const;
/** See `heightOrders`. */
export type HeightOrder = (typeof heightOrders)[number];

/** The cells that order a wall by the height of its columns; those with a typed place keep it. */
export function orderByHeight(show: Arranged, wall: number, order: HeightOrder): readonly CellChange[] {
	const { results } = show;
	const heightOf = (column: Places) => Math.max(...column.map((place) => sizeOnWall(results[place]!)!.height));
	const columns = orderOnWall(show, wall);
	const tallest = columns.toSorted((one, other) => heightOf(other) - heightOf(one));
	const ordered = {
		'tallest first': () => tallest,
		'shortest first': () => columns.toSorted((one, other) => heightOf(one) - heightOf(other)),
		'tallest in the middle': () => fromTheMiddle(tallest),
	};
	const changes: Changes = new Map();
	number(changes, ordered[order](), wall, show);
	return cellsOf(changes, show);
}

/** The first in the middle, the next to its left, then to its right, and so on outwards. */
const fromTheMiddle = <Item>(items: readonly Item[]): readonly Item[] => [
	...items.filter((_, at) => at % 2 === 1).toReversed(),
	...items.filter((_, at) => at % 2 === 0),
];

/**
 * The cells that choose a wall for every print, in order: so that the smallest gap of all walls is largest, then the
 * largest smallest. Prints with a typed place keep their wall.
 */
export function evenOut(show: Arranged): readonly CellChange[] {
	const { results, settings } = show;
	const { walls, stackGap } = settings;
	const isTyped = (column: Places) => column.some((place) => results[place]!.read.cells.hangLeft !== undefined);
	const onWalls = walls.map((_, wall) => orderOnWall(show, wall));
	const unhung = results.flatMap((result, place): Places[] =>
		result.copies > 0 && result.hangs.wall === undefined && sizeOnWall(result) ? [[place]] : [],
	);
	const free = [...onWalls.flatMap((columns) => columns.filter((column) => !isTyped(column))), ...unhung];
	const hangable = (column: Places, order: number) =>
		column.map((place) => ({ ...toHang(results[place]!, place)!, order }));
	const widths = columnsOfWall(
		free.flatMap((column, at) => hangable(column, at)),
		{ centre: length(0), stackGap },
	).map(({ width }) => width);
	const runs = walls.flatMap((wall, at) => {
		const all = [...onWalls[at]!.filter(isTyped), ...free];
		const columns = columnsOfWall(
			all.flatMap((column, order) => hangable(column, order)),
			{ centre: wall.centre, stackGap },
		);
		return freeRuns(wall, columns).map(([from, to]) => ({ wall: at, length: to - from, gap: wall.gap }));
	});
	const { counts } = shareColumns(runs, widths);
	const changes: Changes = new Map();
	let next = 0;
	for (const wall of walls.keys()) {
		const count = counts.reduce((sum, each, run) => (runs[run]!.wall === wall ? sum + each : sum), 0);
		const own = free.slice(next, next + count);
		next += count;
		number(changes, [...own, ...onWalls[wall]!.filter(isTyped)], wall, show);
	}
	return cellsOf(changes, show);
}

/** What dropping a print at a place of its wall means. */
export type Drop =
	| { readonly kind: 'even' }
	| { readonly kind: 'left'; readonly left: Length }
	| { readonly kind: 'order'; readonly at: number };

/**
 * What a print that is moved along its wall is for: past the middle of a neighbour that has no typed place, another
 * order; near its even place, that; else a place of its own.
 * @param left where its left edge was dropped
 * @param even its even place
 * @param near how far from that still counts as it
 */
export function dropOf(
	show: Omit<Arranged, 'rows'>,
	hungWall: HungWall,
	place: number,
	{ left, even, near }: { readonly left: Length; readonly even: Length | undefined; readonly near: number },
): Drop {
	const own = hungWall.prints.find((print) => print.place === place)!;
	const wall = show.results[place]!.hangs.wall!;
	const isOrdered = (column: Places) => column.every((each) => show.results[each]!.read.cells.hangLeft === undefined);
	const others = orderOnWall(show, wall).filter((column) => !column.includes(place));
	const middleOf = (column: Places) => {
		const edges = hungWall.prints.filter((print) => column.includes(print.place));
		const leftmost = Math.min(...edges.map((print) => print.left));
		return (leftmost + Math.max(...edges.map((print) => print.left + print.size.width))) / 2;
	};
	const before = (middle: number) => others.filter((column) => isOrdered(column) && middleOf(column) < middle).length;
	const half = own.size.width / 2;
	const [was, is] = [before(own.left + half), before(left + half)];
	if (was !== is) {
		const ordered = others.filter(isOrdered);
		const behind = ordered[is];
		return { kind: 'order', at: behind ? others.indexOf(behind) : others.indexOf(ordered.at(-1)!) + 1 };
	}
	if (even !== undefined && Math.abs(left - even) <= near) return { kind: 'even' };
	return { kind: 'left', left };
}
