import { unbroken } from '../length/unbroken.ts';
import { formatLength, formatSize, formatWithUnit } from '../length/formatLength.ts';
import { formatMark, formatMarkWithUnit } from '../length/formatMark.ts';
import { type Length, length } from '../length/length.ts';
import { depthWords, legWords, noUndermount } from '../reasons/framedWords.ts';
import { trimWords } from '../reasons/trimWords.ts';
import { boardNamed, type FoundBoard } from '../row/boards.ts';
import { cordToCut } from '../order/supplyNeeds.ts';
import { layHinges } from '../row/layHinges.ts';
import type { OnPaper } from '../row/paper.ts';
import type { PaperPlace } from '../row/paperPlace.ts';
import { shownMargins } from '../row/shownMargins.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { listed } from '../values/listed.ts';
import { listRoom, type Paper } from '../values/papers.ts';
import { shownText } from '../values/shownText.ts';
import { textLines } from '../values/textLines.ts';
import { fixingOf } from '../walls/fixing.ts';
import { fixingWords, type HangingLine, markWords, weightOf } from '../walls/hangingList.ts';
import { cordWords, ifCordWords, ratingWords, ringPlaceWords } from '../walls/holdWords.ts';
import { markedOf } from '../walls/marked.ts';
import { joined } from './catalogue.ts';
import { copiesOf, type CopyMade, type MadeTicks } from './madeOf.ts';

/** A fact of a print, with what it is of. */
export type CardLine = readonly [label: string, text: string];

/** What a print's card says. */
export interface PrintCard {
	/** The place of its row, from 0. */
	readonly place: number;
	readonly maker: string;
	/** Year, medium, edition and number of copies. */
	readonly about: string;
	readonly sizes: readonly CardLine[];
	readonly materials: readonly CardLine[];
	/** How it is put together. */
	readonly fitting: readonly CardLine[];
	/** Where and by what it hangs; none where it hangs on no wall. */
	readonly hanging: readonly CardLine[];
	readonly note: string;
	readonly copies: readonly CopyMade[];
}

/** A show as cards are made from it. */
export interface CardSource {
	readonly row: Row;
	readonly place: number;
	readonly result: WorkedRow;
	readonly settings: Settings;
	readonly ticks: MadeTicks;
	/** Where it hangs; undefined where it hangs on no wall. */
	readonly line: HangingLine | undefined;
}

/** The card of a print: all that whoever makes it has to know of it. */
export function printCard({ row, place, result, settings, ticks, line }: CardSource): PrintCard {
	const text = (column: ColumnName) => shownText(row.typed[column]?.trim() ?? '');
	const copies = result.copies > 1 ? `${result.copies} copies` : '';
	return {
		place,
		maker: text('maker'),
		about: joined(text('year'), text('medium'), text('edition'), copies),
		sizes: sizeLines(result, settings),
		materials: materialLines(result, settings),
		fitting: fittingLines(result, settings),
		hanging: line ? hangingLines(line, settings) : [],
		note: text('note'),
		copies: copiesOf(row, place, result, settings, ticks),
	};
}

/** Lines whose text is there. */
const known = (...lines: readonly (readonly [string, string | undefined])[]): readonly CardLine[] =>
	lines.flatMap(([label, text]) => (text === undefined || text === '' ? [] : [[label, text] as const]));

function sizeLines(result: WorkedRow, settings: Settings): readonly CardLine[] {
	const { solved, hasMount, read, onPaper, framed, frame } = result;
	const n = (value: Length) => formatLength(value, settings);
	const size = (width: Length | undefined, height: Length | undefined) =>
		width === undefined || height === undefined ? undefined : formatSize(width, height, settings);
	const paper = onPaper && size(onPaper.paper.width, onPaper.paper.height);
	const margins = onPaper && marginWords(shownMargins(onPaper, settings), n);
	const isWindowed = hasMount && !read.cells.isFloat;
	const { side, top, bottom, overlapSide, overlapTop, overlapBottom } = solved;
	const borders =
		side === undefined || top === undefined || bottom === undefined
			? undefined
			: `sides ${n(side)}, top ${n(top)}, bottom ${n(bottom)}`;
	const cover = isWindowed ? coverLine(overlapSide, overlapTop, overlapBottom, n) : undefined;
	const { innerMount } = read.cells;
	return known(
		['Picture', size(solved.pictureWidth, solved.pictureHeight)],
		['Paper', paper && (read.cells.paper?.edge === 'deckle' ? `${paper}, deckle edge` : paper)],
		['Margins', margins],
		['Window', isWindowed ? size(solved.windowWidth, solved.windowHeight) : undefined],
		['Mount', hasMount ? size(solved.mountWidth, solved.mountHeight) : 'none'],
		['Borders', hasMount ? borders : undefined],
		...(cover ? [cover] : []),
		['Inner mount shows', isWindowed && innerMount ? formatWithUnit(innerMount, settings) : undefined],
		['Framed', frame.frame && framed.size ? size(framed.size.width, framed.size.height) : undefined],
		['Legs', legWords(result, settings)],
		['Weight', weightOf(framed) || undefined],
	);
}

/** The four margins of a paper, said once where they are the same. */
function marginWords({ left, right, top, bottom }: OnPaper, n: (value: Length) => string): string {
	const beside = left === right ? `sides ${n(left)}` : `left ${n(left)}, right ${n(right)}`;
	const below = top === bottom ? `top and bottom ${n(top)}` : `top ${n(top)}, bottom ${n(bottom)}`;
	return `${beside}, ${below}`;
}

/** What the mount covers of the picture, or leaves of the paper round it. */
function coverLine(
	side: Length | undefined,
	top: Length | undefined,
	bottom: Length | undefined,
	n: (value: Length) => string,
): CardLine | undefined {
	if (side === undefined || top === undefined || bottom === undefined) return undefined;
	const isReveal = side <= 0 && top <= 0 && bottom <= 0 && side + top + bottom < 0;
	const figure = (value: Length) => n(isReveal ? length(-value) : value);
	const isEven = side === top && top === bottom;
	return [
		isReveal ? 'Reveal' : 'Overlap',
		isEven
			? `${figure(side)} on each side`
			: `sides ${figure(side)}, ${top === bottom ? `top and bottom ${figure(top)}` : `top ${figure(top)}, bottom ${figure(bottom)}`}`,
	];
}

function materialLines(result: WorkedRow, settings: Settings): readonly CardLine[] {
	const { boards, hasMount, read, frame, materials, solved } = result;
	const { isFloat, innerMount, spacer } = read.cells;
	const boardWords = ({ name, board }: Pick<FoundBoard, 'name' | 'board'>) => {
		const thickness = board?.thickness && formatWithUnit(board.thickness, settings);
		return name === '' ? undefined : joined(shownText(name), shownText(board?.colour ?? ''), thickness ?? '');
	};
	const undermount = { name: settings.undermount?.trim() ?? '', board: boardNamed(settings.undermount, settings) };
	const { mountWidth, mountHeight } = solved;
	/** It is cut as large as the mount. */
	const undermountSize =
		mountWidth === undefined || mountHeight === undefined ? '' : formatSize(mountWidth, mountHeight, settings);
	const undermountWords = undermount.name === '' ? undefined : joined(boardWords(undermount) ?? '', undermountSize);
	const { glazing, backing } = materials;
	const named = frame.frame
		? shownText(frame.frame.name)
		: frame.named.missing !== undefined
			? `${shownText(frame.named.missing)} (not in the settings)`
			: 'none';
	const isFramed = named !== 'none';
	const { inside, seat } = frame;
	/** What lies in a frame is cut as large as the mount, the backing so much smaller on each side. */
	const cutTo = (less: number) =>
		inside ? `, ${formatSize(length(inside.width - 2 * less), length(inside.height - 2 * less), settings)}` : '';
	const rebate = seat ? `, rebate ${formatSize(seat.rebate.width, seat.rebate.height, settings)}` : '';
	return known(
		['Board', hasMount ? boardWords(boards.mount) : undefined],
		['Inner board', hasMount && !isFloat && innerMount ? boardWords(boards['inner mount']) : undefined],
		['Undermount', hasMount && !isFloat ? undermountWords : undefined],
		['Frame', named + rebate],
		['Glazing', glazing ? shownText(glazing.name ?? glazing.usual) + cutTo(0) : isFramed ? 'none' : undefined],
		[
			'Backing',
			backing
				? (backing.name === undefined
						? `about ${formatWithUnit(backing.thickness, settings)}`
						: shownText(backing.name)) + cutTo(settings.backingSmaller)
				: isFramed
					? 'none'
					: undefined,
		],
		['Spacer', spacer ? formatWithUnit(spacer, settings) : undefined],
	);
}

/** How it is put together: where the paper is hinged, how deep the stack is, where its rings go and how long its cord is. */
function fittingLines(result: WorkedRow, settings: Settings): readonly CardLine[] {
	const { frame, hinges, place } = result;
	const fixing = fixingOf(result, settings);
	const laid = layHinges(result, settings);
	const hingeWords =
		hinges &&
		joined(
			`${hinges.count}`,
			laid
				? `at ${listed(laid.at.map((at) => formatMark(at, settings)))} ${settings.unit} from the left, seen from the front${noUndermount(result, settings).replace(/^ /, '. ').replace(/\.$/, '')}`
				: '',
		);
	return known(
		['Trim', laid?.trimmed && trimWords(laid.trimmed, settings)],
		['Only for', laid?.place.isPicture ? trimmedPrint(laid.place, settings) : undefined],
		[place?.isPicture ? 'Print lies' : 'Paper lies', place && placeWords(laid?.place ?? place, settings)],
		['Hinges', hingeWords],
		['Depth', frame.frame ? depthWords(result, settings) : undefined],
		['Rings', fixing && ringPlaceWords(result, settings)],
		['Cord', fixing && cordWords(fixing, settings, cordToCut(result, settings))],
	);
}

/** Without a paper hinges and place are those of such a print; on a larger sheet it would hang low. */
const trimmedPrint = ({ paper }: PaperPlace, settings: Settings): string =>
	`a print trimmed to ${formatSize(paper.width, paper.height, settings)}`;

/** Where the paper lies on its undermount, or on the board of a float. */
const placeWords = ({ from }: PaperPlace, settings: Settings): string =>
	`${formatLength(from.left, settings)} from the left, ${formatWithUnit(from.top, settings)} from the top, seen from the front`;

function hangingLines(line: HangingLine, settings: Settings): readonly CardLine[] {
	const { hung, mark, number, hooks, weightKg } = line;
	const { height, left, edge, middle } = markedOf(line, settings);
	const say = (value: Length) => formatMarkWithUnit(value, settings);
	const rating = hooks && ratingWords(weightKg, hooks.fixing, settings);
	return [
		['Wall', `${shownText(hung.wall.name)}, ${number} of ${hung.prints.length} from the left`],
		['Left edge', `${say(edge)} from the wall’s left end`],
		['Middle', `${say(middle)} above the floor`],
		[
			markWords[mark.what].replace(/ above the floor$/, ''),
			`${say(height)} above the floor${hooks ? ifCordWords(hooks.fixing, settings) : ''}, ${say(left)} from the wall’s left end`,
		],
		['Fixing', `${fixingWords(line, settings, formatMarkWithUnit)}${rating ? `. ${rating}` : ''}`],
	];
}

/** What a card is laid out by, in mm; the sheet of styles holds to it. */
export const cardPage = {
	/** The title's type, in points, and its lines. */
	...{ titlePoints: 16, titleLine: 7.5 },
	/** Between the two columns of facts, and the labels in each. */
	...{ gap: 8, label: 24, head: 8, lead: 1.4 },
	/** The drawing has at least this; where the smallest type has no room beside it, the other. */
	...{ drawing: 70, leastDrawing: 36 },
	/**
	 * The list to tick: its head, a line of it, what is free below, for a caution of two lines, how many copies have boxes
	 * beside each other, and how many in two columns.
	 */
	ticks: { head: 13, line: 6.5, below: 3, mostCopies: 25, mostPaired: 6 },
} as const;

/** The sizes of type that a card is tried in, in points, the usual one first. */
const cardPoints = [11, 10.5, 10, 9.5, 9, 8.5] as const;

/** How high the list to tick is, in mm: of few copies its steps stand in two columns. */
export function ticksMm({ copies }: Pick<PrintCard, 'copies'>): number {
	const { head, line, below, mostPaired } = cardPage.ticks;
	const steps = copies[0]?.steps.length ?? 0;
	return head + below + (copies.length > mostPaired ? steps : Math.ceil(steps / 2)) * line;
}

/** The type of cards that are printed together, in points: all have that of the one that needs the smallest. */
export const pointsOfCards = (
	cards: readonly { readonly card: PrintCard; readonly name: string }[],
	paper: Paper,
): number => Math.min(cardPoints[0], ...cards.map(({ card, name }) => pointsOfCard(card, name, paper)));

/**
 * The largest type, in points, in which all of a card has room on its page with a drawing that is still to be read; the
 * smallest of them where none has.
 */
export function pointsOfCard(card: PrintCard, name: string, paper: Paper): number {
	const { width, height } = listRoom(paper);
	const { titlePoints, titleLine, gap, label, head, lead, drawing } = cardPage;
	const column = (width - gap) / 2 - label;
	const has = (points: number): boolean => {
		const line = (points * 25.4 * lead) / 72;
		const lines = (texts: readonly CardLine[]) =>
			texts.length === 0
				? 0
				: head +
					texts.reduce(
						(sum, [of, text]) =>
							sum + Math.max(textLines(of, points, label), textLines(unbroken(text), points, column)),
						0,
					) *
						line;
		const note = card.note === '' ? 0 : head + textLines(card.note, points, (width - gap) / 2) * line;
		const title =
			textLines(name, titlePoints, width) * titleLine +
			[card.maker, card.about].reduce((sum, text) => sum + (text === '' ? 0 : textLines(text, points, width)), 0) *
				line;
		const facts = Math.max(lines(card.sizes) + lines(card.hanging) + note, lines(card.materials) + lines(card.fitting));
		return title + drawing + facts + ticksMm(card) <= height;
	};
	return cardPoints.find(has) ?? cardPoints.at(-1)!;
}
