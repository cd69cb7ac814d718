import Papa from 'papaparse';
import type { BenchPlan } from '../core/bench/benchPlan.ts';
import type { Unit } from '../core/length/reading.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import { isBlankRow } from '../core/show/blankRow.ts';
import { type ColumnName, sharedColumns, hasUnit, kindOf } from '../core/show/columns.ts';
import { formatMoney } from '../core/values/money.ts';
import { ownValue } from '../core/values/ownValue.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/settings/settings.ts';
import { namedSize } from '../core/length/paperSizes.ts';
import type { NamedSize } from '../core/length/size.ts';
import { sizePairs } from '../core/show/splitSize.ts';
import { barenessOf } from '../core/show/bareness.ts';
import { guardCell } from './formulaGuard.ts';
import {
	isSizeName,
	readHeader,
	resultCost,
	resultLengths,
	resultPlaces,
	resultTexts,
	resultWeight,
	saysBuyer,
} from './headers.ts';
import { resultCells, settingsText, stepsOfRow } from './resultTexts.ts';
import { textForSpreadsheet } from './spreadsheetGuard.ts';

/** The rows of a show with all that is worked out from them. */
export interface WorkedOutRows {
	readonly rows: readonly Row[];
	/** In the order of the rows. */
	readonly results: readonly RowResult[];
	readonly bench: BenchPlan;
	readonly settings: Settings;
	/** What a print costs, in whole minor units; undefined where that is not known. Without it costs are left out. */
	readonly costOf?: (row: Row) => number | undefined;
}

/** How a file of rows is written. */
export interface WriteOptions {
	readonly delimiter?: ',' | ';' | '\t' | '|';
	readonly lineEnd?: '\r\n' | '\n' | '\r';
	/** Whether a row that has no print id typed gets its own: then it finds its place again when it is read. */
	readonly hasIds?: boolean;
	/**
	 * Whether it is to be opened in a spreadsheet with a double click: with a byte order mark, and editions, shapes and all
	 * else that would be turned into dates or numbers written as text.
	 */
	readonly isForSpreadsheet?: boolean;
}

/**
 * Writes rows as delimited text, one print a row, blank ones left out: the cells as typed, what was worked out, and the columns of other
 * programs that came with the rows. Who bought a print is left out. Read again in a show of the same unit, each cell has the same text and meaning.
 */
export const writeRows = (show: WorkedOutRows, options: WriteOptions = {}): string =>
	[...writingRows(show, options)].join('');

/** Writes rows as `writeRows` does, in pieces that take little time each; some are blank. */
export function* writingRows(show: WorkedOutRows, options: WriteOptions = {}): Generator<string, void, undefined> {
	const { rows, results, bench, settings } = show;
	// Where nothing has a price there is no column for it.
	const costOf = rows.some((row) => show.costOf?.(row) !== undefined) ? show.costOf : undefined;
	const bareness = barenessIn(settings);
	const units: UnitsOfCells = new Map();
	for (const { name } of sharedColumns) {
		if (!hasUnit(name)) continue;
		const own: (CellUnit | undefined)[] = [];
		for (const row of rows) {
			if (own.length % atATime === 0) yield '';
			own.push(cellUnit(name, row, bareness));
		}
		units.set(name, own);
	}
	const typed: TypedColumn[] = [];
	for (const { name } of sharedColumns) {
		typed.push(typedColumn(name, units, settings, options.hasIds ?? false));
		yield '';
	}
	const extra = [...new Set(rows.flatMap((row) => Object.keys(row.extra ?? {})))].filter((name) => !saysBuyer(name));
	const header = [
		...typed.map((column) => column.header),
		...resultLengths.map(({ name }) => `${name} (${settings.unit})`),
		resultWeight,
		...resultPlaces.map((name) => `${name} (${settings.unit})`),
		...resultTexts,
		...(costOf ? [resultCost] : []),
		...extra.map(extraHeader),
	];
	const stated = settingsText(settings, sizesNamed(rows, settings));
	const newline = options.lineEnd ?? '\r\n';
	const delimiter = options.delimiter ?? ',';
	const asText = options.isForSpreadsheet ? textForSpreadsheet : guardCell;
	const line = (record: readonly string[]) => {
		const cells = record.map((cell) => asText(cell.replaceAll('\0', notInText)));
		return Papa.unparse([cells], { delimiter, newline }) + newline;
	};
	yield (options.isForSpreadsheet ? byteOrderMark : '') + line(header);
	for (const [index, row] of rows.entries()) {
		if (isBlankRow(row)) continue;
		const result = results[index];
		if (result === undefined) throw new RangeError(`row ${index + 1} has no result`);
		yield line([
			...typed.map((column) => column.textOf(row, index)),
			...resultCells(result, stepsOfRow(bench, index), settings, stated),
			...(costOf ? [costText(costOf(row), settings)] : []),
			...extra.map((name) => ownValue(row.extra, name) ?? ''),
		]);
	}
}

const costText = (cost: number | undefined, { currency }: Settings): string =>
	cost === undefined ? '' : formatMoney(cost, currency);

/** By it a spreadsheet knows that a file is in UTF-8. */
const byteOrderMark = '\ufeff';

/** The sizes of the show that rows name: whoever has the rows alone needs them. */
function sizesNamed(rows: readonly Row[], { sizes }: Settings): readonly NamedSize[] {
	if (sizes.length === 0) return [];
	const texts = new Set(rows.flatMap(({ typed }) => Object.values(typed)));
	const names = new Set([...texts].map((text) => namedSize(text, sizes)?.name));
	return sizes.filter(({ name }) => names.has(name));
}

/** A column of others under a name of ours, which a person has kept apart, must not be taken for ours when it is read. */
const extraHeader = (name: string): string =>
	readHeader(name).kind === 'unknown' || isSizeName(name) ? name : `${name} (as it came)`;

/** Stands for the zero character: a file with one is no text. */
const notInText = '\ufffd';

interface TypedColumn {
	readonly header: string;
	readonly textOf: (row: Row, index: number) => string;
}

/** What the cells of each column with a unit hang on, in the order of the rows. */
type UnitsOfCells = Map<ColumnName, readonly (CellUnit | undefined)[]>;

/** How many cells are looked at between two pieces. */
const atATime = 200;

type Bareness = (name: ColumnName, text: string | undefined) => 'number' | 'fraction' | undefined;

/** How bare texts are, each looked at once: in a long show most stand in many rows. */
function barenessIn({ sizes }: Settings): Bareness {
	const known = new Map<string, ReturnType<Bareness>>();
	return (name, text) => {
		if (text === undefined) return undefined;
		const key = `${name} ${text}`;
		if (!known.has(key)) known.set(key, barenessOf(name, text, sizes));
		return known.get(key);
	};
}

function typedColumn(name: ColumnName, units: UnitsOfCells, settings: Settings, hasIds: boolean): TypedColumn {
	if (name === 'print id') return { header: name, textOf: ({ id, typed }) => typed[name] ?? (hasIds ? id : '') };
	const cells = units.get(name);
	if (!cells) return { header: name, textOf: ({ typed }) => typed[name] ?? '' };
	const unit = headerUnit(name, units, settings);
	const textOf = (row: Row, index: number) => {
		const text = row.typed[name] ?? '';
		const spelled = spelledUnit(cells[index], unit, kindOf(name) === 'weight' ? '%' : settings.unit);
		return spelled === undefined ? text : `${text.trim()} ${spelled}`;
	};
	return { header: unit === undefined ? name : `${name} (${unit})`, textOf };
}

/** What a cell's text hangs on. */
interface CellUnit {
	readonly bareness: 'number' | 'fraction';
	/** The cell's own unit; undefined where the show's serves a number, and a fraction is inches by itself. */
	readonly stated: Unit | undefined;
	/** Whether a bare fraction without a unit of its own stands here or in the other length of the size. */
	readonly hasFreeFraction: boolean;
}

/** @returns undefined where the text has all that it needs */
function cellUnit(name: ColumnName, row: Row, barenessOf: Bareness): CellUnit | undefined {
	const bareness = barenessOf(name, row.typed[name]);
	if (bareness === undefined) return undefined;
	const isFreeFraction = (column: ColumnName) =>
		row.units?.[column] === undefined && barenessOf(column, row.typed[column]) === 'fraction';
	const pair: readonly ColumnName[] = sizePairs.find((pair) => pair.some((column) => column === name)) ?? [name];
	const hasFreeFraction = kindOf(name) !== 'weight' && pair.some(isFreeFraction);
	return { bareness, stated: row.units?.[name], hasFreeFraction };
}

/**
 * The unit of a column's header: the show's, unless its cells agree on another, or a fraction that is inches by itself
 * stands in it or in the column of the other lengths, which it would no longer be under millimetres. (Where a fraction
 * that must stay unread stands there too, the column has a unit, and inches are spelled out.)
 */
function headerUnit(name: ColumnName, units: UnitsOfCells, settings: Settings): Unit | undefined {
	const bare = units.get(name)!.filter((cell) => cell !== undefined);
	const unread = bare.find(isUnreadFraction);
	if (unread !== undefined) return unread.stated;
	const pair = sizePairs.find((columns) => columns.some((column) => column === name)) ?? [name];
	const cellsOfPair = pair.flatMap((column) => units.get(column) ?? []);
	const isFree = cellsOfPair.some((cell) => cell?.hasFreeFraction) && !cellsOfPair.some(isUnreadFraction);
	if (isFree && settings.unit !== 'in') return undefined;
	const [first] = bare;
	if (first?.stated !== undefined && bare.every(({ stated }) => stated === first.stated)) return first.stated;
	// A name needs no unit, and a share has another: these headers carry one only for numbers that need it.
	const isPlain = kindOf(name) === 'weight' || (['size', 'mount'].includes(kindOf(name)) && bare.length === 0);
	return isPlain ? undefined : settings.unit;
}

/** Whether a cell is a bare fraction under millimetres or centimetres, which is not read and must stay so. */
const isUnreadFraction = (cell: CellUnit | undefined): boolean =>
	cell?.bareness === 'fraction' && cell.stated !== undefined && cell.stated !== 'in';

/** The unit to spell out in a cell under a header, so that it keeps its meaning; undefined where the text does. */
function spelledUnit(
	cell: CellUnit | undefined,
	header: Unit | undefined,
	byDefault: Unit | '%',
): Unit | '%' | undefined {
	if (cell === undefined) return undefined;
	const { bareness, stated, hasFreeFraction } = cell;
	if (hasFreeFraction && header === undefined) return stated;
	if (hasFreeFraction && stated === undefined) return header === 'in' ? undefined : 'in';
	if (bareness === 'fraction') return stated === 'in' && header !== 'in' ? 'in' : undefined;
	const meant = stated ?? byDefault;
	return meant === (header ?? byDefault) ? undefined : meant;
}
