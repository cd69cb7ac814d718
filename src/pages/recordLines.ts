import { formatLength, formatSize, formatWithUnit } from '../core/length/formatLength.ts';
import { type Length, length, toMm } from '../core/length/length.ts';
import { readSettings } from '../core/settings/readSettings.ts';
import type { Board, Glazing, Offcut } from '../core/settings/board.ts';
import type { Frame } from '../core/settings/frame.ts';
import type { Paper } from '../core/settings/paper.ts';
import type { Settings } from '../core/settings/settings.ts';
import { suppliesByLength, type Supply } from '../core/settings/supply.ts';
import { boardColour, cssColour } from '../core/values/boardColour.ts';
import { countOf } from '../core/values/countOf.ts';
import { moneyWords } from '../core/values/money.ts';
import type { RecordLine } from '../ui/form/recordLine.ts';

/** The lists of the settings whose records are shown as lines. */
type RecordList = 'boards' | 'offcuts' | 'glazing' | 'backing' | 'supplies' | 'frames' | 'papers';
type TypedRecord = Readonly<Record<string, unknown>>;

/**
 * What the line of each record says while it is folded: drawn to the scale of its list, named, with its size and price.
 * One that cannot be read says what was typed.
 */
export function recordLines(key: RecordList, records: readonly TypedRecord[], settings: Settings): RecordLine[] {
	const read = records.map((record) => readAlone(key, record, settings));
	const largest = Math.max(0, ...read.flatMap((each) => sidesOf(each)));
	return records.map((record, place) => {
		const each = read[place];
		if (each === undefined) return asTyped(record);
		return { ...wordsOf(key, each, settings), ...swatchOf(key, each, largest, settings) };
	});
}

type Readable = Board | Glazing | Offcut | Supply | Frame | Paper;

function readAlone(key: RecordList, record: TypedRecord, { unit, currency }: Settings): Readable | undefined {
	const typed = { unit, ...(currency && { currency: currency.code }), [key]: [record] };
	return readSettings(typed).settings[key][0];
}

function asTyped(record: TypedRecord): RecordLine {
	const text = (key: string) => (typeof record[key] === 'string' ? record[key] : '');
	const sides = [text('width'), text('height')].filter((side) => side !== '');
	return { name: text('name') || text('board'), more: '', size: sides.join(' × '), price: text('price') };
}

function wordsOf(key: RecordList, each: Readable, settings: Settings): Omit<RecordLine, 'swatch'> {
	const { currency } = settings;
	const pack = packWords(key, each);
	const price = 'price' in each ? moneyWords(each.price, currency) + pack : '';
	const stock =
		'count' in each && key !== 'supplies'
			? key === 'offcuts'
				? countOf(each.count, 'piece')
				: `${each.count} in stock`
			: '';
	const name = 'board' in each ? each.board : each.name;
	const own = 'material' in each ? each.material : 'surface' in each ? each.surface : '';
	const edge = 'edge' in each && each.edge === 'deckle' ? 'deckle edge' : '';
	const ready = 'kind' in each && each.kind === 'blank' ? 'ready cut' : '';
	const kind = key === 'supplies' && 'kind' in each && each.kind !== name ? each.kind : '';
	const colour = 'colour' in each ? each.colour : '';
	const thickness = 'thickness' in each ? formatWithUnit(each.thickness, settings) : '';
	const more = [kind, own, edge, colour, thickness, ready, stock].filter((word) => word !== '');
	return { name, more: more.join(', '), size: sizeOf(key, each, settings), price };
}

/** What a price is for where that is not one piece. Tape and the like are got by length, which is said in metres. */
function packWords(key: RecordList, each: Readable): string {
	if (!('pack' in each)) return '';
	if (key === 'supplies' && 'kind' in each && suppliesByLength.some((kind) => kind === each.kind))
		return ` for ${toMm(length(each.pack)) / 1000} m`;
	return each.pack > 1 ? ` for ${each.pack}` : '';
}

function sizeOf(key: RecordList, each: Readable, settings: Settings): string {
	if ('roll' in each) return `${formatLength(each.width, settings)} × ${formatWithUnit(each.roll, settings)} roll`;
	const [width, height] = sidesOf(each);
	if (width === undefined || height === undefined) return key === 'frames' ? 'made to measure' : '';
	return formatSize(width, height, settings);
}

/** Width and height of what has both: of a frame, what goes in. */
function sidesOf(each: Readable | undefined): readonly Length[] {
	if (each === undefined) return [];
	if ('size' in each) return [each.size.takes.width, each.size.takes.height];
	return 'width' in each && each.height !== undefined ? [each.width, each.height] : [];
}

function swatchOf(key: RecordList, each: Readable, largest: number, settings: Settings): Pick<RecordLine, 'swatch'> {
	const [width, height] = sidesOf(each);
	const isSized = width !== undefined && height !== undefined && largest > 0;
	const size = isSized ? { width: width / largest, height: height / largest } : undefined;
	if (key === 'supplies') return {};
	if (key === 'frames') return { swatch: { kind: 'frame', size } };
	if (key === 'glazing') return { swatch: { kind: 'glass', size } };
	if (key === 'papers') return { swatch: { kind: 'paper', size } };
	const words =
		'board' in each
			? settings.boards.find(({ name }) => name.toLowerCase() === each.board.toLowerCase())?.colour
			: 'colour' in each
				? each.colour
				: undefined;
	const colour = words === undefined ? undefined : boardColour(words);
	return { swatch: { kind: 'card', size, ...(colour && { colour: cssColour(colour) }) } };
}
