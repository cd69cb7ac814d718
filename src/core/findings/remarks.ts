import { isSame, type Length } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Series } from '../row/edition.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
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
	return [...editionsOf(rows, results).values()].flatMap((edition) => [
		...atTwoSizes(edition, settings),
		...tooManyProofs(edition),
	]);
}

/** The numbered prints of each title of a maker. */
function editionsOf(rows: readonly Row[], results: readonly WorkedRow[]): Map<string, Numbered[]> {
	const editions = new Map<string, Numbered[]>();
	rows.forEach((row, i) => {
		const { edition } = results[i]!.words;
		const key = titleKey(row.typed);
		if (edition?.kind !== 'numbered' || key === undefined) return;
		const numbered = { place: i + 1, row, result: results[i]!, series: edition.series, size: edition.size };
		const others = editions.get(key);
		if (others) others.push(numbered);
		else editions.set(key, [numbered]);
	});
	return editions;
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

function tooManyProofs(edition: readonly Numbered[]): Remark[] {
	const proofs = edition.filter(({ series }) => series === 'AP');
	const size = Math.max(0, ...edition.filter(({ series }) => series === '').map((one) => one.size));
	const count = Math.max(0, ...proofs.map((one) => one.size));
	if (size === 0 || count * mostProofs <= size) return [];
	return [
		{
			code: 'many-proofs',
			message: manyProofs(nameOf(edition), count, size),
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
