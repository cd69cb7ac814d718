import { capital } from '../values/capital.ts';
import { judgeRow } from '../findings/judgeRow.ts';
import type { RowResult } from '../findings/rowResult.ts';
import { formatExact, formatLength, formatSize, formatWithUnit, type Scale } from '../length/formatLength.ts';
import { greatestLength, type Length, length } from '../length/length.ts';
import { onRuler } from '../length/ruler.ts';
import { fixedWeight, weightOf } from '../row/border.ts';
import { type Cells, type Shape, sizeKeys } from '../row/cells.ts';
import { coverOf } from '../row/cover.ts';
import { isHeldByPaper } from '../row/heldByPaper.ts';
import { workOut } from '../row/workOut.ts';
import type { Settings } from '../settings/settings.ts';
import type { ColumnName } from '../show/columns.ts';
import type { CellTexts, Row } from '../show/row.ts';
import { withCells } from '../show/withCells.ts';
import { greatestCommonDivisor } from '../values/greatestCommonDivisor.ts';
import type { Advice, AdviceKind } from './advice.ts';
import { exactlyEven } from './exactlyEven.ts';

/** The findings that a row is advised for. */
const troubles = ['uneven', 'adds-up', 'own-size', 'does-not-fit'];

/** Advice for one row, best first, and a sentence where its shape cannot have even borders in its mount. */
export interface RowAdvice {
	readonly advice: readonly Advice[];
	readonly cannotBeEven: string | undefined;
}

/**
 * Advice for a row that is uneven, in conflict, of its own size or does not fit. Each is tried before it is offered: it
 * brings no conflict and no new `stop`, and one that says even leaves no `uneven`.
 */
export function advise(row: Row, result: RowResult, settings: Settings): RowAdvice {
	if (!result.findings.some(({ code }) => troubles.includes(code))) return { advice: [], cannotBeEven: undefined };
	const { cells } = result.read;
	// A row in the wrong unit is first to be read in the right one: advice on its figures would be of no use.
	const isSlipped = result.findings.some(({ code }) => code === 'unit-slip');
	if (!result.hasMount || cells.isFloat || isSlipped) return { advice: [], cannotBeEven: undefined };
	const stops = new Set(result.findings.filter(({ level }) => level === 'stop').map(({ code }) => code));
	const offers: { readonly advice: Advice; readonly looks: number }[] = [];
	for (const draft of draftsOf(row, cells, settings)) {
		const after = judgeRow(withCells(row, draft.change, settings), settings);
		const codes = after.findings.map(({ code }) => code);
		if (!isWhole(after) || !isHeldByPaper(after, settings)) continue;
		if (codes.includes('adds-up') || codes.includes('does-not-fit')) continue;
		if (after.findings.some(({ level, code }) => level === 'stop' && !stops.has(code))) continue;
		if (offers.some(({ advice }) => isSameRow(advice.promised, after))) continue;
		const isEven = !codes.includes('uneven');
		if (draft.mustBeEven && (!isEven || codes.includes('thin-border'))) continue;
		offers.push({
			advice: {
				kind: draft.kind,
				message: `${draft.message(after)}${clearedWords(row, draft.change)}`,
				change: changesOnly(row, draft.change),
				promised: after.solved,
				saysEven: isEven,
			},
			looks: after.findings.filter(({ level }) => level === 'look').length,
		});
	}
	// What comes out even stands first, then what leaves least to look at; else the drafts' own order.
	const advice = offers
		.sort((a, b) => Number(b.advice.saysEven) - Number(a.advice.saysEven) || a.looks - b.looks)
		.map((offer) => offer.advice);
	return { advice, cannotBeEven: whyNotEven(cells, result, settings) };
}

/** Whether a row has all its sizes and borders. */
const isWhole = ({ solved }: RowResult) => sizeKeys.every((key) => solved[key] !== undefined);

/** Which typed cells applying it clears, for nobody should apply it unawares. */
function clearedWords({ typed }: Row, change: CellTexts): string {
	const cleared = Object.entries(change).filter(([column, text]) => text === '' && typed[column as ColumnName]?.trim());
	return cleared.length === 0
		? ''
		: ` ${capital(cleared.map(([column]) => column).join(' and '))} will be worked out again.`;
}

/** Without what would leave a cell as it is. */
const changesOnly = ({ typed }: Row, change: CellTexts): CellTexts =>
	Object.fromEntries(Object.entries(change).filter(([column, text]) => text !== (typed[column as ColumnName] ?? '')));

interface Draft {
	readonly kind: AdviceKind;
	readonly change: CellTexts;
	readonly mustBeEven: boolean;
	readonly message: (after: RowResult) => string;
}

const mountCells: CellTexts = { mount: '', 'mount width': '', 'mount height': '' };
const windowCells: CellTexts = { 'window width': '', 'window height': '' };
const borderCells: CellTexts = { side: '', top: '', bottom: '' };
const pictureCells: CellTexts = { 'picture width': '', 'picture height': '' };

function draftsOf(row: Row, cells: Cells, settings: Settings): readonly Draft[] {
	const say = sayer(settings);
	const free: CellTexts = { ...windowCells, ...pictureCells, ...borderCells };
	const shape = shapeOf(cells);
	const shapeText = shape && !cells.shape ? { shape: `${shape.numerator}:${shape.denominator}` } : {};
	/** The cells of a mount that was named or typed on both sides stay: it is what the person has. */
	const isMountGiven =
		cells.mount.kind === 'size' || (cells.mountWidth !== undefined && cells.mountHeight !== undefined);
	const mount = isMountGiven ? {} : mountCells;
	const drafts: Draft[] = [];

	const even = shape && evenPicture(row, cells, { ...free, ...mount, ...shapeText }, shape, settings);
	if (even)
		drafts.push({
			kind: 'even',
			change: { ...free, ...mount, ...even.change },
			mustBeEven: true,
			message: ({ solved }) => `Print it at ${say.picture(solved)} for even borders: ${say.borders(solved)}.`,
		});
	if (shape)
		drafts.push({
			kind: 'largest',
			change: { ...free, ...mount, ...keptBorder(row, cells), ...shapeText },
			mustBeEven: false,
			message: ({ solved }) =>
				`Print it at ${say.picture(solved)}, the largest that keeps your border: ${say.borders(solved)}.`,
		});
	const cropped = croppedPicture(
		row,
		cells,
		{ ...free, ...mount, ...keptBorder(row, cells), ...shapeText },
		shape,
		settings,
	);
	if (cropped)
		drafts.push({
			kind: 'crop',
			change: { ...cropped.change, ...(cells.shape ? {} : { shape: '' }) },
			mustBeEven: false,
			message: ({ solved }) =>
				`Keep the border and crop to ${say.picture(solved)}: ${cropped.words}; ${say.borders(solved)}.`,
		});
	const listed = mostEvenListed(row, { ...free, ...keptPicture(row, cells) }, settings);
	if (listed)
		drafts.push({
			kind: 'listed size',
			change: listed.change,
			mustBeEven: false,
			message: ({ solved }) => `Use the size ${listed.name}: ${say.borders(solved)}, picture ${say.picture(solved)}.`,
		});
	drafts.push({
		kind: 'cut to fit',
		change: { ...free, ...mountCells, ...keptPictureOrShown(row, cells, settings), mount: 'fit' },
		mustBeEven: false,
		message: ({ solved }) =>
			`Cut a mount of ${say.mount(solved)} to fit: ${say.borders(solved)}, picture ${say.picture(solved)}.`,
	});
	return drafts;
}

function sayer(scale: Scale) {
	const size = (width: Length | undefined, height: Length | undefined) =>
		width === undefined || height === undefined ? 'an unknown size' : formatSize(width, height, scale);
	const figure = (value: Length | undefined) => (value === undefined ? '–' : formatLength(value, scale));
	return {
		picture: ({ pictureWidth, pictureHeight }: RowResult['solved']) => size(pictureWidth, pictureHeight),
		mount: ({ mountWidth, mountHeight }: RowResult['solved']) => size(mountWidth, mountHeight),
		borders: ({ side, top, bottom }: RowResult['solved']) =>
			`side ${figure(side)}, top ${figure(top)}, bottom ${bottom === undefined ? '–' : formatWithUnit(bottom, scale)}`,
	};
}

/** The shape of a row: typed, else what its typed picture has. */
function shapeOf({ shape, pictureWidth, pictureHeight }: Cells): Shape | undefined {
	if (shape) return shape;
	if (!pictureWidth || !pictureHeight) return undefined;
	const common = greatestCommonDivisor(pictureWidth, pictureHeight);
	return { numerator: pictureWidth / common, denominator: pictureHeight / common };
}

const keep = (row: Row, ...columns: ColumnName[]): CellTexts =>
	Object.fromEntries(
		columns.flatMap((column) => (row.typed[column] === undefined ? [] : [[column, row.typed[column]]])),
	);

/** The border that the row asks for: its typed side, or its top where no side is typed. */
const keptBorder = (row: Row, cells: Cells): CellTexts =>
	cells.side !== undefined ? keep(row, 'side') : cells.top !== undefined ? keep(row, 'top') : {};

const keptPicture = (row: Row, cells: Cells): CellTexts =>
	cells.pictureWidth !== undefined || cells.pictureHeight !== undefined
		? keep(row, 'picture width', 'picture height')
		: {};

/** The typed picture, else the one that is shown: a mount cut to fit needs one. */
function keptPictureOrShown(row: Row, cells: Cells, settings: Settings): CellTexts {
	if (cells.pictureWidth !== undefined && (cells.pictureHeight !== undefined || cells.shape))
		return keptPicture(row, cells);
	if (cells.pictureHeight !== undefined && cells.shape) return keptPicture(row, cells);
	const plain = withCells(row, { ...windowCells, ...borderCells, ...mountCells }, settings);
	const { pictureWidth, pictureHeight } = workOut(plain, settings).solved;
	if (!pictureWidth || !pictureHeight) return {};
	return typedPicture(pictureWidth, pictureHeight, settings);
}

const typedPicture = (width: Length, height: Length, { unit }: Settings): CellTexts => ({
	'picture width': formatExact(width, unit),
	'picture height': formatExact(height, unit),
});

/** The picture whose borders come out exactly even, where there is one: its width, or both sides where no shape is typed. */
function evenPicture(
	row: Row,
	cells: Cells,
	change: CellTexts,
	shape: Shape,
	settings: Settings,
): { change: CellTexts } | undefined {
	const { read, solution, solved } = workOut(withCells(row, change, settings), settings);
	const { mountWidth, mountHeight } = solved;
	if (!mountWidth || !mountHeight) return undefined;
	const weight = fixedWeight(weightOf(read.cells, settings));
	if (!weight) return undefined;
	const { width, height } = solution.cover;
	const picture = exactlyEven(mountWidth, mountHeight, width.added, height.added, shape, weight);
	if (!picture) return undefined;
	// The side on the ruler, so that the figures that are said are those that are cut.
	const side = onRuler((mountWidth - width.added - picture.width) / 2, settings.ruler);
	const pictureWidth = mountWidth - width.added - 2 * side;
	if (pictureWidth <= 0 || picture.height > greatestLength) return undefined;
	const text = formatExact(length(pictureWidth), settings.unit);
	if (cells.shape) return { change: { 'picture width': text } };
	const pictureHeight = length(Math.round((pictureWidth * shape.denominator) / shape.numerator / 10) * 10);
	return { change: { 'picture width': text, 'picture height': formatExact(pictureHeight, settings.unit) } };
}

/** The border kept on both axes and the picture cropped to what the window then shows. */
function croppedPicture(
	row: Row,
	cells: Cells,
	change: CellTexts,
	shape: Shape | undefined,
	settings: Settings,
): { change: CellTexts; words: string } | undefined {
	if (!shape) return undefined;
	// Without its shape the picture would not say how the mount lies: it lies as it does with it.
	const { mountWidth, mountHeight } = workOut(withCells(row, change, settings), settings).solved;
	if (!mountWidth || !mountHeight) return undefined;
	const lies = {
		shape: '',
		mount: '',
		'mount width': formatExact(mountWidth, settings.unit),
		'mount height': formatExact(mountHeight, settings.unit),
	};
	const { pictureWidth, pictureHeight } = workOut(withCells(row, { ...change, ...lies }, settings), settings).solved;
	if (!pictureWidth || !pictureHeight) return undefined;
	const [is, ratio] = [pictureWidth / pictureHeight, shape.numerator / shape.denominator];
	const lost = is > ratio ? 1 - ratio / is : 1 - is / ratio;
	if (lost < 0.0005 || isEnlarged(cells, pictureWidth, pictureHeight)) return undefined;
	return {
		change: { ...change, ...typedPicture(pictureWidth, pictureHeight, settings) },
		words: `${(100 * lost).toFixed(1)} % of the ${is > ratio ? 'height' : 'width'} is cut off`,
	};
}

/** Whether a picture is larger than the one that the row has typed: that is no crop of it. */
function isEnlarged(cells: Cells, width: Length, height: Length): boolean {
	return width > (cells.pictureWidth ?? width) && height > (cells.pictureHeight ?? height);
}

/** The size of the show's list in which side and top are nearest to each other. */
function mostEvenListed(
	row: Row,
	change: CellTexts,
	settings: Settings,
): { change: CellTexts; name: string } | undefined {
	let best: { change: CellTexts; name: string; difference: number } | undefined;
	for (const { name } of settings.sizes) {
		const tried: CellTexts = { ...change, mount: name, 'mount width': '', 'mount height': '' };
		const { side, top } = workOut(withCells(row, tried, settings), settings).solved;
		if (side === undefined || top === undefined) continue;
		const difference = Math.abs(side - top) / Math.min(side, top);
		if (best === undefined || difference < best.difference) best = { change: tried, name, difference };
	}
	return best;
}

/** Where no picture of the shape has even borders in the mount that is shown. */
function whyNotEven(cells: Cells, { solved }: RowResult, settings: Settings): string | undefined {
	const shape = shapeOf(cells);
	const weight = fixedWeight(weightOf(cells, settings));
	const { mountWidth, mountHeight } = solved;
	if (!shape || !weight || !mountWidth || !mountHeight) return undefined;
	const { width, height } = coverOf({ ...cells, windowWidth: undefined, windowHeight: undefined }, settings);
	if (exactlyEven(mountWidth, mountHeight, width.added, height.added, shape, weight)) return undefined;
	return `A picture of this shape cannot have even borders in a mount of ${formatSize(mountWidth, mountHeight, settings)}.`;
}

function isSameRow(promised: Advice['promised'], { solved }: RowResult): boolean {
	return (Object.keys(promised) as (keyof typeof promised)[]).every((key) => promised[key] === solved[key]);
}
