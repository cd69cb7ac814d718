import { pictureColumn, resolutionColumn } from './resolutionColumn.ts';
import { pixelsAnInchOf } from '../row/resolution.ts';
import { framingValue, isFramingColumn } from './framingColumns.ts';
import type { Level } from '../findings/finding.ts';
import type { RowResult } from '../findings/rowResult.ts';
import { mm } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import { amountOf, type CostOfRow } from '../record/priceOf.ts';
import { priceInShow } from '../record/pricesOf.ts';
import type { Cells } from '../row/cells.ts';
import { sizeKeyOf } from '../row/columnOfSize.ts';
import type { Inherited } from '../row/inherited.ts';
import { namesInFrame } from '../row/namesInFrame.ts';
import { amountIn, type MoneyColumn } from '../row/readMoney.ts';
import type { OnPaper } from '../row/paper.ts';
import type { SolvedRow } from '../row/solvedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { kindOf } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import type { ViewColumn } from './columnView.ts';
import type { SortKey } from './sortRows.ts';

/** A row with all that a column may show of it. */
export interface SortSource {
	readonly row: Row;
	readonly result: RowResult;
	/** The bench steps in which its cuts come, from 1. */
	readonly steps: readonly number[];
	/** What it costs; undefined where that is not known. */
	readonly cost?: CostOfRow | undefined;
	readonly settings: Settings;
	/** In the currency of the prices; left out where that is the show's. */
	readonly moneySettings?: Settings | undefined;
}

const unitsInMicron = mm(0.001);
const gravity: Record<Level, number> = { stop: 0, look: 1, note: 2 };

/**
 * What a row is sorted by in a column: sizes by how large they are, in whatever unit they were typed, shapes by how wide
 * they are, steps by the first, what there is to know by the gravest. What cannot be read is a text.
 */
export function sortKeyOf(
	column: ViewColumn,
	{ row, result, steps, cost, settings, moneySettings }: SortSource,
): SortKey {
	if (column === 'steps') return steps[0];
	if (column === 'cost') return cost?.minorUnits;
	if (column === 'price')
		return amountOf(priceInShow({ row, result, cost, settings, moneySettings })) ?? textKey(row.typed.price);
	if (column === 'findings') return result.findings[0] && gravity[result.findings[0].level];
	if (column === pictureColumn) return row.typed['picture file'] === undefined ? undefined : 0;
	if (column === resolutionColumn) return pixelsAnInchOf(result);
	if (isFramingColumn(column)) return framingValue(column, result);
	const typed = row.typed[column];
	if (result.read.unread.some((cell) => cell.column === column)) return textKey(typed);
	const solved = sizeKeyOf(column);
	if (solved !== undefined) return result.solved[solved] ?? textKey(typed);
	if (column === 'mount') return mountKey(result.solved) ?? textKey(typed);
	if (typed === undefined)
		return (
			marginOf(column, result.onPaper) ??
			placeOf(column, result) ??
			namesInFrame(result)[column as 'frame'] ??
			inherited(column, result.inherited)
		);
	const { cells } = result.read;
	switch (kindOf(column)) {
		case 'space':
		case 'length':
			return spaceOf(column, cells) ?? textKey(typed);
		case 'size':
			return cells.paper
				? sizeKey({ width: cells.paper.width, height: cells.paper.height ?? cells.paper.width })
				: textKey(typed);
		case 'shape':
			return cells.shape ? cells.shape.numerator / cells.shape.denominator : textKey(typed);
		case 'money':
			return amountIn(result.read.money[column as MoneyColumn]) ?? textKey(typed);
		case 'pixels':
			return cells.pixels ? cells.pixels.width * cells.pixels.height : textKey(typed);
		default:
			return textKey(typed);
	}
}

/** By the longer side, then the shorter, to 1 µm: mounts of one size stand together, whichever way they lie. */
const sizeKey = ({ width, height }: Size): number =>
	Math.round(Math.max(width, height) / unitsInMicron) * 2 ** 24 + Math.round(Math.min(width, height) / unitsInMicron);

const mountKey = ({ mountWidth: width, mountHeight: height }: SolvedRow): SortKey =>
	width === undefined || height === undefined ? undefined : sizeKey({ width, height });

/** The margin that the middle of the paper gives. */
const marginOf = (column: ViewColumn, onPaper: OnPaper | undefined): SortKey =>
	({ 'margin left': onPaper?.left, 'margin top': onPaper?.top })[column as 'margin left'];

/** Where it hangs. */
const placeOf = (column: ViewColumn, { hung }: RowResult): SortKey =>
	({ 'hang left': hung?.left, 'hang centre': hung?.centre, drop: hung?.hooks?.fixing.drop })[column as 'drop'];

function spaceOf(column: ViewColumn, cells: Cells): SortKey {
	const { overlap, reveal, signingSpace, innerMount, spacer, marginLeft, marginTop } = cells;
	const { hangLeft, hangCentre, drop } = cells;
	return {
		overlap,
		reveal,
		'signing space': signingSpace,
		'inner mount': innerMount,
		spacer,
		'margin left': marginLeft,
		'margin top': marginTop,
		'hang left': hangLeft,
		'hang centre': hangCentre,
		drop,
	}[column as 'overlap'];
}

const inherited = (column: ViewColumn, { overlap, reveal }: Inherited): SortKey =>
	({ overlap, reveal })[column as 'overlap'];

function textKey(typed = ''): SortKey {
	const text = typed.trim();
	return text === '' ? undefined : text;
}
