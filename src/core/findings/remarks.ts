import { isSame, type Length } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Series } from '../row/edition.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import { titleKey } from '../values/titleKey.ts';
import { editionSizes, manyProofs, type NamedEdition } from './words/remarkSentences.ts';

/** Something that only shows across the rows of a show. */
export interface Remark {
	readonly code: 'edition-sizes' | 'many-proofs';
	readonly message: string;
	/** Places of the rows it is about, from 1. */
	readonly rows: readonly number[];
}

/** The share of an edition that artist's proofs may be: 5–10 %, of an edition of 50 at most 5 (cartage.org.lb, prints and editions). */
const mostProofs = 10;

interface Numbered {
	readonly place: number;
	readonly row: Row;
	readonly result: WorkedRow;
	readonly series: Series;
	readonly size: number;
}

/** What is to be said of the editions of a show: one title at two sizes in one edition, and too many artist's proofs. */
export function remarksOf(rows: readonly Row[], results: readonly WorkedRow[], settings: Settings): readonly Remark[] {
	return [...numberedOf(rows, results).values()].flatMap((numbered) => [
		...editionsOf(numbered).flatMap((edition) => atTwoSizes(edition, settings)),
		...tooManyProofs(numbered),
	]);
}

/**
 * The editions of a title: it may well be out in two, a small one of large prints beside a large one of small prints. Its
 * proofs are those of the one edition, or nobody knows of which.
 */
function editionsOf(numbered: readonly Numbered[]): readonly (readonly Numbered[])[] {
	const runs = groupBy(
		numbered.filter(({ series }) => series === '' || series === 'roman'),
		({ series, size }) => `${series} ${size}`,
	);
	return runs.size > 1 ? [...runs.values()] : [numbered];
}

/** The numbered prints of each title of a maker, those left out of which no copy is made. */
function numberedOf(rows: readonly Row[], results: readonly WorkedRow[]): ReadonlyMap<string, Numbered[]> {
	const all = rows.flatMap((row, i): readonly (Numbered & { readonly key: string })[] => {
		const result = results[i]!;
		const { edition } = result.words;
		const key = titleKey(row.typed);
		if (edition?.kind !== 'numbered' || key === undefined || result.copies === 0) return [];
		return [{ key, place: i + 1, row, result, series: edition.series, size: edition.size }];
	});
	return groupBy(all, ({ key }) => key);
}

function nameOf([one]: readonly Numbered[]): NamedEdition {
	const { title, maker } = one!.row.typed;
	return { title: title!, maker };
}

function atTwoSizes(edition: readonly Numbered[], settings: Settings): Remark[] {
	const known = edition.filter(({ result: { solved } }) => solved.pictureWidth && solved.pictureHeight);
	const sizes: Size[] = [];
	for (const { result } of known) {
		const [width, height] = [result.solved.pictureWidth!, result.solved.pictureHeight!];
		if (!sizes.some((size) => isSame(size.width, width) && isSame(size.height, height))) sizes.push({ width, height });
	}
	if (sizes.length < 2) return [];
	return [
		{
			code: 'edition-sizes',
			message: editionSizes(nameOf(edition), sizes, settings),
			rows: known.map(({ place }) => place),
		},
	];
}

function tooManyProofs(numbered: readonly Numbered[]): Remark[] {
	const proofs = numbered.filter(({ series }) => series === 'AP');
	const size = Math.max(0, ...numbered.filter(({ series }) => series === '').map((one) => one.size));
	const count = Math.max(0, ...proofs.map((one) => one.size));
	if (size === 0 || count * mostProofs <= size) return [];
	return [
		{
			code: 'many-proofs',
			message: manyProofs(nameOf(numbered), count, size),
			rows: proofs.map(({ place }) => place),
		},
	];
}

/** How much a show needs: fewer is less to buy, to set and to get wrong. */
export interface Needs {
	/** Different mount sizes, either way round. */
	readonly mountSizes: number;
	/** Different borders: sides, tops and bottoms together. */
	readonly borders: number;
}

/** How many mount sizes and borders the rows need that come out; none for a row without copies. */
export function needsOf(results: readonly WorkedRow[]): Needs {
	const sizes = new Set<string>();
	const borders = new Set<Length>();
	for (const { solved, copies } of results) {
		if (copies === 0) continue;
		const { mountWidth, mountHeight, side, top, bottom } = solved;
		if (mountWidth !== undefined && mountHeight !== undefined)
			sizes.add([mountWidth, mountHeight].sort((a, b) => a - b).join());
		for (const border of [side, top, bottom]) if (border !== undefined) borders.add(border);
	}
	return { mountSizes: sizes.size, borders: borders.size };
}
