import { greatestWall, type Length, zero } from '../length/length.ts';
import { bareName } from '../length/paperSizes.ts';
import type { ReadLength } from '../length/parseLength.ts';
import { parsePixels, shapeOfPixels } from '../length/parsePixels.ts';
import { parseShape } from '../length/parseShape.ts';
import { parseSize, type ReadSize } from '../length/parseSize.ts';
import { parseWeight } from '../length/parseWeight.ts';
import { isProblem, type Reading, type Unit } from '../length/reading.ts';
import { rememberedLength } from '../length/rememberedLength.ts';
import { mountOfFrame, mountOfShow } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import { type ColumnName, kindOf } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { type Cells, hasMount, type MountCell, type PaperCell } from './cells.ts';
import { type NamedFrame, nameFrame } from './namedFrame.ts';
import { readCount } from './readCount.ts';
import { readHangOrder } from './readHangOrder.ts';
import { type MoneyColumn, readMoney, type ReadMoney } from './readMoney.ts';

/** A cell that could not be read: it stays as typed and counts as blank. */
export interface UnreadCell {
	readonly column: ColumnName;
	readonly problem: string;
	/** Texts that can be read and may be what was meant. */
	readonly readings: readonly string[];
}

/** A row's cells, read. */
export interface ReadCells {
	readonly cells: Cells;
	/** How many of it are made: 1 where blank. */
	readonly copies: number;
	readonly money: ReadMoney;
	readonly unread: readonly UnreadCell[];
}

/**
 * Reads the typed cells of a row. A bare number is in the cell's own unit where it has one, else the show's; a bare
 * fraction is inches, and makes the other length of its size inches too.
 */
export function readCells(row: Row, settings: Settings): ReadCells {
	const unread: UnreadCell[] = [];
	const textOf = (column: ColumnName) => row.typed[column]?.trim() ?? '';
	const unitOf = (column: ColumnName): { unit: Unit; isUnitStated: boolean } => {
		const own = row.units?.[column];
		return { unit: own ?? settings.unit, isUnitStated: own !== undefined };
	};
	const note = <Value>(column: ColumnName, reading: Reading<Value>): Value | undefined => {
		if (!isProblem(reading)) return reading.value;
		const { problem, readings = [] } = reading;
		unread.push({ column, problem, readings });
		return undefined;
	};
	const read = <Value>(column: ColumnName, parse: (text: string) => Reading<Value>): Value | undefined => {
		const text = textOf(column);
		return text === '' ? undefined : note(column, parse(text));
	};
	const lengthIn = (column: ColumnName, unit?: Unit) =>
		read(column, (text) =>
			rememberedLength(text, {
				// A unit that the cell has of its own stands before what the other length of its size makes it.
				...(unit && row.units?.[column] === undefined ? { unit } : unitOf(column)),
				allowZero: kindOf(column) === 'space',
				...(column === 'hang left' && { greatest: greatestWall }),
			}),
		);
	const lengthOf = (column: ColumnName): Length | undefined => lengthIn(column)?.length;
	const pair = (width: ColumnName, height: ColumnName): [Length | undefined, Length | undefined] => {
		const makesInches = (read: ReadLength | undefined) => (read?.isBareFraction ? 'in' : undefined);
		const first = lengthIn(width);
		const second = lengthIn(height, makesInches(first));
		const again = makesInches(second) ? lengthIn(width, 'in') : first;
		return [again?.length, second?.length];
	};
	const sizeOf = (column: ColumnName) =>
		read(column, (text) => parseSize(text, { ...unitOf(column), sizes: settings.sizes }));

	const [pictureWidth, pictureHeight] = pair('picture width', 'picture height');
	const paper = paperCell(textOf('paper'), settings, () => sizeOf('paper'));
	const mount = mountCell(textOf('mount'), nameFrame(row, settings), () => sizeOf('mount'));
	const [mountWidth, mountHeight] = pair('mount width', 'mount height');
	const [windowWidth, windowHeight] = pair('window width', 'window height');
	const pixels = read('pixels', parsePixels);
	const shape = read('shape', parseShape);
	const cells: Cells = {
		pictureWidth,
		pictureHeight,
		paper,
		mount,
		mountWidth,
		mountHeight,
		windowWidth,
		windowHeight,
		shape: shape ?? (pixels && shapeOfPixels(pixels)),
		isShapeOfFile: shape === undefined && pixels !== undefined,
		pixels,
		side: lengthOf('side'),
		top: lengthOf('top'),
		bottom: lengthOf('bottom'),
		bottomWeight: read('bottom weight', (text) => parseWeight(text, row.units?.['bottom weight'])),
		overlap: lengthOf('overlap'),
		reveal: lengthOf('reveal'),
		signingSpace: lengthOf('signing space'),
		innerMount: lengthOf('inner mount'),
		spacer: lengthOf('spacer'),
		marginLeft: lengthOf('margin left'),
		marginTop: lengthOf('margin top'),
		hangLeft: lengthOf('hang left'),
		hangCentre: lengthOf('hang centre'),
		drop: lengthOf('drop'),
		isFloat: hasMount({ mount }) && textOf('mounting').toLowerCase() === 'float',
	};
	const { currency } = settings;
	const moneyOf = (column: MoneyColumn) => readMoney(textOf(column), currency);
	// A price may be any text, as people write it into a list: none keeps a print from the bench.
	const money: ReadMoney = { currency, net: moneyOf('net'), price: moneyOf('price'), value: moneyOf('value') };
	for (const column of ['net', 'value'] as const) note(column, money[column]);
	// What it says is in `readHangCells`.
	read('hang order', readHangOrder);
	return {
		cells: cells.isFloat ? { ...cells, ...noWindow } : cells,
		copies: read('copies', readCount) ?? 1,
		money,
		unread: withoutTwice(unread),
	};
}

/** What takes no part in a row without a window. */
const noWindow = {
	windowWidth: undefined,
	windowHeight: undefined,
	overlap: undefined,
	reveal: undefined,
	signingSpace: undefined,
	innerMount: undefined,
} as const satisfies Partial<Cells>;

/** A paper of the show's list by its name, else a sheet by its size. */
function paperCell(text: string, { papers }: Settings, size: () => ReadSize | undefined): PaperCell | undefined {
	const name = bareName(text);
	const paper = name === '' ? undefined : papers.find((each) => bareName(each.name) === name);
	if (paper)
		return {
			width: paper.width,
			height: paper.height,
			roll: paper.roll,
			margin: paper.margin,
			edge: paper.edge ?? 'straight',
			listed: paper.name,
		};
	const read = size();
	return (
		read && {
			width: read.width,
			height: read.height,
			roll: undefined,
			margin: zero,
			edge: 'straight',
			listed: undefined,
			...namedIn(read),
		}
	);
}

function mountCell(text: string, named: NamedFrame, size: () => ReadSize | undefined): MountCell {
	const word = text.toLowerCase();
	if (word === 'fit' || word === 'none') return { kind: word };
	if (word === mountOfFrame || (word === '' && named.by === 'row')) {
		if (named.listed?.size) return { kind: 'size', size: named.listed.size.takes, isOfFrame: true };
		return word === '' ? { kind: 'show' } : { kind: 'show', lacksFrame: true };
	}
	if (word === '' || word === mountOfShow) return { kind: 'show' };
	const read = size();
	if (!read) return { kind: 'show' };
	const { width, height } = read;
	return { kind: 'size', size: { width, height }, ...namedIn(read) };
}

const namedIn = ({ name }: ReadSize): { readonly isNamed?: true } => (name === undefined ? {} : { isNamed: true });

/** A width is read again where its height turns out to be inches; only the second reading counts. */
function withoutTwice(unread: readonly UnreadCell[]): readonly UnreadCell[] {
	return unread.filter(({ column }, i) => !unread.slice(i + 1).some((later) => later.column === column));
}
