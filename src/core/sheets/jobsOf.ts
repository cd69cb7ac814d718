import type { RowResult } from '../findings/rowResult.ts';
import { frameParts, type Part, partsOf } from '../row/partsOf.ts';
import type { FrameMaterial } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { Blank } from '../show/blank.ts';
import type { Row, RowId } from '../show/row.ts';
import type { Tick } from '../show/tick.ts';
import { type Stock, stockKey } from '../stock/stock.ts';
import { stockOf, stockOfMaterial } from '../stock/stockOf.ts';
import { finish } from '../values/finish.ts';
import type { Layout } from './layout.ts';
import { counted, dropOutsOf, offcutsOf } from './leftOvers.ts';
import type { PackingJob } from './packingJob.ts';
import { sparesOf } from './spares.ts';

/** A row of which nothing is cut: it has a `stop`, or the size of its mount is not known yet. */
export interface LeftOutRow {
	/** Place of the row in the show, from 1. */
	readonly row: number;
	readonly rowId: RowId;
	readonly reason: 'stop' | 'no-size';
}

/** What is to be cut for a show. */
export interface ShowJobs {
	/** One for each board, in the order in which the rows name them. */
	readonly jobs: readonly PackingJob[];
	readonly leftOut: readonly LeftOutRow[];
}

/** What else there is to cut from, and what has been cut already. */
export interface JobOptions {
	/** Sheets that are cut: they stay as they are, the rest is planned round them, and their offcuts are stock. */
	readonly cutSheets?: readonly Layout[];
	/** The show's ticks: each board that was spoilt at the bench wants another blank, or takes a spare that is cut. */
	readonly ticks?: readonly Tick[];
}

/**
 * The blanks of a show by board, with spares, and the stock that they are cut from; then glazing and backing, without
 * spares, where the show lists what they are cut from. Rows with a `stop`, and rows whose mount has no size yet, are left
 * out and listed; rows without a mount (`none`) want no board, and rows of no copies nothing.
 */
export const jobsOf = (...show: Parameters<typeof listingJobs>): ShowJobs => finish(listingJobs(...show));

/** The same in steps, each of them short. */
export function* listingJobs(
	rows: readonly Row[],
	results: readonly RowResult[],
	settings: Settings,
	{ cutSheets = [], ticks = [] }: JobOptions = {},
): Generator<void, ShowJobs> {
	const leftOut: LeftOutRow[] = [];
	const wanted = new Map<string, Wanted>();
	for (const [index, row] of rows.entries()) {
		yield;
		const result = results[index];
		if (result === undefined || result.copies === 0) continue;
		const isSized = result.frame.inside !== undefined;
		if (!result.hasMount && !result.materials.glazing && !result.materials.backing) continue;
		if (result.isStopped || !isSized) {
			leftOut.push({ row: index + 1, rowId: row.id, reason: result.isStopped ? 'stop' : 'no-size' });
			continue;
		}
		const ofFrame = frameParts(result, settings).filter(({ isListed }) => isListed);
		const parts: readonly Part[] = [...(result.hasMount ? partsOf(result, settings) : []), ...ofFrame];
		for (const { board, material, part, width, height } of parts) {
			const key = stockKey({ board, ...(material && { material }) });
			const entry = wanted.get(key) ?? { board, material, blanks: [] };
			wanted.set(key, entry);
			for (let copy = 1; copy <= result.copies; copy++)
				entry.blanks.push({ row: index + 1, rowId: row.id, copy, part, width, height });
		}
	}
	const keys = new Set([...wanted.keys(), ...cutSheets.map(({ stock }) => stockKey(stock))]);
	const jobs = [...keys].map((key): PackingJob => {
		const ownSheets = cutSheets.filter(({ stock }) => stockKey(stock) === key).map((sheet) => inShow(sheet, rows));
		const { board, material, blanks } = wanted.get(key) ?? { ...ownSheets[0]!.stock, blanks: [] };
		const spares = material ? [] : sparesOf(blanks, settings.sparesPercent);
		const own = material ? stockOfMaterial(board, material, settings) : stockOf(board, settings);
		const isKept = ({ kind }: Stock) => kind === 'offcut';
		const stock = [
			...own.filter((entry) => !isKept(entry)),
			...counted([...own.filter(isKept), ...offcutsOf(ownSheets)]),
			...(settings.hasDropOuts && !material ? dropOutsOf(blanks, results, own, settings) : []),
		];
		return {
			board,
			...(material && { material }),
			stock,
			blanks: stillToCut(blanks, spares, ownSheets, ticks),
			cutSheets: ownSheets,
		};
	});
	const places = [undefined, 'glazing', 'backing'];
	return { jobs: jobs.toSorted((a, b) => places.indexOf(a.material) - places.indexOf(b.material)), leftOut };
}

/** The blanks that a board is wanted for. */
interface Wanted {
	readonly board: string;
	readonly material: FrameMaterial | undefined;
	readonly blanks: Blank[];
}

/** A sheet that is cut, its blanks with the places that their rows have now; a row that is gone has place 0. */
function inShow(sheet: Layout, rows: readonly Row[]): Layout {
	const places = new Map(rows.map(({ id }, index) => [id, index + 1]));
	const blanks = sheet.blanks.map((blank) => ({
		...blank,
		row: blank.rowId === undefined ? 0 : (places.get(blank.rowId) ?? 0),
	}));
	return { ...sheet, blanks, isCut: true };
}

const nameOf = ({ rowId, copy, part }: Pick<Blank, 'rowId' | 'copy' | 'part'>) => JSON.stringify([rowId, copy, part]);
const sizeOf = ({ width, height }: Pick<Blank, 'width' | 'height'>) =>
	`${Math.max(width, height)} ${Math.min(width, height)}`;

/** What is wanted less what the cut sheets have given in the right size; a spoilt board is wanted once more. */
function stillToCut(
	blanks: readonly Blank[],
	spares: readonly Blank[],
	cutSheets: readonly Layout[],
	ticks: readonly Tick[],
): readonly Blank[] {
	if (cutSheets.length === 0 && !ticks.some(({ side }) => side === 'spoilt')) return [...blanks, ...spares];
	const cut = cutSheets.flatMap((sheet) => sheet.blanks);
	const given = tally(
		cut.filter(({ rowId }) => rowId !== undefined).map((blank) => `${nameOf(blank)} ${sizeOf(blank)}`),
	);
	const sparesCut = tally(cut.filter(({ rowId }) => rowId === undefined).map(sizeOf));
	const sparesForSpoilt = new Map(sparesCut);
	const spoilt = new Map(
		ticks.flatMap((tick) =>
			tick.side === 'spoilt' ? [[nameOf({ ...tick, rowId: tick.row }), tick.times] as const] : [],
		),
	);
	const left = blanks.flatMap((blank) => {
		const own = given.get(`${nameOf(blank)} ${sizeOf(blank)}`) ?? 0;
		let times = 1 + (spoilt.get(nameOf(blank)) ?? 0) - own;
		while (times > 0 && own > 0 && takeOne(sparesForSpoilt, sizeOf(blank))) times--;
		return new Array<Blank>(Math.max(0, times)).fill(blank);
	});
	return [...left, ...spares.filter((spare) => !takeOne(sparesCut, sizeOf(spare)))];
}

function tally(keys: readonly string[]): Map<string, number> {
	const counts = new Map<string, number>();
	for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
	return counts;
}

/** Takes one from a tally; false where none is left. */
function takeOne(counts: Map<string, number>, key: string): boolean {
	const count = counts.get(key) ?? 0;
	if (count > 0) counts.set(key, count - 1);
	return count > 0;
}
