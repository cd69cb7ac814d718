import { fillPages, type PagePart } from '../order/fillPages.ts';
import type { Settings } from '../settings/settings.ts';
import { listRoom, type Paper } from '../values/papers.ts';
import { textLines } from '../values/textLines.ts';
import { type CatalogueLine, heightFirst, joined, lineOnPaper, priceWords, titleWords } from './catalogue.ts';

/** What a page of the catalogue is laid out by, in mm and points; the sheets of styles hold to it. */
export const cataloguePage = {
	...{
		head: 9,
		headPoints: 12,
		headLine: 5.2,
		columnsHead: 6,
		points: 10,
		small: 8.5,
		line: 4.6,
		smallLine: 3.9,
		between: 3,
	},
	/** Columns of the plain list, but for the title's, which has the rest; between two is `gap`. */
	columns: { number: 13, size: 32, edition: 23, price: 27, gap: 4 },
	/** Of the look with pictures: how many beside each other, the most height of a picture, what is between. */
	pictures: { inRow: 3, height: 50, gap: 6 },
} as const;

/** A page of a catalogue: walls with what of them is on it. */
export type CataloguePage<Item> = readonly PagePart<string, Item>[];

/** How high the name of a wall stands over its prints, in mm, on as many lines as it needs. */
const headMm = (name: string, width: number): number => {
	const { head, headPoints, headLine } = cataloguePage;
	return name === '' ? 0 : head + (textLines(`${name}, continued`, headPoints, width) - 1) * headLine;
};

/** Lines by the wall that they hang on, in order; without walls there is one without a name. */
function byWall(lines: readonly CatalogueLine[]): readonly { head: string; own: readonly CatalogueLine[] }[] {
	const walls = [...new Set(lines.map(({ wall }) => wall))];
	return walls.map((wall) => ({
		head: wall === '' && walls.length > 1 ? 'Not on a wall' : wall,
		own: lines.filter((line) => line.wall === wall).map(lineOnPaper),
	}));
}

/** The plain list on pages, each line as high as its longest cell asks. */
export function catalogueListPages(
	lines: readonly CatalogueLine[],
	settings: Settings,
	paper: Paper,
): readonly CataloguePage<CatalogueLine>[] {
	const { columnsHead, points, small, line, smallLine, between, columns } = cataloguePage;
	const { width, height } = listRoom(paper);
	const { number, size, edition, price, gap } = columns;
	const hasPrices = lines.some((each) => priceWords(each) !== '');
	const title = width - number - size - edition - 3 * gap - (hasPrices ? price + gap : 0);
	const mmOf = (each: CatalogueLine): number => {
		const under = joined(each.maker, each.medium);
		const name =
			textLines(titleWords(each), points, title) * line +
			(under === '' ? 0 : textLines(under, small, title) * smallLine);
		const beside = Math.max(
			textLines(each.number, points, number),
			textLines(heightFirst(each.size, settings), points, size),
			textLines(each.edition, points, edition),
			textLines(priceWords(each), points, price),
		);
		return Math.max(name, beside * line) + between;
	};
	const sections = byWall(lines).map(({ head: name, own }) => ({
		head: name,
		headMm: headMm(name, width) + columnsHead,
		items: own.map((item) => ({ item, mm: mmOf(item) })),
	}));
	return fillPages(sections, height);
}

/** Prints that stand beside each other, with the room for their words. */
export interface PictureRow {
	readonly lines: readonly CatalogueLine[];
	/** Height of the tallest picture of them, in mm. */
	readonly pictureMm: number;
	/** Height of the longest words of them, in mm. */
	readonly wordsMm: number;
}

/** What is said under a picture, a paragraph each. */
export const captionOf = (each: CatalogueLine, settings: Settings): readonly string[] =>
	[
		joined(each.maker),
		joined(each.medium, each.size ? `${heightFirst(each.size, settings)} ${settings.unit} (h × w)` : ''),
		joined(each.edition, priceWords(each)),
	].filter((text) => text !== '');

/** The number and title over it. */
export const captionTitle = (each: CatalogueLine): string =>
	[each.number, titleWords(each)].filter((text) => text !== '').join('  ');

/** Width of a picture's column, in mm. */
export const pictureColumn = (paper: Paper): number => {
	const { inRow, gap } = cataloguePage.pictures;
	return (listRoom(paper).width - (inRow - 1) * gap) / inRow;
};

/**
 * The catalogue with pictures on pages, so many prints beside each other, none of them cut.
 * @param heightOf how high the picture of a print is drawn, in mm
 */
export function cataloguePicturePages(
	lines: readonly CatalogueLine[],
	settings: Settings,
	paper: Paper,
	heightOf: (line: CatalogueLine) => number,
): readonly CataloguePage<PictureRow>[] {
	const { small, smallLine, between, pictures } = cataloguePage;
	const { width, height } = listRoom(paper);
	const column = pictureColumn(paper);
	const wordsOf = (each: CatalogueLine): number =>
		[captionTitle(each), ...captionOf(each, settings)].reduce(
			(sum, text) => sum + textLines(text, small, column) * smallLine,
			0,
		);
	const sections = byWall(lines).map(({ head: name, own }) => ({
		head: name,
		headMm: headMm(name, width),
		items: Array.from({ length: Math.ceil(own.length / pictures.inRow) }, (_, at) => {
			const beside = own.slice(at * pictures.inRow, (at + 1) * pictures.inRow);
			const pictureMm = Math.max(...beside.map(heightOf));
			const wordsMm = Math.max(...beside.map(wordsOf));
			return { item: { lines: beside, pictureMm, wordsMm }, mm: pictureMm + wordsMm + 2 * between };
		}),
	}));
	return fillPages(sections, height);
}
