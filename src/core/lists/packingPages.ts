import { formatSize } from '../length/formatLength.ts';
import { fillPages, type PagePart } from '../order/fillPages.ts';
import type { PackedBox, PackingPlan } from '../packing/packPrints.ts';
import type { Pair } from '../packing/pairUp.ts';
import { boxesWords, boxWords, packingCautions } from '../packing/packingWords.ts';
import type { Settings } from '../settings/settings.ts';
import { listRoom, type Paper } from '../values/papers.ts';
import { textLines } from '../values/textLines.ts';

/** What a page of the packing list is laid out by, in mm and points; the sheet of styles holds to it. */
export const packingPage = {
	...{ head: 10, columnsHead: 5, points: 10, small: 9, line: 4.6, smallLine: 4.2, between: 2.5 },
	/** Columns, but for the name's, which has the rest. */
	columns: { box: 7, size: 32, weight: 24, gap: 3 },
} as const;

/** A thing on a page of the packing list. */
export type PackingItem =
	| { readonly kind: 'pair'; readonly pair: Pair; readonly names: readonly string[]; readonly mm: number }
	| { readonly kind: 'loose'; readonly name: string; readonly size: string; readonly mm: number }
	| { readonly kind: 'words'; readonly words: string; readonly mm: number };

/** The packing list on pages: what to mind, box by box its pairs, then what comes into no box. */
export function packingPages(
	plan: PackingPlan,
	settings: Settings,
	nameOf: (place: number) => string,
	paper: Paper,
): readonly (readonly PagePart<string, PackingItem>[])[] {
	const { boxes, unmeasured, flat, collected } = plan;
	if (boxes.length + unmeasured.length + flat.length === 0) return [];
	const { head, columnsHead, points, small, line, smallLine, between, columns } = packingPage;
	const { width, height } = listRoom(paper);
	const name = width - columns.box - columns.size - columns.weight - 3 * columns.gap;
	const named = (place: number, copy: number, copies: number) =>
		copies > 1 ? `${nameOf(place)}, copy ${copy} of ${copies}` : nameOf(place);
	const counted = (place: number, copies: number) =>
		copies > 1 ? `${nameOf(place)}, ${copies} copies` : nameOf(place);
	const pairItem = (pair: Pair): PackingItem => {
		const names = pair.map(({ place, copy, copies }) => named(place, copy, copies));
		const lines = names.reduce((sum, text) => sum + textLines(text, points, name), 0);
		return { kind: 'pair', pair, names, mm: lines * line + between };
	};
	const loose = (text: string, size: string): PackingItem => ({
		...{ kind: 'loose', name: text, size },
		mm: textLines(text, points, name) * line + between,
	});
	const words = (text: string): PackingItem => ({
		...{ kind: 'words', words: text },
		mm: textLines(text, small, width) * smallLine + 1,
	});
	const section = (title: string, items: readonly PackingItem[]) => ({
		head: title,
		headMm: head + (items[0]?.kind === 'pair' ? columnsHead : 0),
		items: items.map((item) => ({ item, mm: item.mm })),
	});
	const sum = boxesWords(plan);
	return fillPages(
		[
			section('Before you pack', [...(sum === '' ? [] : [sum]), ...packingCautions].map(words)),
			...boxes.map((box: PackedBox) => section(boxWords(box, settings), box.pairs.map(pairItem))),
			section(
				'Framed, size not known: measure them',
				unmeasured.map(({ place, copies }) => loose(counted(place, copies), '')),
			),
			section(
				'Flat in a folder, without frames',
				flat.map(({ place, copies, size }) =>
					loose(counted(place, copies), size ? formatSize(size.width, size.height, settings) : ''),
				),
			),
			section(
				'Collected, not packed',
				collected.map(({ place, copies }) => loose(counted(place, copies), '')),
			),
		],
		height,
	);
}
