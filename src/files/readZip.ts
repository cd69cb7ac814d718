import { Inflate } from 'fflate';
import type { Reading } from '../core/length/reading.ts';
import { shownText } from '../core/values/shownText.ts';
import { checksum } from './checksum.ts';

/** An entry as the directory of a ZIP has it, which stands at its end: headers before entries may leave sizes open. */
export interface ZipEntry {
	readonly name: string;
	/** How many bytes it unpacks to. */
	readonly size: number;
	readonly isLocked: boolean;
	readonly method: number;
	readonly sum: number;
	readonly packed: number;
	readonly offset: number;
}

const cutShort = { problem: 'it is cut short: the end of it is missing' };
const otherForm = { problem: 'it is packed in a way that this app does not read' };

/** What is said of an entry that is not as the directory has it. */
export const damaged = (name: string): string => `it is damaged: “${shownText(name)}” in it cannot be read`;

const endSize = 22;
const longestComment = 0xffff;
/** In bytes; that of the largest show of ours has a tenth. */
const mostOfDirectory = 20_000_000;
/** The most that is unpacked before its size is looked at, in packed bytes. */
const slice = 16_384;

const partOf = async (file: Blob, start: number, end: number) =>
	new Uint8Array(await file.slice(start, end).arrayBuffer());
const viewOf = ({ buffer }: Uint8Array<ArrayBuffer>) => new DataView(buffer);

/** Reads the directory of a ZIP. Source: APPNOTE.TXT 6.3.3 (PKWARE), 4.3 */
export async function zipEntries(file: Blob): Promise<Reading<readonly ZipEntry[]>> {
	const start = await partOf(file, 0, 2);
	if (start[0] !== 0x50 || start[1] !== 0x4b) return { problem: 'it is no packed file' };
	const tailAt = Math.max(0, file.size - endSize - longestComment);
	const tail = viewOf(await partOf(file, tailAt, file.size));
	let end = tail.byteLength - endSize;
	const isEnd = () =>
		tail.getUint32(end) === 0x504b0506 && end + endSize + tail.getUint16(end + 20, true) === tail.byteLength;
	while (end >= 0 && !isEnd()) end--;
	if (end < 0) return cutShort;
	const [count, size, offset] = [
		tail.getUint16(end + 10, true),
		tail.getUint32(end + 12, true),
		tail.getUint32(end + 16, true),
	];
	if (offset === 0xffffffff || count === 0xffff || size > mostOfDirectory) return otherForm;
	if (offset + size > tailAt + end) return cutShort;
	return readDirectory(await partOf(file, offset, offset + size), count);
}

function readDirectory(bytes: Uint8Array<ArrayBuffer>, count: number): Reading<readonly ZipEntry[]> {
	const view = viewOf(bytes);
	const entries: ZipEntry[] = [];
	for (let at = 0; entries.length < count;) {
		if (at + 46 > bytes.length || view.getUint32(at) !== 0x504b0102)
			return { problem: damaged('the list of its parts') };
		const u16 = (place: number) => view.getUint16(at + place, true);
		const u32 = (place: number) => view.getUint32(at + place, true);
		const nameEnd = at + 46 + u16(28);
		entries.push({
			name: new TextDecoder().decode(bytes.subarray(at + 46, nameEnd)),
			size: u32(24),
			isLocked: (u16(8) & 1) !== 0,
			method: u16(10),
			sum: u32(16),
			packed: u32(20),
			offset: u32(42),
		});
		at = nameEnd + u16(30) + u16(32);
	}
	return { value: entries };
}

/** The bytes of an entry, of the length and checksum that the directory gives; its size is looked at before. */
export async function entryBytes(file: Blob, entry: ZipEntry): Promise<Reading<Uint8Array<ArrayBuffer>>> {
	const { name, size, isLocked, method, sum, packed, offset } = entry;
	if (isLocked) return { problem: 'it is locked with a password' };
	if (method !== 0 && method !== 8) return otherForm;
	const header = viewOf(await partOf(file, offset, offset + 30));
	if (header.byteLength < 30 || header.getUint32(0) !== 0x504b0304) return { problem: damaged(name) };
	const start = offset + 30 + header.getUint16(26, true) + header.getUint16(28, true);
	const bytes = await partOf(file, start, start + packed);
	const whole = method === 0 ? bytes : inflated(bytes, size);
	return whole?.length === size && checksum(whole) === sum ? { value: whole } : { problem: damaged(name) };
}

/** @returns undefined where it is damaged, or as soon as it is longer than it says */
function inflated(bytes: Uint8Array, size: number): Uint8Array<ArrayBuffer> | undefined {
	const whole = new Uint8Array(size);
	let length = 0;
	const inflate = new Inflate((part) => {
		if (length + part.length <= size) whole.set(part, length);
		length += part.length;
	});
	try {
		for (let at = 0; at < bytes.length && length <= size; at += slice)
			inflate.push(bytes.subarray(at, at + slice), at + slice >= bytes.length);
	} catch {
		return undefined;
	}
	return length === size ? whole : undefined;
}
