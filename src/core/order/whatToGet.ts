import type { RowResult } from '../findings/rowResult.ts';
import { frameParts, partsOf } from '../row/partsOf.ts';
import type { Settings } from '../settings/settings.ts';
import type { BoardPlan, UnplacedBlank } from '../sheets/boardPlan.ts';
import type { Blank } from '../show/blank.ts';
import type { Row, RowId } from '../show/row.ts';
import type { Leg, StickPlan } from '../sticks/stickPlan.ts';
import { sawnFrame } from '../sticks/stickJobsOf.ts';
import { countedRows, type LeftOutOfOrder } from './countedRows.ts';
import { frameNeeds, stickNeeds } from './frameNeeds.ts';
import { type GetLine, lineOf } from './getLine.ts';
import { asTyped } from '../show/asTyped.ts';
import { placesNow } from './placesNow.ts';
import { paperNeeds } from './paperNeeds.ts';
import { blankNeeds, sheetNeeds } from './sheetNeeds.ts';
import { shareOut } from './shareOut.ts';
import { supplyNeeds } from './supplyNeeds.ts';

/** A show as what is to be got for it follows from. */
export interface ShowToGet {
	readonly rows: readonly Row[];
	readonly results: readonly RowResult[];
	readonly settings: Settings;
	/** The plans of boards, glazing and backing. */
	readonly plans: readonly BoardPlan[];
	readonly sticks: readonly StickPlan[];
}

/** What a maker pays. */
export interface Share {
	/** As the first of their rows has it; empty: rows that name no maker. */
	readonly maker: string;
	/** In whole minor units. */
	readonly cost: number;
}

/** A row whose frame is made, and of which it is not known how large: the moulding's width or lip is not given. */
export interface UnmeasuredRow {
	/** Place of the row in the show, from 1. */
	readonly row: number;
	readonly rowId: RowId;
	readonly frame: string;
}

/** Everything that is to be got for a show. */
export interface ToGet {
	readonly lines: readonly GetLine[];
	/** What of it has a price, in whole minor units. */
	readonly total: number;
	/** Lines that have to be bought and have no price: they are in no sum. */
	readonly unpriced: readonly GetLine[];
	/** By maker, in the order of the rows: they add up to the total. */
	readonly shares: readonly Share[];
	/** By row, in the order of the show: they add up to the total. */
	readonly costs: readonly number[];
	/** Blanks that nothing in stock gives. */
	readonly unplaced: readonly (UnplacedBlank & Pick<BoardPlan, 'board' | 'material'>)[];
	/** The plans of sticks; a leg of a print that is gone since is of place 0. */
	readonly sticks: readonly StickPlan[];
	/** Legs that are longer than their stick. */
	readonly tooLong: readonly (Leg & { readonly frame: string })[];
	readonly unmeasured: readonly UnmeasuredRow[];
	readonly leftOut: readonly LeftOutOfOrder[];
}

/** Works out what is to be got for a show, what it costs, and who pays what of it. */
export function whatToGet(show: ShowToGet): ToGet {
	const { rows, results, settings } = show;
	const { plans, sticks } = placesNow(show, rows);
	const { counted, leftOut } = countedRows(rows, results);
	const of = (material: BoardPlan['material']) => plans.filter((plan) => plan.material === material);
	const unlisted = unlistedBlanks(counted, rows, settings);
	const lines = [
		...sheetNeeds(of(undefined)),
		...blankNeeds('board', unlisted.board),
		...sheetNeeds(of('glazing')),
		...blankNeeds('glazing', unlisted.glazing),
		...sheetNeeds(of('backing')),
		...blankNeeds('backing', unlisted.backing),
		...frameNeeds(counted, settings),
		...stickNeeds(sticks, settings),
		...paperNeeds(counted, (place) => asTyped(rows[place]!, 'paper'), settings),
		...supplyNeeds(counted, settings),
	].map(lineOf);
	const priced = lines.flatMap(({ cost, taken }) => (cost ? [{ cost, taken }] : []));
	return {
		lines,
		total: priced.reduce((sum, { cost }) => sum + cost, 0),
		unpriced: lines.filter(({ cost, packs }) => cost === undefined && packs > 0),
		...sharesOf(priced, rows, counted),
		unplaced: plans.flatMap(({ board, material, unplaced }) =>
			unplaced.map((each) => ({ ...each, board, ...(material && { material }) })),
		),
		sticks,
		tooLong: sticks.flatMap(({ frame, tooLong }) =>
			tooLong.filter(({ row }) => row > 0).map((leg) => ({ ...leg, frame })),
		),
		unmeasured: unmeasuredRows(counted, rows),
		leftOut,
	};
}

/** Rows whose frame is made from sticks, and of which it is not known how large. */
const unmeasuredRows = (counted: ReadonlyMap<number, RowResult>, rows: readonly Row[]): readonly UnmeasuredRow[] =>
	[...counted].flatMap(([place, result]) => {
		const frame = result.framed.size ? undefined : sawnFrame(result);
		return frame ? [{ row: place + 1, rowId: rows[place]!.id, frame: frame.name }] : [];
	});

/** What a board is called that no row names, in a show that lists none. */
const boardWord = 'mount board';

/** The blanks of what the show lists nothing of. */
function unlistedBlanks(counted: ReadonlyMap<number, RowResult>, rows: readonly Row[], settings: Settings) {
	type Named = Blank & { readonly name: string };
	const found = { board: [] as Named[], glazing: [] as Named[], backing: [] as Named[] };
	for (const [place, result] of counted) {
		const boards = result.hasMount && settings.boards.length === 0 ? partsOf(result, settings) : [];
		const materials = frameParts(result, settings).filter(({ isListed }) => !isListed);
		for (const { board, material, part, width, height } of [...boards, ...materials])
			for (let copy = 1; copy <= result.copies; copy++)
				found[material ?? 'board'].push({
					...{ row: place + 1, rowId: rows[place]!.id, copy, part, width, height },
					name: board || boardWord,
				});
	}
	return found;
}

interface Priced {
	readonly cost: number;
	readonly taken: ReadonlyMap<number, bigint>;
}

/** What each maker pays, and what each row costs. What nobody takes is shared by all that count. */
function sharesOf(priced: readonly Priced[], rows: readonly Row[], counted: ReadonlyMap<number, RowResult>) {
	const places = [...counted.keys()];
	const makers = new Map<string, { readonly maker: string; readonly places: Set<number> }>();
	for (const place of places) {
		const maker = rows[place]!.typed.maker?.trim() ?? '';
		const key = maker.toLowerCase().replace(/\s+/g, ' ');
		const own = makers.get(key) ?? { maker, places: new Set() };
		own.places.add(place);
		makers.set(key, own);
	}
	const groups = [...makers.values()];
	const by = (sets: readonly ReadonlySet<number>[]) =>
		shareOut(
			priced.map(({ cost, taken }) => ({
				cost,
				taken: sets.map((set) => [...set].reduce((sum, place) => sum + (taken.get(place) ?? 0n), 0n)),
			})),
			sets.length,
		);
	const costs = new Map(by(places.map((place) => new Set([place]))).map((cost, at) => [places[at]!, cost]));
	const ofMakers = by(groups.map((group) => group.places));
	return {
		shares: groups.map(({ maker }, at) => ({ maker, cost: ofMakers[at]! })),
		costs: rows.map((_, place) => costs.get(place) ?? 0),
	};
}
