import { pageRoom, type Paper } from '../values/papers.ts';
import type { HangingLine } from '../walls/hangingList.ts';
import { hangingCautions } from '../walls/wallWords.ts';
import { fillPages, type PagePart } from './fillPages.ts';

/** Heights of what stands on a page of the hanging list, in mm; the styles hold to them. */
export const hangPageMm = { head: 14, drawing: 62, line: 14, words: 10 } as const;

/** What stands under the name of a wall: its drawing, a print to hang, or words. */
export type HangPageItem =
	| { readonly kind: 'drawing'; readonly lines: readonly HangingLine[] }
	| { readonly kind: 'line'; readonly line: HangingLine }
	| { readonly kind: 'words'; readonly words: string };

/**
 * The walls with their prints on pages, the cautions first, then what hangs on none.
 * @param measured what there is to know of the figures, said before the cautions
 */
export function hangPages(
	lines: readonly HangingLine[],
	unhung: readonly string[],
	paper: Paper,
	measured: readonly string[] = [],
): readonly (readonly PagePart<string, HangPageItem>[])[] {
	const room = pageRoom(paper).height;
	const walls = [...new Set(lines.map(({ hung }) => hung))].map((hung) => {
		const own = lines.filter((line) => line.hung === hung);
		return {
			head: hung.wall.name,
			headMm: hangPageMm.head,
			items: [
				{ item: { kind: 'drawing', lines: own } as HangPageItem, mm: hangPageMm.drawing },
				...own.map((line) => ({ item: { kind: 'line', line } as HangPageItem, mm: hangPageMm.line })),
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
