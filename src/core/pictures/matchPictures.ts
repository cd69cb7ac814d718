import type { Pixels } from '../length/parsePixels.ts';
import { isBlankRow } from '../show/blankRow.ts';
import type { Row, RowId } from '../show/row.ts';
import { nameParts, wordsOf } from './nameOfFile.ts';
import { fileOfRow, hashOfRow, namesFile } from './picture.ts';

/** A picture file that was read. */
export interface PictureFile {
	readonly name: string;
	/** SHA-256 of its bytes, in hexadecimal. */
	readonly hash: string;
	/** After its orientation. */
	readonly pixels: Pixels;
}

/** How the row of a file was found. */
export type FoundBy = 'picture' | 'file name' | 'title' | 'number' | 'choice';

/** What becomes of a file. */
export type MatchedPicture =
	| { readonly kind: 'row'; readonly file: PictureFile; readonly id: RowId; readonly by: FoundBy }
	| { readonly kind: 'new'; readonly file: PictureFile }
	/** Its bytes came with another file too. */
	| { readonly kind: 'twice'; readonly file: PictureFile; readonly as: string };

interface Candidate {
	readonly id: RowId;
	readonly row: Row;
	readonly number: string;
	readonly title: readonly string[];
	readonly maker: readonly string[];
}

/** How a row may be found by a file's name, the surest way first. */
type Way = readonly [
	by: FoundBy,
	is: (row: Candidate, file: PictureFile, parts: ReturnType<typeof nameParts>) => boolean,
];

const ways: readonly Way[] = [
	['picture', ({ row }, { hash }) => hashOfRow(row) === hash],
	['file name', ({ row }, { name, pixels }) => namesFile(row, name, pixels)],
	['title', ({ title, number }, _, parts) => number === parts.number && isWithin(title, parts.words)],
	['title', ({ title }, _, { words }) => title.length > 0 && title.join(' ') === words.join(' ')],
	['title', ({ title }, _, { words }) => isWithin(title, words)],
	[
		'number',
		({ row, title, number }, _, parts) =>
			number !== '' &&
			number === parts.number &&
			fileOfRow(row) === undefined &&
			(title.length === 0 || parts.words.length === 0 || title.some((word) => parts.words.includes(word))),
	],
];

/**
 * Finds the rows that picture files belong to: by the picture itself, the file's name, the title or the number in it. Each
 * row gets one file at most and each file one row; where several rows would do, their maker decides, else none is chosen.
 */
export function matchPictures(rows: readonly Row[], files: readonly PictureFile[]): readonly MatchedPicture[] {
	const candidates = rows.filter((row) => !isBlankRow(row)).map(candidateOf);
	const first = new Map<string, PictureFile>();
	for (const file of files) if (!first.has(file.hash)) first.set(file.hash, file);
	const open = new Set(first.values());
	const parts = new Map([...open].map((file) => [file, nameParts(file.name)]));
	const found = new Map<PictureFile, { id: RowId; by: FoundBy }>();
	const taken = new Set<RowId>();
	for (const [by, is] of ways) {
		const wanted = [...open].map((file) => {
			const fitting = candidates.filter((row) => !taken.has(row.id) && is(row, file, parts.get(file)!));
			return { file, ids: byMaker(longest(fitting), parts.get(file)!.words) };
		});
		const counts = new Map<RowId, number>();
		for (const { ids } of wanted) if (ids.length === 1) counts.set(ids[0]!, (counts.get(ids[0]!) ?? 0) + 1);
		for (const { file, ids } of wanted) {
			// Two files for one row: neither is the surer one.
			if (ids.length !== 1 || counts.get(ids[0]!) !== 1) continue;
			found.set(file, { id: ids[0]!, by });
			taken.add(ids[0]!);
			open.delete(file);
		}
	}
	return files.map((file): MatchedPicture => {
		const same = first.get(file.hash)!;
		if (same !== file) return { kind: 'twice', file, as: same.name };
		const row = found.get(file);
		return row ? { kind: 'row', file, ...row } : { kind: 'new', file };
	});
}

const candidateOf = (row: Row): Candidate => ({
	id: row.id,
	row,
	number: (row.typed.number ?? '')
		.trim()
		.toLowerCase()
		.replace(/^0+(?=\d)/, ''),
	title: wordsOf(row.typed.title ?? ''),
	maker: wordsOf(row.typed.maker ?? ''),
});

/** Whether words stand together among others, in their order. */
function isWithin(words: readonly string[], others: readonly string[]): boolean {
	if (words.length === 0 || words.join('').length < leastLetters) return false;
	return ` ${others.join(' ')} `.includes(` ${words.join(' ')} `);
}

/** A title of fewer letters is found in too many names. */
const leastLetters = 3;

/** Of rows whose titles are found in one name, those with the longest: `Tide at dusk` before `Tide`. */
function longest(rows: readonly Candidate[]): readonly Candidate[] {
	const most = Math.max(0, ...rows.map(({ title }) => title.length));
	return rows.filter(({ title }) => title.length === most);
}

function byMaker(rows: readonly Candidate[], words: readonly string[]): readonly RowId[] {
	const named = rows.filter(({ maker }) => maker.length > 0 && maker.some((word) => words.includes(word)));
	return (rows.length > 1 && named.length > 0 ? named : rows).map(({ id }) => id);
}
