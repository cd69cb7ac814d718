import type { RowResult } from '../core/findings/rowResult.ts';
import type { BenchPlan } from '../core/bench/benchPlan.ts';
import { type Length, mmPerMetre, toMm } from '../core/length/length.ts';
import { solvedKeys } from '../core/row/solvedRow.ts';
import type { BoardPlan } from '../core/sheets/boardPlan.ts';
import type { Layout } from '../core/sheets/layout.ts';
import type { Rectangle } from '../core/show/cutSheet.ts';
import { asTyped } from '../core/show/asTyped.ts';
import { sharedColumns } from '../core/show/columns.ts';
import type { GetLine } from '../core/order/getLine.ts';
import type { ToGet } from '../core/order/whatToGet.ts';
import type { HungWall } from '../core/walls/hungPrint.ts';
import { hangWalls } from '../core/walls/hangWalls.ts';
import type { Leg, StickPlan } from '../core/sticks/stickPlan.ts';
import type { Row } from '../core/show/row.ts';
import type { WorkedOutRows } from '../files/csv.ts';
import { stepsOfRow } from '../files/resultTexts.ts';

/** Millimetres, rounded to 6 decimals (1 nm). */
const millimetres = (length: Length): number => Number(toMm(length).toFixed(6)) || 0;

/** What of a show is planned beside the bench. */
export interface PlannedShow {
	/** Of boards, glazing and backing. */
	readonly plans: readonly BoardPlan[];
	readonly sticks: readonly StickPlan[];
	readonly toGet: ToGet;
}

/** Everything that is planned, as the command line gives it: lengths in millimetres, `null` where there is none. */
export function planJson(
	{ rows, results, settings, bench }: WorkedOutRows,
	{ plans, sticks, toGet }: PlannedShow,
): string {
	const of = (material: BoardPlan['material']) => plans.filter((plan) => plan.material === material).map(boardJson);
	const plan = {
		rows: rows.map((row, index) => {
			const { id, typed } = row;
			const result = results[index]!;
			const { solved, findings } = result;
			return {
				id,
				title: typed.title ?? '',
				typed: Object.fromEntries(
					sharedColumns.flatMap(({ name }) => (typed[name] === undefined ? [] : [[name, typed[name]]])),
				),
				solved: Object.fromEntries(
					solvedKeys.map((key) => [key, solved[key] === undefined ? null : millimetres(solved[key])]),
				),
				findings: findings.map(({ code, level, cells, message }) => ({ code, level, cells, message })),
				steps: stepsOfRow(bench, index),
				...framedJson(result),
				...onPaperJson(result, row),
			};
		}),
		sheets: of(undefined),
		glazing: of('glazing'),
		backing: of('backing'),
		sticks: sticks.map(sticksJson),
		get: toGet.lines.map(getJson),
		walls: hangWalls(results, settings).walls.map((wall) => wallJson(wall, results)),
		bench: benchJson(bench),
	};
	return `${JSON.stringify(plan, null, '\t')}\n`;
}

const lengthOrNull = (length: Length | undefined) => (length === undefined ? null : millimetres(length));

/** Kilograms, rounded to a milligram. */
const kilograms = (kg: number): number => Number(kg.toFixed(6));

/** How a row hangs, where anything is known of what goes into its frame. */
function framedJson({ frame: { frame, inside }, framed: { size, depth, weightKg } }: RowResult) {
	if (!inside) return {};
	return {
		framed: {
			frame: frame?.name ?? null,
			width: lengthOrNull(size?.width),
			height: lengthOrNull(size?.height),
			depth: millimetres(depth),
			weightKg: weightKg === undefined ? null : kilograms(weightKg),
		},
	};
}

/** Where the picture of a row lies on its paper. */
function onPaperJson({ onPaper, read, copies }: RowResult, row: Row) {
	if (!onPaper) return {};
	const { left, top, right, bottom } = onPaper;
	return {
		onPaper: {
			paper: read.cells.paper?.listed ?? asTyped(row, 'paper').trim(),
			left: millimetres(left),
			top: millimetres(top),
			right: millimetres(right),
			bottom: millimetres(bottom),
			copies,
		},
	};
}

/** What hangs on a wall, from the left: `centre` is the middle above the floor, and so is a hook's `height`. */
const wallJson = ({ wall, prints }: HungWall, results: readonly RowResult[]) => ({
	wall: wall.name,
	prints: prints.map(({ place, left, centre }) => ({
		row: place + 1,
		copy: 1,
		left: millimetres(left),
		centre: millimetres(centre),
		hooks: (results[place]!.hung?.hooks?.hooks ?? []).map((hook) => ({
			left: millimetres(hook.left),
			height: millimetres(hook.height),
		})),
	})),
});

const benchJson = ({ changes, leastChanges, proven, steps }: BenchPlan) => ({
	changes,
	leastChanges,
	proven,
	steps: steps.map(({ guide, start, end, cuts }) => ({
		guide: millimetres(guide),
		...(start !== undefined && { start: millimetres(start) }),
		...(end !== undefined && { end: millimetres(end) }),
		cuts: cuts.map(({ row, copy, part, side }) => ({ row, copy, part, side })),
	})),
});

const boardJson = ({ board, cost, count, leastCost, leastCount, proven, layouts, unplaced }: BoardPlan) => ({
	board,
	cost,
	count,
	leastCost,
	leastCount,
	proven,
	layouts: layouts.map(layoutJson),
	unplaced: unplaced.map(({ blank: { row, copy, part }, reason }) => ({ row, copy, part, reason })),
});

const sticksJson = ({ frame, sticks, leastCount, proven, tooLong }: StickPlan) => ({
	frame,
	count: sticks.length,
	leastCount,
	proven,
	layouts: sticks.map(({ legs }) => ({ times: 1, legs: legs.map(legJson) })),
	unplaced: tooLong.map(legJson),
});

const legJson = ({ row, copy, length }: Leg) => ({ row, copy, length: millimetres(length) });

/** A length in metres, rounded to 1 nm as all lengths are; pieces are whole. */
const amount = (value: number, { isByLength }: GetLine): number =>
	isByLength ? Number((toMm(value as Length) / mmPerMetre).toFixed(9)) : value;

const getJson = (line: GetLine) => ({
	kind: line.kind,
	name: line.name,
	wanted: amount(line.wanted, line),
	there: amount(line.there, line),
	packs: line.packs,
	cost: line.cost ?? null,
});

const layoutJson = ({ stock, blanks, cuts, offcuts }: Layout) => ({
	sheet: { width: millimetres(stock.width), height: millimetres(stock.height) },
	times: 1,
	blanks: blanks.map(({ row, copy, part, turned, ...place }) => ({
		row,
		copy,
		part,
		...rectangleJson(place),
		turned,
	})),
	cuts: cuts.map(({ piece, across, at }) => ({ piece: rectangleJson(piece), across, at: millimetres(at) })),
	offcuts: offcuts.map(rectangleJson),
});

const rectangleJson = ({ x, y, width, height }: Rectangle) => ({
	x: millimetres(x),
	y: millimetres(y),
	width: millimetres(width),
	height: millimetres(height),
});
