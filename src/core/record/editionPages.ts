import { fillPages, type PagePart } from '../order/fillPages.ts';
import { shownText } from '../values/shownText.ts';
import { listRoom, type Paper } from '../values/papers.ts';
import { textLines } from '../values/textLines.ts';
import type { RegisteredTitle } from './editionRegister.ts';
import { titleLines } from './registerWords.ts';

/** What a page of the register is laid out by, in mm and points; the sheet of styles holds to it. */
export const editionPage = {
	...{ headPoints: 11, headLine: 5, overHead: 4, points: 10, line: 4.6, between: 1.4 },
} as const;

/** A page of the register: titles, each with its lines. */
export type EditionPage = readonly PagePart<string, string>[];

/** The register on pages, a title after the other; one that goes on over a page has its name there again. */
export function editionPages(register: readonly RegisteredTitle[], paper: Paper): readonly EditionPage[] {
	const { headPoints, headLine, overHead, points, line, between } = editionPage;
	const { width, height } = listRoom(paper);
	const sections = register.map((title) => {
		const head = titleHead(title);
		return {
			head,
			headMm: overHead + textLines(`${head}, continued`, headPoints, width) * headLine,
			items: titleLines(title).map((item) => ({ item, mm: textLines(item, points, width) * line + between })),
		};
	});
	return fillPages(sections, height);
}

const titleHead = ({ title, maker }: RegisteredTitle): string =>
	maker === '' ? shownText(title) : `${shownText(title)}, ${shownText(maker)}`;
