import type { RowResult } from '../findings/rowResult.ts';
import type { Edition, Series } from '../row/edition.ts';
import { isSoldStage } from '../row/rowStage.ts';
import type { Row } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import { titleKey } from '../values/titleKey.ts';

/** A print of an edition, as its row has it. */
export interface Numbered {
	readonly number: number;
	/** Of its row in the show, from 0. */
	readonly place: number;
	readonly isSold: boolean;
}

/** Numbers from the first to the last, both included. */
export interface NumberRange {
	readonly first: number;
	readonly last: number;
}

/** What is numbered in one row of figures: `1/25` to `25/25`, or `AP 1/3` to `AP 3/3`. */
export interface Run {
	readonly series: Series;
	/** Undefined for proofs that are not numbered. */
	readonly size: number | undefined;
	/** In the order of their numbers; without a number (proofs), none is here. */
	readonly numbers: readonly Numbered[];
	/** How many prints, each copy one. */
	readonly count: number;
	readonly sold: number;
	/** What of its size is not sold, as far as the show knows; undefined for proofs that are not numbered. */
	readonly left: number | undefined;
	/** The numbers of which the show has no print. */
	readonly missing: readonly NumberRange[];
	/** What clashes in it, in sentences, each with the place of its row. */
	readonly clashes: readonly { readonly place: number; readonly message: string }[];
}

/** Prints that are counted and not numbered. */
export interface Counted {
	readonly count: number;
	readonly sold: number;
}

/** All prints of one title by one maker. */
export interface RegisteredTitle {
	/** As the first of its rows has it. */
	readonly maker: string;
	readonly title: string;
	/** Those of the edition first, then those in Roman numerals, then proofs; in each the smaller first. */
	readonly runs: readonly Run[];
	/** Prints of an open edition. */
	readonly open: Counted;
	/** Prints whose edition says nothing. */
	readonly unnumbered: Counted;
}

const seriesOrder: readonly Series[] = ['', 'roman', 'AP', 'HC', 'PP', 'BAT'];

/** A row with what is read of it. */
interface Print {
	readonly row: Row;
	readonly place: number;
	readonly result: RowResult;
	readonly edition: Edition | undefined;
}

/**
 * The edition register: for each maker and title what is numbered, sold, left, and which proofs there are. A title of
 * which no row says an edition is not in it; neither is a row without a title, or of which no copy is made. As
 * `edition-clash` has it, `3/25` and `3/30` are of two editions of one title.
 * @param results in the order of the rows
 */
export function editionRegister(rows: readonly Row[], results: readonly RowResult[]): readonly RegisteredTitle[] {
	const prints = rows.flatMap((row, place): Print | readonly [] => {
		const result = results[place]!;
		const isThere = result.copies > 0 && titleKey(row.typed) !== undefined;
		return isThere ? { row, place, result, edition: result.words.edition } : [];
	});
	const titles = groupBy(prints, ({ row }) => titleKey(row.typed));
	return [...titles.values()].filter((own) => own.some(({ edition }) => edition)).map(registered);
}

function registered(prints: readonly Print[]): RegisteredTitle {
	const { typed } = prints[0]!.row;
	const inRuns = prints.filter(({ edition }) => edition !== undefined && edition.kind !== 'open');
	const runs = [...groupBy(inRuns, ({ edition }) => runKey(edition!)).values()].map(runOf);
	return {
		maker: typed.maker?.trim() ?? '',
		title: typed.title!.trim(),
		runs: runs.toSorted(
			(a, b) => seriesOrder.indexOf(a.series) - seriesOrder.indexOf(b.series) || (a.size ?? 0) - (b.size ?? 0),
		),
		open: countOf(prints.filter(({ edition }) => edition?.kind === 'open')),
		unnumbered: countOf(prints.filter(({ edition }) => edition === undefined)),
	};
}

const runKey = (edition: Edition): string =>
	edition.kind === 'open' ? 'open' : `${edition.series} ${edition.kind === 'numbered' ? edition.size : ''}`;

const isSold = ({ result }: Print): boolean => isSoldStage(result.words.stage);

function countOf(prints: readonly Print[]): Counted {
	const copies = (own: readonly Print[]) => own.reduce((sum, { result }) => sum + result.read.copies, 0);
	return { count: copies(prints), sold: copies(prints.filter(isSold)) };
}

function runOf(prints: readonly Print[]): Run {
	const edition = prints[0]!.edition!;
	const size = edition.kind === 'numbered' ? edition.size : undefined;
	const numbers = prints
		.flatMap((print): Numbered | readonly [] =>
			print.edition?.kind === 'numbered'
				? { number: print.edition.number, place: print.place, isSold: isSold(print) }
				: [],
		)
		.toSorted((a, b) => a.number - b.number || a.place - b.place);
	const { count, sold } = countOf(prints);
	return {
		series: edition.kind === 'open' ? '' : edition.series,
		...{ size, numbers, count, sold },
		left: size === undefined ? undefined : Math.max(0, size - sold),
		missing: size === undefined ? [] : missingOf(numbers, size),
		clashes: prints.flatMap(({ place, result }) =>
			result.findings.filter(({ code }) => code === 'edition-clash').map(({ message }) => ({ place, message })),
		),
	};
}

/** The numbers from 1 to the size that are not there. */
function missingOf(numbers: readonly Numbered[], size: number): readonly NumberRange[] {
	const missing: NumberRange[] = [];
	let next = 1;
	for (const { number } of numbers) {
		if (number > size) break;
		if (number > next) missing.push({ first: next, last: number - 1 });
		next = Math.max(next, number + 1);
	}
	return next <= size ? [...missing, { first: next, last: size }] : missing;
}
