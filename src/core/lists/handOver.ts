import { formatSize } from '../length/formatLength.ts';
import { fillPages, type PagePart } from '../order/fillPages.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import { moneyWords } from '../values/money.ts';
import { nameKey } from '../values/named.ts';
import { listRoom, type Paper } from '../values/papers.ts';
import { shownText } from '../values/shownText.ts';
import { textLines } from '../values/textLines.ts';
import { joined } from './catalogue.ts';
import { showOrder } from './showOrder.ts';
import { countOf } from '../values/countOf.ts';

/** A print as it is handed over: one copy. */
export interface HandOverLine {
	/** The place of its row, from 0. */
	readonly place: number;
	/** From 1. */
	readonly copy: number;
	readonly number: string;
	readonly title: string;
	/** Edition, which of the copies, and the framed size, a line each. */
	readonly about: readonly string[];
	/** What it is insured for, in words; blank where it says nothing. */
	readonly value: string;
	/** The same in minor units; undefined where it is no amount. */
	readonly amount: number | undefined;
	readonly isSold: boolean;
	readonly isCollected: boolean;
}

/** What one maker hands over, and gets back. */
export interface HandOver {
	/** Blank where the prints name none. */
	readonly maker: string;
	readonly lines: readonly HandOverLine[];
	/** What the values come to that are amounts, in words; undefined where none is. */
	readonly total: string | undefined;
	/** What the prints are called whose value is no amount. */
	readonly unvalued: readonly string[];
}

/** A show as what is handed over follows from it. */
export interface HandOverSource {
	readonly rows: readonly Row[];
	/** In the order of the rows. */
	readonly results: readonly WorkedRow[];
	readonly settings: Settings;
	/** What a print is insured for, in minor units, by its place; undefined where its cell is no amount. */
	readonly valueOf: (place: number) => number | undefined;
	/** What has become of a print: it is sold with all its copies. */
	readonly saleOf: (place: number) => { readonly isSold: boolean; readonly isCollected: boolean };
	/** What a print is called. */
	readonly nameOf: (place: number) => string;
}

/** The prints of a show by their makers, as these first come when one walks past them; each copy by itself. */
export function handOvers({ rows, results, settings, valueOf, saleOf, nameOf }: HandOverSource): readonly HandOver[] {
	const places = showOrder(rows, results, settings).flatMap((each) => each.places);
	const makerOf = (place: number) => rows[place]!.typed.maker?.trim() ?? '';
	return [...groupBy(places, (place) => nameKey(makerOf(place))).values()].map((own) => {
		const lines = own.flatMap((place) => {
			const { copies } = results[place]!;
			return Array.from({ length: copies }, (_, at) => lineOf(place, at + 1));
		});
		const amounts = lines.flatMap(({ amount }) => amount ?? []);
		const unvalued = new Set(lines.filter(({ amount }) => amount === undefined).map(({ place }) => nameOf(place)));
		return {
			maker: shownText(makerOf(own[0]!)),
			lines,
			total:
				amounts.length === 0
					? undefined
					: moneyWords(
							amounts.reduce((sum, amount) => sum + amount, 0),
							settings.currency,
						),
			unvalued: [...unvalued],
		};
	});

	function lineOf(place: number, copy: number): HandOverLine {
		const text = (column: ColumnName) => shownText(rows[place]!.typed[column]?.trim() ?? '');
		const { copies, framed, frame } = results[place]!;
		const size = framed.size && formatSize(framed.size.width, framed.size.height, settings);
		const amount = valueOf(place);
		return {
			...{ place, copy, number: text('number') },
			title: text('title') === '' ? 'Untitled' : text('title'),
			about: [
				joined(text('edition'), copies > 1 ? `copy ${copy} of ${copies}` : ''),
				size === undefined ? 'size not known' : frame.frame ? `framed ${size}` : `unframed ${size}`,
			].filter((words) => words !== ''),
			value: amount === undefined ? text('value') : moneyWords(amount, settings.currency),
			amount,
			...saleOf(place),
		};
	}
}

/** What a page of the list is laid out by, in mm and points; the sheet of styles holds to it. */
export const handOverPage = {
	...{ head: 14, headPoints: 13, headLine: 5.8, points: 10, small: 8.5, line: 4.6, smallLine: 3.9, between: 3 },
	/** A line is at least so high: there is room to write on. */
	leastLine: 17,
	/** Columns but for the two of conditions, which share the rest. */
	columns: { number: 12, title: 54, value: 25, marks: 20, gap: 3 },
	/** What the values come to, and who signs. */
	...{ totals: 8, signatures: 58 },
} as const;

/** A thing on a page of the list. */
export type HandOverItem =
	| { readonly kind: 'line'; readonly line: HandOverLine; readonly mm: number }
	| { readonly kind: 'totals'; readonly words: string; readonly mm: number }
	| { readonly kind: 'signatures' };

/** What the values of a maker's prints come to, in a sentence. */
export function totalWords({ total, unvalued, lines }: HandOver): string {
	const count = countOf(lines.length, 'print');
	if (total === undefined) return `${count}. No value is given.`;
	if (unvalued.length === 0) return `${count}. Total value ${total}.`;
	const more = unvalued.length - mostNamed;
	const names = [...unvalued.slice(0, mostNamed), ...(more > 0 ? [`and ${more} more`] : [])];
	return `${count}. Total value ${total}, without: ${names.join(', ')}.`;
}

/** How many prints without a value are named: the list itself has all of them. */
const mostNamed = 6;

/** The lists on pages, each maker's on pages of its own; those who sign do so at its end. */
export function handOverPages(
	makers: readonly HandOver[],
	paper: Paper,
): readonly (readonly PagePart<string, HandOverItem>[])[] {
	const { head, headPoints, headLine, points, small, line, smallLine } = handOverPage;
	const { between, leastLine, columns, totals, signatures } = handOverPage;
	const { width, height } = listRoom(paper);
	const mmOf = (each: HandOverLine) => {
		const name =
			textLines(each.title, points, columns.title) * line +
			each.about.reduce((sum, words) => sum + textLines(words, small, columns.title) * smallLine, 0);
		const beside =
			Math.max(textLines(each.number, points, columns.number), textLines(each.value, points, columns.value)) * line;
		return Math.max(leastLine, name + between, beside + between);
	};
	return makers.flatMap((maker) => {
		const words = totalWords(maker);
		const items: readonly HandOverItem[] = [
			...maker.lines.map((each): HandOverItem => ({ kind: 'line', line: each, mm: mmOf(each) })),
			{ kind: 'totals', words, mm: totals + (textLines(words, points, width) - 1) * line },
			{ kind: 'signatures' },
		];
		const name = maker.maker === '' ? 'No maker named' : maker.maker;
		const section = {
			head: name,
			headMm: head + (textLines(`${name}, continued`, headPoints, width) - 1) * headLine,
			items: items.map((item) => ({ item, mm: item.kind === 'signatures' ? signatures : item.mm })),
		};
		return fillPages([section], height);
	});
}
