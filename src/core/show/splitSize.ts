import { formatExact } from '../length/formatLength.ts';
import type { Length } from '../length/length.ts';
import { parseLength } from '../length/parseLength.ts';
import { parseSize } from '../length/parseSize.ts';
import { isProblem, type Unit } from '../length/reading.ts';
import type { NamedSize, Size } from '../length/size.ts';
import { tokenize } from '../length/tokens.ts';
import type { ColumnName } from './columns.ts';
import type { CellTexts } from './row.ts';

/** The columns that hold a width and a height side by side. */
export const sizePairs = [
	['picture width', 'picture height'],
	['mount width', 'mount height'],
	['window width', 'window height'],
] as const satisfies readonly (readonly [ColumnName, ColumnName])[];

/**
 * What a text typed into a cell types into the row: two lengths or a size's name in a width or a height cell type both
 * cells of the pair, width first; everything else its own cell, as it stands.
 * @param unit the unit of bare numbers
 * @param sizes the show's own sizes
 */
export function splitSize(column: ColumnName, text: string, unit: Unit, sizes: readonly NamedSize[]): CellTexts {
	const pair = sizePairs.find((columns) => columns.some((name) => name === column));
	if (!pair || !isProblem(parseLength(text, { unit }))) return { [column]: text };
	const size = parseSize(text, { unit, sizes });
	if (isProblem(size)) return { [column]: text };
	const [width, height] = halvesAsTyped(text, unit, size.value) ?? halvesInFull(size.value);
	return { [pair[0]]: width, [pair[1]]: height };
}

/** The two halves of the text, as typed but for a unit that served both; undefined where the text is a name. */
function halvesAsTyped(text: string, unit: Unit, { width, height }: Size): readonly [string, string] | undefined {
	const pieces = tokenize(text);
	const times = pieces.tokens.find(({ kind }) => kind === 'times');
	if (!times) return undefined;
	const halves = [pieces.text.slice(0, times.start).trim(), pieces.text.slice(times.end).trim()] as const;
	const units = ['', ' mm', ' cm', ' m', ' in', ' ft'];
	const first = units.map((shared) => halves[0] + shared).find((half) => isRead(half, unit, width));
	const second = units.map((shared) => halves[1] + shared).find((half) => isRead(half, unit, height));
	if (first === undefined || second === undefined) return undefined;
	return [withInches(first, unit), withInches(second, unit)];
}

const isRead = (text: string, unit: Unit, wanted: Length): boolean => {
	const read = parseLength(text, { unit });
	return !isProblem(read) && read.value.length === wanted;
};

/** Inches said outright: a bare fraction would speak for its neighbour too, whatever is typed there later. */
function withInches(text: string, unit: Unit): string {
	const read = parseLength(text, { unit });
	return !isProblem(read) && read.value.isBareFraction ? `${text} in` : text;
}

/** Both lengths written out, exactly, in whichever of millimetres and inches is shorter. */
function halvesInFull({ width, height }: Size): readonly [string, string] {
	const written = (unit: Unit) =>
		[`${formatExact(width, unit)} ${unit}`, `${formatExact(height, unit)} ${unit}`] as const;
	const [metric, inch] = [written('mm'), written('in')];
	return inch.join('').length < metric.join('').length ? inch : metric;
}
