import type { Pixels } from '../length/parsePixels.ts';
import { isBlankRow } from '../show/blankRow.ts';
import type { Row, RowId } from '../show/row.ts';
import { keyOf, nameParts, numberOfRow, withoutEnding, wordsOf } from './nameOfFile.ts';
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
	/** As it is typed, in small letters. */
	readonly typed: string;
	readonly title: readonly string[];
	/** The title alone, and behind the number. */
	readonly keys: readonly [title: string, numbered: string];
	readonly maker: readonly string[];
}

interface Named extends ReturnType<typeof nameParts> {
	readonly file: PictureFile;
	/** What to compare with a row's. */
	readonly key: string;
	readonly plainKey: string;
}

/** How a row may be found by a file's name, the surest way first. */
type Way = readonly [by: FoundBy, is: (row: Candidate, named: Named) => boolean];

const isNumbered = ({ row, number, title }: Candidate, named: Named): boolean =>
	number !== '' &&
	number === named.number &&
	(fileOfRow(row) === undefined || isOtherKind(row, named)) &&
	(title.length === 0 || named.words.length === 0 || title.some((word) => named.words.includes(word)));

/** Whether a row names the file with another ending, as of the original that this one was made of. */
function isOtherKind(row: Row, { file }: Named): boolean {
	const [has, is] = [fileOfRow(row) ?? '', file.name].map((name) => name.trim().normalize('NFC').toLowerCase());
	return has !== is && withoutEnding(has!) === withoutEnding(is!);
}

const ways: readonly Way[] = [
	['picture', ({ row }, { file }) => hashOfRow(row) === file.hash],
	['file name', ({ row }, { file }) => namesFile(row, file.name, file.pixels)],
	['title', ({ typed }, { bare }) => typed !== '' && typed === bare.toLowerCase()],
	['title', ({ number, keys }, { key }) => number !== '' && keys[0] !== '' && keys[1] === key],
	['title', ({ keys }, { key }) => keys[0] !== '' && keys[0] === key],
	// `Study 300dpi` is the print called “Study 300” before it is one called “Study”.
	['title', ({ number, keys }, { plainKey }) => number !== '' && keys[0] !== '' && keys[1] === plainKey],
	['title', ({ keys }, { plainKey }) => keys[0] !== '' && keys[0] === plainKey],
	['title', ({ title, number }, named) => number === named.number && isWithin(title, named.words)],
	['title', ({ title }, { words }) => title.length > 0 && title.join(' ') === words.join(' ')],
	['title', ({ title }, { words }) => isWithin(title, words)],
	['number', isNumbered],
];

/**
 * Finds the rows that picture files belong to: by the picture itself, the file's name, the title or the number in it. Each
 * row gets one file at most and each file one row; where several rows would do, their maker decides, else none is chosen; nor is one where the
 * title says one row and the number another. Rows of one picture, as of prints that were duplicated, all have it.
 */
export function matchPictures(rows: readonly Row[], files: readonly PictureFile[]): readonly MatchedPicture[] {
	const candidates = rows.filter((row) => !isBlankRow(row)).map(candidateOf);
	const first = new Map<string, PictureFile>();
	for (const file of files) if (!first.has(file.hash)) first.set(file.hash, file);
	const open = new Set(first.values());
	const names = new Map(
		[...open].map((file): [PictureFile, Named] => {
			const parts = nameParts(file.name);
			return [file, { file, ...parts, key: keyOf(parts.bare), plainKey: keyOf(parts.plain) }];
		}),
	);
	const found = new Map<PictureFile, { id: RowId; by: FoundBy }>();
	const taken = new Set<RowId>();
	for (const [by, is] of ways) {
		const has = by === 'picture' || by === 'file name';
		const wanted = [...open].map((file) => {
			const named = names.get(file)!;
			const fitting = candidates.filter((row) => !taken.has(row.id) && is(row, named));
			const isOne = has && new Set(fitting.map(({ row }) => hashOfRow(row))).size === 1;
			const ids = has ? fitting.map(({ id }) => id) : byMaker(longest(fitting), named.words);
			return { file, named, ids, isOne: isOne || ids.length === 1 };
		});
		const counts = new Map<RowId, number>();
		for (const { ids, isOne } of wanted) if (isOne) for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
		for (const { file, named, ids, isOne } of wanted) {
			// Two files for one row: neither is the surer one.
			if (!isOne || ids.some((id) => counts.get(id) !== 1)) continue;
			open.delete(file);
			if (by === 'title' && isAnothers(ids[0]!, named)) continue;
			found.set(file, { id: ids[0]!, by });
			for (const id of ids) taken.add(id);
		}
	}
	/** Whether the number in a name is another row's than the one of its title. */
	function isAnothers(id: RowId, named: Named): boolean {
		const numbered = candidates.filter((row) => isNumbered(row, named));
		return numbered.length > 0 && numbered.every((row) => row.id !== id);
	}
	return files.map((file): MatchedPicture => {
		const same = first.get(file.hash)!;
		if (same !== file) return { kind: 'twice', file, as: same.name };
		const row = found.get(file);
		return row ? { kind: 'row', file, ...row } : { kind: 'new', file };
	});
}

function candidateOf(row: Row): Candidate {
	const { number = '', title = '', maker = '' } = row.typed;
	return {
		id: row.id,
		row,
		number: numberOfRow(number),
		typed: title.trim().normalize('NFC').toLowerCase(),
		title: wordsOf(title),
		keys: [keyOf(title), keyOf(`${numberOfRow(number)} ${title}`)],
		maker: wordsOf(maker),
	};
}

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
