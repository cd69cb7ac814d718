import { formatLength, formatSize, formatWithUnit, type Scale } from '../length/formatLength.ts';
import type { CutSheet } from '../show/cutSheet.ts';
import { pageRoom, type Paper } from '../values/papers.ts';
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

/** A page: sheets cut alike with their drawing, or the words that had no room under it. */
export interface SheetPage {
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
 * @param origin where they come from, in words; nothing where that is plain
 */
export function sheetOnPages(
	sheets: readonly CutSheet[],
	name: string,
	nameOf: NameOfBlank,
	scale: Scale,
	paper: Paper,
	origin = '',
): readonly SheetPage[] {
	const room = pageRoom(paper).height - sheetHeadMm;
	const pages: { words: SheetWords[]; left: number }[] = [
		{ words: [], left: Math.floor((room - sheetDrawingMm) / sheetLineMm) },
	];
	for (const words of wordsOf(sheets, nameOf, scale, origin)) {
		if (words.lines > pages.at(-1)!.left) pages.push({ words: [], left: Math.floor(room / sheetLineMm) });
		pages.at(-1)!.words.push(words);
		pages.at(-1)!.left -= words.lines;
	}
	return pages.map(({ words }, place) => ({ sheets, name, isContinued: place > 0, words }));
}

/** Where the sheets come from; whose the blanks are, by the letters of the drawing where several sheets are cut alike; then the cuts. */
function wordsOf(
	sheets: readonly CutSheet[],
	nameOf: NameOfBlank,
	scale: Scale,
	origin: string,
): readonly SheetWords[] {
	const from = origin === '' ? [] : [{ text: origin, isCut: false, isMade: false }];
	const [{ blanks, cuts, made: madeOnes }] = sheets as [CutSheet];
	const whose = blanks.map((blank, place) => {
		const size = formatSize(blank.width, blank.height, scale);
		const part = blank.part === 'mount' ? '' : `, ${blank.part}`;
		const names = sheets.map((sheet) => nameOf(sheet.blanks[place]!, sheet)).join('; ');
		const letter = sheets.length > 1 ? `${placeLetter(place)}: ` : '';
		return { text: `${letter}${size}${part}: ${names}`, isCut: false, isMade: false };
	});
	const made = cuts.map(({ piece, across, at }, place) => {
		const size = `${formatLength(piece.width, scale)} × ${formatLength(piece.height, scale)}`;
		const edge = across === 'width' ? 'left' : 'top';
		return {
			text: `${place + 1}. ${formatWithUnit(at, scale)} from the ${edge} edge of ${size}`,
			isCut: true,
			isMade: madeOnes.includes(place),
		};
	});
	return [...from, ...whose, ...made].map((words) => ({
		...words,
		lines: Math.ceil(words.text.length / lettersInLine),
	}));
}
