import { formatLength, formatSize, formatWithUnit, type Scale } from '../length/formatLength.ts';
import type { CutSheet } from '../show/cutSheet.ts';
import { pageRoom, type Paper } from '../values/papers.ts';
import { type BoardToCut, cutListWords } from './cutList.ts';
import type { NameOfBlank } from './layout.ts';

/** Height of a sheet's heading and of its drawing on paper, with the room under it, in mm; the styles hold to them. */
export const sheetHeadMm = 12;
/** See `sheetHeadMm`. */
export const sheetDrawingMm = 118;
/** Height of a line of words, in mm. */
export const sheetLineMm = 5;

/** Letters that surely go into a line of words: it is broken by the browser, but never into more lines than this makes. */
const lettersInLine = 78;

/** A piece of words under a drawing: whose a blank is, or a cut to be ticked off. */
export interface SheetWords {
	readonly text: string;
	readonly isCut: boolean;
	/** Whether it is a cut that is made. */
	readonly isMade: boolean;
	/** How many lines are kept free for it. */
	readonly lines: number;
}

/** A page: sheets cut alike with their drawing, or words alone: those that had no room under it, or the list of sizes. */
export interface SheetPage {
	/** None on a page of the list of sizes. */
	readonly sheets: readonly CutSheet[];
	/** What the sheets are called: `Sheets 3, 4 and 5 of Chalk`. */
	readonly name: string;
	readonly isContinued: boolean;
	readonly words: readonly SheetWords[];
}

/** The letter by which a drawing of sheets cut alike names a place. */
export const placeLetter = (place: number): string => (place < 26 ? String.fromCharCode(65 + place) : `${place + 1}`);

/**
 * Sheets on pages, each way of cutting on one of its own.
 * @param name what the sheets are called
 * @param before what is said first: where they come from, how they are cut
 */
export function sheetOnPages(
	sheets: readonly CutSheet[],
	name: string,
	nameOf: NameOfBlank,
	scale: Scale,
	paper: Paper,
	before: readonly string[] = [],
): readonly SheetPage[] {
	return onPages(wordsOf(sheets, nameOf, scale, before), sheetDrawingMm, paper).map((words, place) => ({
		sheets,
		name,
		isContinued: place > 0,
		words,
	}));
}

/** Names of one size that go into one piece of words: a piece is never parted, and so must not be longer than a page. */
const namesInPiece = 20;

/** What is still to be cut on pages, by board and size, to be ticked off. @param name what the list is called */
export function cutListOnPages(
	boards: readonly BoardToCut[],
	name: string,
	nameOf: NameOfBlank,
	scale: Scale,
	paper: Paper,
): readonly SheetPage[] {
	const words = boards.flatMap(({ name: board, lines }) =>
		lines.flatMap((line) => {
			const names = line.pieces.map(({ blank, sheet }) => nameOf(blank, sheet));
			const head = `${board === '' ? 'Board' : board}, ${cutListWords(line, scale)}. `;
			return Array.from({ length: Math.ceil(names.length / namesInPiece) }, (_, place) => {
				const some = names.slice(place * namesInPiece, (place + 1) * namesInPiece).join('; ');
				return sheetWords(`${place === 0 ? head : ''}${some}`, place === 0);
			});
		}),
	);
	return words.length === 0
		? []
		: onPages(words, 0, paper).map((each, place) => ({ sheets: [], name, isContinued: place > 0, words: each }));
}

const sheetWords = (text: string, isCut: boolean, isMade = false): SheetWords => ({
	text,
	isCut,
	isMade,
	lines: Math.ceil(text.length / lettersInLine),
});

/** Words on pages, the first of which has a drawing of so many mm above them. */
function onPages(all: readonly SheetWords[], drawingMm: number, paper: Paper): readonly (readonly SheetWords[])[] {
	const room = pageRoom(paper).height - sheetHeadMm;
	const pages: { words: SheetWords[]; left: number }[] = [
		{ words: [], left: Math.floor((room - drawingMm) / sheetLineMm) },
	];
	for (const words of all) {
		if (words.lines > pages.at(-1)!.left) pages.push({ words: [], left: Math.floor(room / sheetLineMm) });
		pages.at(-1)!.words.push(words);
		pages.at(-1)!.left -= words.lines;
	}
	return pages.map(({ words }) => words);
}

/** What is said first; whose the blanks are, by the letters of the drawing where several sheets are cut alike; then the cuts. */
function wordsOf(
	sheets: readonly CutSheet[],
	nameOf: NameOfBlank,
	scale: Scale,
	before: readonly string[],
): readonly SheetWords[] {
	const [{ blanks, cuts, made: madeOnes }] = sheets as [CutSheet];
	const whose = blanks.map((blank, place) => {
		const size = formatSize(blank.width, blank.height, scale);
		const part = blank.part === 'mount' ? '' : `, ${blank.part}`;
		const names = sheets.map((sheet) => nameOf(sheet.blanks[place]!, sheet)).join('; ');
		const letter = sheets.length > 1 ? `${placeLetter(place)}: ` : '';
		return sheetWords(`${letter}${size}${part}: ${names}`, false);
	});
	const made = cuts.map(({ piece, across, at }, place) => {
		const size = `${formatLength(piece.width, scale)} × ${formatLength(piece.height, scale)}`;
		const edge = across === 'width' ? 'left' : 'top';
		const text = `${place + 1}. ${formatWithUnit(at, scale)} from the ${edge} edge of ${size}`;
		return sheetWords(text, true, madeOnes.includes(place));
	});
	return [...before.map((text) => sheetWords(text, false)), ...whose, ...made];
}
