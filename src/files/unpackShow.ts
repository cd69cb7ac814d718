import { isProblem, type Reading } from '../core/length/reading.ts';
import { isHash } from '../core/show/rowJson.ts';
import { isRecord } from '../core/values/isRecord.ts';
import { shownText } from '../core/values/shownText.ts';
import { imageEntry, listEntry, mostPacked, type PackedPicture, type PackedRecord, showEntry } from './packShow.ts';
import { mostOfFile } from './kindOfFile.ts';
import { pictureHeader } from './pictureHeader.ts';
import { damaged, entryBytes, type ZipEntry, zipEntries } from './readZip.ts';

const side = { preview: 1024, small: 320 } as const;

/** A packed show, all of which was found to be sound. */
export interface UnpackedShow {
	/** Of the show's file. */
	readonly text: string;
	/** How many pictures it has. */
	readonly count: number;
	/** Unpacks one of them. */
	readonly pictureAt: (place: number) => Promise<Reading<PackedPicture>>;
}

/**
 * Opens a show that is packed with its pictures. Nothing is believed: names are those that `packShow` writes, sizes and
 * checksums those of the directory, each image has the hash that the list says, and what unpacks to too much is not begun.
 * Folders and their hidden files are passed over, as other programs add them where they pack a show again.
 * @param hashOf SHA-256 in hexadecimal
 * @param onProgress called with how many pictures were looked at, of how many
 */
export async function unpackShow(
	file: Blob,
	hashOf: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>,
	onProgress: (done: number, of: number) => void = () => undefined,
): Promise<Reading<UnpackedShow>> {
	const listed = await zipEntries(file);
	if (isProblem(listed)) return listed;
	const entries = new Map<string, ZipEntry>();
	let inAll = 0;
	for (const entry of listed.value) {
		const { name, size, packed } = entry;
		if (/(?:\/|(?:^|\/)\.DS_Store)$|^__MACOSX\//.test(name)) continue;
		const most = mostOf(name);
		if (most === undefined)
			return { problem: `it holds “${shownText(name)}”, which is no part of a show with pictures` };
		if (entries.has(name)) return { problem: `it holds “${name}” twice` };
		inAll += size;
		if (Math.max(size, packed) > most || inAll > mostPacked.inAll)
			return { problem: `“${shownText(name)}” in it unpacks to more than a show of this app holds` };
		entries.set(name, entry);
	}
	const bytesOf = async (name: string): Promise<Reading<Uint8Array<ArrayBuffer>>> => {
		const entry = entries.get(name);
		return entry ? entryBytes(file, entry) : { problem: `it lacks “${name}”` };
	};
	const [text, list] = [await textOf(bytesOf, showEntry), await textOf(bytesOf, listEntry)];
	if (isProblem(text)) return text;
	if (isProblem(list)) return list;
	const read = readList(list.value);
	if (isProblem(read)) return read;
	const records = read.value;
	const names = new Set(records.flatMap((record) => sizes.map((size) => nameOf(record, size))));
	for (const name of entries.keys())
		if (name !== showEntry && name !== listEntry && !names.has(name))
			return { problem: `it holds “${name}”, which its list of pictures does not name` };

	async function imageOf(record: PackedRecord, size: (typeof sizes)[number]) {
		const { type, hash } = record[size];
		const name = nameOf(record, size);
		const bytes = await bytesOf(name);
		if (isProblem(bytes)) return bytes;
		if ((await hashOf(bytes.value)) !== hash) return { problem: damaged(name) };
		const header = pictureHeader(bytes.value);
		const pixels = isProblem(header) ? undefined : header.value.stored;
		if (!pixels || Math.max(pixels.width, pixels.height) > side[size]) return { problem: damaged(name) };
		return { value: { type, bytes: bytes.value.buffer } };
	}

	async function pictureAt(place: number): Promise<Reading<PackedPicture>> {
		const record = records[place]!;
		const [preview, small] = [await imageOf(record, 'preview'), await imageOf(record, 'small')];
		if (isProblem(preview)) return preview;
		if (isProblem(small)) return small;
		return { value: { ...record, preview: preview.value, small: small.value } };
	}

	for (const place of records.keys()) {
		onProgress(place, records.length);
		const picture = await pictureAt(place);
		if (isProblem(picture)) return picture;
	}
	return { value: { text: text.value, count: records.length, pictureAt } };
}

const sizes = ['preview', 'small'] as const;
const nameOf = (record: PackedRecord, size: (typeof sizes)[number]) => imageEntry(record.hash, size, record[size].type);

/** How large an entry may be, by its name; undefined where it has none of ours. */
function mostOf(name: string): number | undefined {
	if (name === showEntry) return mostOfFile;
	if (name === listEntry) return mostPacked.list;
	return /^pictures\/[0-9a-f]{64}(?:\.small)?\.(?:webp|jpg|png)$/.test(name) ? mostPacked.image : undefined;
}

async function textOf(
	bytesOf: (name: string) => Promise<Reading<Uint8Array<ArrayBuffer>>>,
	name: string,
): Promise<Reading<string>> {
	const bytes = await bytesOf(name);
	if (isProblem(bytes)) return bytes;
	try {
		return { value: new TextDecoder('utf-8', { fatal: true }).decode(bytes.value) };
	} catch {
		return { problem: damaged(name) };
	}
}

function readList(text: string): Reading<readonly PackedRecord[]> {
	const problem = damaged(listEntry);
	let list: unknown;
	try {
		list = JSON.parse(text);
	} catch {
		return { problem };
	}
	if (!Array.isArray(list)) return { problem };
	if (list.length > mostPacked.pictures) return { problem: `it holds more than ${mostPacked.pictures} pictures` };
	const records = new Map<string, PackedRecord>();
	for (const each of list as readonly unknown[]) {
		const record = readRecord(each);
		if (!record || records.has(record.hash)) return { problem };
		records.set(record.hash, record);
	}
	return { value: [...records.values()] };
}

function readRecord(value: unknown): PackedRecord | undefined {
	if (!isRecord(value)) return undefined;
	const { hash, names, pixels } = value;
	const [preview, small] = [readImage(value['preview']), readImage(value['small'])];
	if (!isHash(hash) || !preview || !small || !isRecord(pixels)) return undefined;
	if (!Array.isArray(names) || !names.every((name) => typeof name === 'string')) return undefined;
	const { width, height } = pixels;
	if (!isCount(width) || !isCount(height)) return undefined;
	return { hash, names, pixels: { width, height }, preview, small };
}

const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) > 0;

function readImage(value: unknown): PackedRecord['preview'] | undefined {
	if (!isRecord(value)) return undefined;
	const { type, hash } = value;
	const isType = type === 'image/webp' || type === 'image/jpeg' || type === 'image/png';
	return isType && isHash(hash) ? { type, hash } : undefined;
}
