import type { Pixels } from '../length/parsePixels.ts';
import { isBlankRow } from '../show/blankRow.ts';
import type { Row, RowId } from '../show/row.ts';
import { finish } from '../values/finish.ts';
import { groupBy } from '../values/groupBy.ts';
import { keyOf, nameParts, numberOfRow, withoutEnding, wordsOf } from './nameOfFile.ts';
import { fileNameKey, fileOfRow, hashOfRow, namesFile } from './picture.ts';

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
	readonly place: number;
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

/**
 * Rows by what a file's name may say of them: of two thousand rows, few are looked at for each of two hundred files. Where
 * a row has nothing of a kind it is not found by it.
 */
function rowsByName(rows: readonly Candidate[]) {
	const by = (said: (row: Candidate) => string | undefined) => {
		const found = groupBy(rows, said);
		return (key: string | undefined): readonly Candidate[] => (key ? (found.get(key) ?? []) : []);
	};
	const titled = by(({ title }) => title.join(' '));
	const mostWords = rows.reduce((most, { title }) => Math.max(most, title.length), 0);
	return {
		hash: by(({ row }) => hashOfRow(row)),
		file: by(({ row }) => fileNameKey(fileOfRow(row) ?? '')),
		typed: by(({ typed }) => typed),
		key: by(({ keys }) => keys[0]),
		numberedKey: by(({ number, keys }) => (number !== '' && keys[0] !== '' ? keys[1] : undefined)),
		titled,
		number: by(({ number }) => number),
		/** Those whose title stands among the words of a name, in its order. */
		within: (words: readonly string[]): readonly Candidate[] => {
			const parts = new Set<string>();
			for (let from = 0; from < words.length; from++)
				for (let to = from + 1; to <= Math.min(words.length, from + mostWords); to++) {
					const part = words.slice(from, to);
					if (part.join('').length >= leastLetters) parts.add(part.join(' '));
				}
			return [...parts].flatMap(titled).sort((a, b) => a.place - b.place);
		},
	};
}

/** How a row may be found by a file's name, the surest way first. */
type Way = readonly [by: FoundBy, rows: (by: ReturnType<typeof rowsByName>, named: Named) => readonly Candidate[]];

const isNumbered = ({ row, title }: Candidate, named: Named): boolean =>
	(fileOfRow(row) === undefined || isOtherKind(row, named)) &&
	(title.length === 0 || named.words.length === 0 || title.some((word) => named.words.includes(word)));

/** Whether a row names the file with another ending, as of the original that this one was made of. */
function isOtherKind(row: Row, { file }: Named): boolean {
	const [has, is] = [fileOfRow(row) ?? '', file.name].map(fileNameKey);
	return has !== is && withoutEnding(has!) === withoutEnding(is!);
}

const numberedRows: Way[1] = (by, named) => by.number(named.number).filter((row) => isNumbered(row, named));

const ways: readonly Way[] = [
	['picture', (by, { file }) => by.hash(file.hash)],
	[
		'file name',
		(by, { file }) => by.file(fileNameKey(file.name)).filter(({ row }) => namesFile(row, file.name, file.pixels)),
	],
	['title', (by, { bare }) => by.typed(bare.toLowerCase())],
	['title', (by, { key }) => by.numberedKey(key)],
	['title', (by, { key }) => by.key(key)],
	// `Study 300dpi` is the print called “Study 300” before it is one called “Study”.
	['title', (by, { plainKey }) => by.numberedKey(plainKey)],
	['title', (by, { plainKey }) => by.key(plainKey)],
	['title', (by, named) => by.within(named.words).filter(({ number }) => number === named.number)],
	['title', (by, { words }) => by.titled(words.join(' '))],
	['title', (by, { words }) => by.within(words)],
	['number', numberedRows],
];

/**
 * Finds the rows that picture files belong to: by the picture itself, the file's name, the title or the number in it. Each
 * row gets one file at most and each file one row; where several rows would do, their maker decides, else none is chosen; nor is one where the
 * title says one row and the number another. Rows of one picture, as of prints that were duplicated, all have it.
 */
export const matchPictures = (rows: readonly Row[], files: readonly PictureFile[]): readonly MatchedPicture[] =>
	finish(matchingPictures(rows, files));

/** The same in steps, each of them short: two hundred files among thousands of rows take a while. */
export function* matchingPictures(
	rows: readonly Row[],
	files: readonly PictureFile[],
): Generator<undefined, readonly MatchedPicture[], undefined> {
	const candidates: Candidate[] = [];
	for (const [place, row] of rows.entries()) {
		if (!isBlankRow(row)) candidates.push(candidateOf(row, place));
		yield;
	}
	const by = rowsByName(candidates);
	const first = new Map<string, PictureFile>();
	for (const file of files) if (!first.has(file.hash)) first.set(file.hash, file);
	const open = new Set(first.values());
	const names = new Map<PictureFile, Named>();
	for (const file of open) {
		const parts = nameParts(file.name);
		names.set(file, { file, ...parts, key: keyOf(parts.bare), plainKey: keyOf(parts.plain) });
		yield;
	}
	const found = new Map<PictureFile, { id: RowId; by: FoundBy }>();
	const taken = new Set<RowId>();
	for (const [way, rowsOf] of ways) {
		const has = way === 'picture' || way === 'file name';
		const wanted: { file: PictureFile; named: Named; ids: readonly RowId[]; isOne: boolean }[] = [];
		for (const file of open) {
			const named = names.get(file)!;
			const fitting = rowsOf(by, named).filter(({ id }) => !taken.has(id));
			const isOne = has && new Set(fitting.map(({ row }) => hashOfRow(row))).size === 1;
			const ids = has ? fitting.map(({ id }) => id) : byMaker(longest(fitting), named.words);
			wanted.push({ file, named, ids, isOne: isOne || ids.length === 1 });
			yield;
		}
		const counts = new Map<RowId, number>();
		for (const { ids, isOne } of wanted) if (isOne) for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
		for (const { file, named, ids, isOne } of wanted) {
			// Two files for one row: neither is the surer one.
			if (!isOne || ids.some((id) => counts.get(id) !== 1)) continue;
			open.delete(file);
			if (way === 'title' && isAnothers(ids[0]!, named)) continue;
			found.set(file, { id: ids[0]!, by: way });
			for (const id of ids) taken.add(id);
		}
	}
	/** Whether the number in a name is another row's than the one of its title. */
	function isAnothers(id: RowId, named: Named): boolean {
		const numbered = numberedRows(by, named);
		return numbered.length > 0 && numbered.every((row) => row.id !== id);
	}
	return files.map((file): MatchedPicture => {
		const same = first.get(file.hash)!;
		if (same !== file) return { kind: 'twice', file, as: same.name };
		const row = found.get(file);
		return row ? { kind: 'row', file, ...row } : { kind: 'new', file };
	});
}

function candidateOf(row: Row, place: number): Candidate {
	const { number = '', title = '', maker = '' } = row.typed;
	return {
		id: row.id,
		row,
		place,
		number: numberOfRow(number),
		typed: title.trim().normalize('NFC').toLowerCase(),
		title: wordsOf(title),
		keys: [keyOf(title), keyOf(`${numberOfRow(number)} ${title}`)],
		maker: wordsOf(maker),
	};
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
