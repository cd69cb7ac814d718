import { Unzip, UnzipInflate } from 'fflate';
import { isProblem, type Reading } from '../core/length/reading.ts';
import { isHash } from '../core/show/rowJson.ts';
import { isRecord } from '../core/values/isRecord.ts';
import { shownText } from '../core/values/shownText.ts';
import {
	imageEntry,
	listEntry,
	type PackedImage,
	type PackedPicture,
	type PackedRecord,
	showEntry,
} from './packShow.ts';
import { mostOfFile } from './kindOfFile.ts';
import { pictureHeader } from './pictureHeader.ts';

/** Limits of a packed show: more is none that this app has made. */
const most = { pictures: 4000, list: 5_000_000, image: 3_000_000, inAll: 1_000_000_000 };
const side = { preview: 1024, small: 320 } as const;

/** The most that is unpacked before it is looked at, in packed bytes. */
const slice = 16_384;

const cutShort = 'it is cut short: the end of it is missing';
const damaged = (name: string) => `it is damaged: “${shownText(name)}” in it cannot be read`;
const tooMuch = (name: string) => `“${shownText(name)}” in it unpacks to more than a show of this app holds`;

interface Entry {
	readonly name: string;
	readonly bytes: Uint8Array<ArrayBuffer>;
}

/**
 * Unpacks a show with its pictures as its bytes come. Nothing is believed: names, sizes and order are those that
 * `packShow` writes, each image has the hash that the list says, and what unpacks to too much is left at once.
 * @param onPicture called with each picture once both its images are here and sound
 * @param hashOf SHA-256 in hexadecimal
 * @returns the text of the show's file
 */
export async function unpackShow(
	source: AsyncIterable<Uint8Array<ArrayBuffer>>,
	onPicture: (picture: PackedPicture) => void | Promise<void>,
	hashOf: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>,
): Promise<Reading<string>> {
	let problem: string | undefined;
	const done: Entry[] = [];
	const seen = new Set<string>();
	let open: string | undefined;
	let inAll = 0;
	const fail = (words: string) => (problem ??= words);

	const unzip = new Unzip((file) => {
		if (problem !== undefined) return;
		const { name } = file;
		const limit = mostOf(name);
		const wrong = open === undefined ? entryProblem(name, seen) : damaged(open);
		seen.add(name);
		if (wrong !== undefined || limit === undefined) return void (problem = wrong);
		open = name;
		const parts: Uint8Array<ArrayBuffer>[] = [];
		let size = 0;
		file.ondata = (error, part, isLast) => {
			if (problem !== undefined) return;
			if (error as unknown) return void fail(damaged(name));
			size += part.length;
			inAll += part.length;
			if (size > limit || inAll > most.inAll) return void fail(tooMuch(name));
			parts.push(part.slice());
			if (!isLast) return;
			done.push({ name, bytes: joined(parts, size) });
			open = undefined;
		};
		file.start();
	});
	unzip.register(UnzipInflate);

	const contents = contentsOf(onPicture, hashOf);
	let tail = new Uint8Array(0);
	for await (const chunk of source) {
		for (let at = 0; at < chunk.length && problem === undefined; at += slice) {
			try {
				unzip.push(chunk.subarray(at, at + slice));
			} catch {
				fail(damaged(open ?? 'the file'));
			}
			for (const entry of done.splice(0)) {
				problem ??= await contents.take(entry);
			}
		}
		if (problem !== undefined) return { problem };
		tail = Uint8Array.from([...tail, ...chunk.subarray(-endRecord)]).slice(-endRecord);
	}
	if (seen.size === 0) return { problem: 'it is no packed file' };
	if (open !== undefined || !isEnd(tail)) return { problem: cutShort };
	return contents.end();
}

/** The record that ends a ZIP, in bytes; ours has no comment behind it. */
const endRecord = 22;
const isEnd = (tail: Uint8Array) =>
	tail.length === endRecord && [0x50, 0x4b, 5, 6].every((byte, at) => tail[at] === byte);

/** Why an entry is none of a packed show, where it stands behind those that were seen; undefined where it may be. */
function entryProblem(name: string, seen: ReadonlySet<string>): string | undefined {
	if (mostOf(name) === undefined) return `it holds “${shownText(name)}”, which is no part of a show with pictures`;
	if (seen.has(name)) return `it holds “${name}” twice`;
	if (seen.size === 0 && name !== showEntry) return `it does not begin with “${showEntry}”`;
	return seen.size > 2 * most.pictures + 2 ? `it holds more than ${most.pictures} pictures` : undefined;
}

/** How large an entry may be, by its name; undefined where it has none of ours. */
function mostOf(name: string): number | undefined {
	if (name === showEntry) return mostOfFile;
	if (name === listEntry) return most.list;
	return /^pictures\/[0-9a-f]{64}(?:\.small)?\.(?:webp|jpg|png)$/.test(name) ? most.image : undefined;
}

function joined(parts: readonly Uint8Array[], size: number): Uint8Array<ArrayBuffer> {
	const whole = new Uint8Array(size);
	let at = 0;
	for (const part of parts) {
		whole.set(part, at);
		at += part.length;
	}
	return whole;
}

/** What the entries say, one after the other. */
function contentsOf(
	onPicture: (picture: PackedPicture) => void | Promise<void>,
	hashOf: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>,
) {
	let text: string | undefined;
	let records: ReadonlyMap<string, PackedRecord> | undefined;
	/** The images that are expected, by their names. */
	const expected = new Map<string, { readonly record: PackedRecord; readonly size: 'preview' | 'small' }>();
	const halves = new Map<string, Partial<Record<'preview' | 'small', PackedImage>>>();

	async function takeImage({ name, bytes }: Entry): Promise<string | undefined> {
		const known = expected.get(name);
		if (!known) return `it holds “${name}”, which its list of pictures does not name`;
		const { record, size } = known;
		const { type, hash } = record[size];
		if ((await hashOf(bytes)) !== hash) return damaged(name);
		const header = pictureHeader(bytes);
		const pixels = isProblem(header) ? undefined : header.value.stored;
		if (!pixels || Math.max(pixels.width, pixels.height) > side[size]) return damaged(name);
		expected.delete(name);
		const images = { ...halves.get(record.hash), [size]: { type, bytes: bytes.buffer } };
		halves.set(record.hash, images);
		const { preview, small } = images;
		if (!preview || !small) return undefined;
		halves.delete(record.hash);
		await onPicture({ hash: record.hash, names: record.names, pixels: record.pixels, preview, small });
		return undefined;
	}

	return {
		/** @returns what is wrong with it, if anything is */
		async take(entry: Entry): Promise<string | undefined> {
			if (entry.name === showEntry) {
				text = textOf(entry.bytes);
				return text === undefined ? damaged(entry.name) : undefined;
			}
			if (entry.name !== listEntry) return takeImage(entry);
			records = readList(textOf(entry.bytes));
			if (!records) return damaged(entry.name);
			for (const record of records.values())
				for (const size of ['preview', 'small'] as const)
					expected.set(imageEntry(record.hash, size, record[size].type), { record, size });
			return undefined;
		},
		end(): Reading<string> {
			if (text === undefined || !records || expected.size > 0) return { problem: cutShort };
			return { value: text };
		},
	};
}

function textOf(bytes: Uint8Array): string | undefined {
	try {
		return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
	} catch {
		return undefined;
	}
}

function readList(text: string | undefined): ReadonlyMap<string, PackedRecord> | undefined {
	let list: unknown;
	try {
		list = JSON.parse(text ?? '');
	} catch {
		return undefined;
	}
	if (!Array.isArray(list) || list.length > most.pictures) return undefined;
	const records = new Map<string, PackedRecord>();
	for (const each of list as readonly unknown[]) {
		const record = readRecord(each);
		if (!record || records.has(record.hash)) return undefined;
		records.set(record.hash, record);
	}
	return records;
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
