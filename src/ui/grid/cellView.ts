import type { Finding, Level } from '../../core/findings/finding.ts';
import { formatExact, formatLength, formatWithUnit, type Scale } from '../../core/length/formatLength.ts';
import { pictureColumn, resolutionColumn, resolutionText } from '../../core/grid/resolutionColumn.ts';
import { framingText, isFramingColumn } from '../../core/grid/framingColumns.ts';
import { type Length, nearestLength } from '../../core/length/length.ts';
import type { Cells, Shape } from '../../core/row/cells.ts';
import { namesInFrame } from '../../core/row/namesInFrame.ts';
import { shapeTextOf } from '../../core/row/shapeText.ts';
import type { Inherited } from '../../core/row/inherited.ts';
import type { RowResult } from '../../core/findings/rowResult.ts';
import type { Price } from '../../core/record/priceOf.ts';
import { priceInShow } from '../../core/record/pricesOf.ts';
import { workedOutText } from '../../core/record/priceWords.ts';
import { asTyped } from '../../core/show/asTyped.ts';
import type { ColumnName } from '../../core/show/columns.ts';
import type { Row } from '../../core/show/row.ts';
import type { BottomWeight } from '../../core/length/bottomWeight.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { Size } from '../../core/length/size.ts';
import { formatMoney } from '../../core/values/money.ts';
import { shownText } from '../../core/values/shownText.ts';
import { columnOfFindingCell, type GridColumn } from './gridColumns.ts';

/** Where the text of a cell comes from: typed here, inherited from the show, worked out, or there is none. */
export type CellState = 'typed' | 'inherited' | 'worked out' | 'blank';

/** What a cell shows. */
export interface CellView {
	readonly text: string;
	readonly state: CellState;
	/** The gravest finding that concerns the cell. */
	readonly level: Level | undefined;
	/** Whether what was typed could not be read. */
	readonly isUnread: boolean;
}

/** What the cells of a row are made from. */
export interface RowSource {
	readonly row: Row;
	readonly result: RowResult;
	/** The bench steps in which its cuts come. */
	readonly steps: readonly number[];
	/** What it costs, in whole minor units; undefined where that is not known. */
	readonly cost?: number | undefined;
	/** Whether something that it takes has no price, so that it costs more. */
	readonly isCostPartial?: boolean | undefined;
	readonly settings: Settings;
	/** In the currency of the prices; left out where that is the show's. */
	readonly moneySettings?: Settings | undefined;
}

/** What each cell of a row shows, in the order of the columns. */
export function cellViews(source: RowSource, columns: readonly GridColumn[]): readonly CellView[] {
	const levels = levelsOf(source.result.findings);
	return columns.map((column) => {
		const { text, state } = textAndState(column, source);
		const isUnread = isUnreadIn(source.result, column);
		const level = column.key === 'number' ? source.result.findings[0]?.level : levels.get(column.key);
		return {
			text: state === 'typed' ? shownText(text) : text,
			state,
			level: column.key === 'findings' ? undefined : level,
			isUnread,
		};
	});
}

/** The gravest level of each column that findings concern. Findings come most serious first. */
function levelsOf(findings: readonly Finding[]): ReadonlyMap<GridColumn['key'], Level> {
	const levels = new Map<GridColumn['key'], Level>();
	for (const { cells, level } of findings)
		for (const cell of cells) {
			const key = columnOfFindingCell(cell);
			if (key !== undefined && !levels.has(key)) levels.set(key, level);
		}
	return levels;
}

/** Whether what is typed in a column could not be read. */
const isUnreadIn = ({ read }: RowResult, { key }: GridColumn): boolean =>
	read.unread.some(({ column }) => column === key);

type TextAndState = Pick<CellView, 'text' | 'state'>;
const blank: TextAndState = { text: '', state: 'blank' };

/** What a cell shows, and where that comes from. */
export function textAndState(column: GridColumn, source: RowSource): TextAndState {
	const { row, result, steps } = source;
	if (column.key === 'steps') return steps.length === 0 ? blank : { text: steps.join(', '), state: 'worked out' };
	if (column.key === 'cost') return costText(source);
	if (column.key === 'findings') return { text: findingWords(result.findings), state: 'worked out' };
	if (column.key === pictureColumn) return blank; // the row draws it
	if (column.key === resolutionColumn) {
		const text = resolutionText(result);
		return text === '' ? blank : { text, state: 'worked out' };
	}
	if (isFramingColumn(column.key)) {
		const text = framingText(column.key, result, source.settings);
		return text === '' ? blank : { text, state: 'worked out' };
	}
	const typed = row.typed[column.key];
	if (typed !== undefined) return { text: shownTyped(column, typed, source), state: 'typed' };
	if (column.key === 'shape' && result.read.cells.isShapeOfFile)
		return { text: shapeWords(result.read.cells.shape!), state: 'worked out' };
	if (column.key === 'price') {
		const text = workedOutText(priceOfSource(source));
		return text === '' ? blank : { text, state: 'worked out' };
	}
	const margin = marginOf(column.key, result);
	if (margin !== undefined) return { text: formatLength(margin, source.settings), state: 'worked out' };
	const place = placeOf(column.key, result);
	if (place !== undefined) return { text: formatLength(place, source.settings), state: 'worked out' };
	if (column.solved === undefined) return inherited(column.key, source);
	const value = result.solved[column.solved];
	return value === undefined ? blank : { text: formatLength(value, source.settings), state: 'worked out' };
}

/** The shape of a file: as people say it, where they do, else as a decimal. */
const shapeWords = ({ numerator, denominator }: Shape): string =>
	Math.max(numerator, denominator) <= greatestSaid
		? `${numerator}:${denominator}`
		: `${Number((numerator / denominator).toFixed(3))}`;
const greatestSaid = 32;

/** What a print costs, in the show's currency. */
const costText = ({ cost, settings }: RowSource): TextAndState =>
	cost === undefined ? blank : { text: formatMoney(cost, settings.currency), state: 'worked out' };

/** What is asked for the print of a row. */
export function priceOfSource({ cost, isCostPartial = false, ...source }: Omit<RowSource, 'steps'>): Price {
	const known = cost === undefined ? undefined : { minorUnits: cost, isPartial: isCostPartial };
	return priceInShow({ ...source, cost: known });
}

/** The margin that the middle of the paper gives; undefined in other columns. */
const marginOf = (key: GridColumn['key'], { onPaper }: RowResult): Length | undefined =>
	key === 'margin left' ? onPaper?.left : key === 'margin top' ? onPaper?.top : undefined;

/** Where a print hangs; undefined in other columns. */
function placeOf(key: GridColumn['key'], { hung }: RowResult): Length | undefined {
	if (key === 'hang left') return hung?.left;
	if (key === 'hang centre') return hung?.centre;
	return key === 'drop' && hung?.hooks ? nearestLength(hung.hooks.fixing.drop) : undefined;
}

/** A typed text as it is shown: a length in the show's unit, everything else, and what cannot be read, as typed. */
function shownTyped(column: GridColumn, text: string, { result, settings }: RowSource): string {
	if (isUnreadIn(result, column)) return text;
	const value = column.solved === undefined ? lengthIn(column.key, result.read.cells) : result.solved[column.solved];
	return value === undefined ? text : formatLength(value, settings);
}

/** The columns that hold one length which is not among the results. */
const cellOf = {
	overlap: 'overlap',
	reveal: 'reveal',
	'signing space': 'signingSpace',
	'inner mount': 'innerMount',
	spacer: 'spacer',
	'margin left': 'marginLeft',
	'margin top': 'marginTop',
	'hang left': 'hangLeft',
	'hang centre': 'hangCentre',
	drop: 'drop',
} as const satisfies Partial<Record<GridColumn['key'], keyof Cells>>;

/** The length typed into such a column; undefined in other columns. */
const lengthIn = (key: GridColumn['key'], cells: Cells): Length | undefined =>
	key in cellOf ? cells[cellOf[key as keyof typeof cellOf]] : undefined;

/** What a blank cell has from the show. */
function inherited(name: ColumnName, { result, settings }: RowSource): TextAndState {
	const text = namesInFrame(result)[name as 'frame'] ?? inheritedText(name, result.inherited, settings);
	return text === undefined ? blank : { text, state: 'inherited' };
}

function inheritedText(name: ColumnName, inherited: Inherited, settings: Settings): string | undefined {
	const { mount, bottomWeight, overlap, reveal } = inherited;
	if (name === 'mount') return mount && sizeText(mount, settings);
	if (name === 'bottom weight') return bottomWeight && weightText(bottomWeight, settings);
	const length = name === 'overlap' ? overlap : name === 'reveal' ? reveal : undefined;
	return length === undefined ? undefined : formatLength(length, settings);
}

/** A size in the show's unit, by its name where the show's list has it. */
export function sizeText(size: Size, settings: Pick<Settings, 'sizes' | 'unit' | 'ruler'>): string {
	const named = settings.sizes.find(({ width, height }) => width === size.width && height === size.height);
	return named?.name ?? `${formatLength(size.width, settings)} × ${formatLength(size.height, settings)}`;
}

/** A bottom weight in words. */
export function weightText(weight: BottomWeight, scale: Scale): string {
	if (weight.kind === 'optical centre') return 'optical centre';
	if (weight.kind === 'length') return formatWithUnit(weight.more, scale);
	if (weight.numerator === 0) return 'none';
	const percent = (100 * weight.numerator) / weight.denominator;
	return `${Math.round(percent * 1000) / 1000} %`;
}

const levelWords: Record<Level, string> = { stop: 'Can’t cut', look: 'Check', note: 'Note' };

/** What a level is called. */
export const levelWord = (level: Level): string => levelWords[level];

function findingWords(findings: readonly Finding[]): string {
	const [first, ...others] = findings;
	if (first === undefined) return '';
	return `${levelWord(first.level)}: ${first.message}${others.length > 0 ? ` (and ${others.length} more)` : ''}`;
}

/** Whether a cell shows anything, typed or worked out. */
export const isFilled = (column: GridColumn, source: RowSource): boolean => textAndState(column, source).text !== '';

/**
 * What a cell shows, in full, for the clipboard: as typed, or worked out to the last unit. An overlap or reveal that is
 * only inherited is left out: pasted back it would be typed, and contradict sizes that have gone to the ruler since.
 */
export function exactText(column: GridColumn, source: RowSource): string {
	const typed = column.column && asTyped(source.row, column.column);
	if (typed) return typed;
	if (column.key === 'overlap' || column.key === 'reveal') return '';
	if (column.key === 'shape') return shapeTextOf(source.row, source.result.read.cells) ?? '';
	if (column.key === 'price') return workedOutText(priceOfSource(source)).replace('about ', '');
	const value = column.solved && source.result.solved[column.solved];
	return value === undefined ? textAndState(column, source).text : formatExact(value, source.settings.unit);
}
