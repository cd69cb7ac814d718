import { type Length, toMm } from '../length/length.ts';
import type { Reading } from '../length/reading.ts';
import type { Stock, StockKind } from '../stock/stock.ts';
import { isRecord, type PlainRecord } from '../values/isRecord.ts';
import type { BlankPart } from './blank.ts';
import type { CutSheet, KnifeCut, PlacedBlank, Rectangle } from './cutSheet.ts';
import { storedLength } from './storedLength.ts';

/** Thrown inside this file where a sheet is damaged; it never leaves it. */
class Damage extends Error {}

/** Cut sheets as a show file has them: lengths in millimetres, the row of a blank by its id, a spare's left out. */
export const cutSheetsJson = (sheets: readonly CutSheet[]): readonly unknown[] =>
	sheets.map(({ id, stock, blanks, cuts, offcuts, made, isSpoilt }) => ({
		id,
		stock: {
			board: stock.board,
			material: stock.material,
			kind: stock.kind,
			...sidesJson(stock),
			trim: toMm(stock.trim),
			grain: stock.grain,
			price: stock.price,
			pack: stock.pack,
			count: stock.count,
		},
		blanks: blanks.map((blank) => ({
			row: blank.rowId,
			copy: blank.copy,
			part: blank.part,
			...placeJson(blank),
			turned: blank.turned,
		})),
		cuts: cuts.map(({ piece, across, at }) => ({ piece: placeJson(piece), across, at: toMm(at) })),
		offcuts: offcuts.map(placeJson),
		made,
		isSpoilt,
	}));

const sidesJson = ({ width, height }: Pick<Rectangle, 'width' | 'height'>) => ({
	width: toMm(width),
	height: toMm(height),
});
const placeJson = (place: Rectangle) => ({ x: toMm(place.x), y: toMm(place.y), ...sidesJson(place) });

/** Reads the cut sheets of a show file. @returns a problem that names the place */
export function readCutSheets(stored: unknown): Reading<readonly CutSheet[]> {
	try {
		const sheets = list(stored, 'cutSheets').map((each, place) => readSheet(each, `cutSheets[${place}]`));
		const ids = sheets.map(({ id }) => id);
		const twice = ids.findIndex((id, place) => ids.indexOf(id) < place);
		return twice < 0 ? { value: sheets } : { problem: `cutSheets[${twice}] is there twice` };
	} catch (cause) {
		if (cause instanceof Damage) return { problem: cause.message };
		throw cause;
	}
}

function readSheet(stored: unknown, key: string): CutSheet {
	const sheet = record(stored, key);
	const cuts = list(sheet['cuts'], `${key}.cuts`).map((cut, place) => readCut(cut, `${key}.cuts[${place}]`));
	const made = list(sheet['made'], `${key}.made`).map((place, at) => whole(place, `${key}.made[${at}]`, 0));
	if (made.some((place) => place >= cuts.length)) throw new Damage(`${key}.made names a cut that is not there`);
	return {
		id: text(sheet['id'], `${key}.id`),
		stock: readStock(sheet['stock'], `${key}.stock`),
		blanks: list(sheet['blanks'], `${key}.blanks`).map((blank, at) => readBlank(blank, `${key}.blanks[${at}]`)),
		cuts,
		offcuts: list(sheet['offcuts'], `${key}.offcuts`).map((each, at) => readPlace(each, `${key}.offcuts[${at}]`)),
		made: [...new Set(made)].sort((a, b) => a - b),
		isSpoilt: sheet['isSpoilt'] === true,
	};
}

const kinds: readonly StockKind[] = ['sheet', 'blank', 'offcut', 'drop-out'];
const parts: readonly BlankPart[] = ['mount', 'inner mount', 'undermount', 'glazing', 'backing'];
const materials = ['glazing', 'backing'] as const;
const sides = ['width', 'height'] as const;

function readStock(stored: unknown, key: string): Stock {
	const stock = record(stored, key);
	const optional = (name: string) => (stock[name] === undefined ? undefined : whole(stock[name], `${key}.${name}`, 0));
	return {
		board: typeof stock['board'] === 'string' ? stock['board'] : '',
		...(stock['material'] !== undefined && { material: word(stock['material'], `${key}.material`, materials) }),
		kind: word(stock['kind'], `${key}.kind`, kinds),
		width: measure(stock['width'], `${key}.width`),
		height: measure(stock['height'], `${key}.height`),
		trim: measure(stock['trim'] ?? 0, `${key}.trim`),
		grain: stock['grain'] === undefined ? undefined : word(stock['grain'], `${key}.grain`, sides),
		price: optional('price'),
		pack: Math.max(1, optional('pack') ?? 1),
		count: optional('count'),
	};
}

/** The place of its row in the show is found by whoever plans; it is not kept. */
function readBlank(stored: unknown, key: string): PlacedBlank {
	const blank = record(stored, key);
	return {
		row: 0,
		rowId: blank['row'] === undefined ? undefined : text(blank['row'], `${key}.row`),
		copy: whole(blank['copy'], `${key}.copy`, 1),
		part: word(blank['part'], `${key}.part`, parts),
		...readPlace(blank, key),
		turned: blank['turned'] === true,
	};
}

function readCut(stored: unknown, key: string): KnifeCut {
	const cut = record(stored, key);
	return {
		piece: readPlace(cut['piece'], `${key}.piece`),
		across: word(cut['across'], `${key}.across`, sides),
		at: measure(cut['at'], `${key}.at`),
	};
}

function readPlace(stored: unknown, key: string): Rectangle {
	const place = record(stored, key);
	return {
		x: measure(place['x'], `${key}.x`),
		y: measure(place['y'], `${key}.y`),
		width: measure(place['width'], `${key}.width`),
		height: measure(place['height'], `${key}.height`),
	};
}

function record(stored: unknown, key: string): PlainRecord {
	if (!isRecord(stored)) throw new Damage(`${key} is not a record`);
	return stored;
}

function list(stored: unknown, key: string): readonly unknown[] {
	if (!Array.isArray(stored)) throw new Damage(`${key} is not a list`);
	return stored;
}

function text(stored: unknown, key: string): string {
	if (typeof stored !== 'string' || stored === '') throw new Damage(`${key} is not a text`);
	return stored;
}

function whole(stored: unknown, key: string, least: number): number {
	if (!Number.isSafeInteger(stored) || (stored as number) < least) throw new Damage(`${key} is not a whole number`);
	return stored as number;
}

function word<Word extends string>(stored: unknown, key: string, words: readonly Word[]): Word {
	const found = words.find((each) => each === stored);
	if (found === undefined) throw new Damage(`${key} is none of: ${words.join(', ')}`);
	return found;
}

function measure(stored: unknown, key: string): Length {
	const read = storedLength(stored);
	if (read === undefined || read < 0) throw new Damage(`${key} is not a length in mm`);
	return read;
}
