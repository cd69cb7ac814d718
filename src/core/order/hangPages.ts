import type { Settings } from '../settings/settings.ts';
import { listRoom, pageRoom, type Paper } from '../values/papers.ts';
import { textLines, textMm } from '../values/textLines.ts';
import type { HangingLine } from '../walls/hangingList.ts';
import { type LineWords, lineWords } from '../walls/lineWords.ts';
import { hangingCautions } from '../walls/wallWords.ts';
import { fillPages, type PagePart } from './fillPages.ts';

/** Heights of what stands on a page of the hanging list, in mm; the styles hold to them. */
export const hangPageMm = { head: 14, drawing: 62, words: 10 } as const;

/** What the line of a print is laid out by: type in points, each line and what is free in mm; the styles hold to it. */
export const hangLine = { points: 10, small: 8.5, line: 4.2, indent: 12, between: 3, free: 3 } as const;

/** What stands under the name of a wall: its drawing, a print to hang, or words. */
export type HangPageItem =
	| { readonly kind: 'drawing'; readonly lines: readonly HangingLine[] }
	| { readonly kind: 'line'; readonly line: HangingLine; readonly words: LineWords; readonly mm: number }
	| { readonly kind: 'words'; readonly words: string };

/** How high the line of a print is: nothing of it that is measured or held is cut off, however long it is. */
function lineMm({ sum, place, hold }: LineWords, paper: Paper): number {
	const { points, small, line, indent, between, free } = hangLine;
	const room = pageRoom(paper).width - indent;
	const isBeside = sum !== undefined && textMm(sum, points) + between + textMm(place, small) <= room;
	const first = textLines(place, small, room) + (sum === undefined || isBeside ? 0 : textLines(sum, points, room));
	return (1 + first + textLines(hold, small, room)) * line + free;
}

/**
 * The walls with their prints on pages, the cautions first, then what hangs on none.
 * @param measured what there is to know of the figures, said before the cautions
 */
export function hangPages(
	lines: readonly HangingLine[],
	unhung: readonly string[],
	settings: Settings,
	paper: Paper,
	measured: readonly string[] = [],
): readonly (readonly PagePart<string, HangPageItem>[])[] {
	const room = listRoom(paper).height;
	const walls = [...new Set(lines.map(({ hung }) => hung))].map((hung) => {
		const own = lines.filter((line) => line.hung === hung);
		const drawing: HangPageItem = { kind: 'drawing', lines: own };
		return {
			head: hung.wall.name,
			headMm: hangPageMm.head,
			items: [
				{ item: drawing, mm: hangPageMm.drawing },
				...own.map((line) => {
					const words = lineWords(line, settings);
					const mm = lineMm(words, paper);
					const item: HangPageItem = { kind: 'line', line, words, mm };
					return { item, mm };
				}),
			],
		};
	});
	const words = (head: string, texts: readonly string[]) => ({
		head,
		headMm: hangPageMm.head,
		items: texts.map((text) => ({ item: { kind: 'words', words: text } as HangPageItem, mm: hangPageMm.words })),
	});
	if (lines.length === 0) return [];
	return fillPages(
		[words('Before you hang', [...measured, ...hangingCautions]), ...walls, words('Hangs on no wall', unhung)],
		room,
	);
}
