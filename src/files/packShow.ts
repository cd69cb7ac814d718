import { deflateSync } from 'fflate';
import type { Picture } from '../core/pictures/picture.ts';
import { checksum } from './checksum.ts';
import { mostOfFile } from './kindOfFile.ts';

/** An image of a picture as it is kept. */
export interface PackedImage {
	readonly type: string;
	readonly bytes: ArrayBuffer;
}

/** A picture with all that is kept of it. */
export interface PackedPicture extends Picture {
	readonly preview: PackedImage;
	readonly small: PackedImage;
}

/** What is packed of a picture beside its images; each image is known by its own hash, so that damage is seen. */
export interface PackedRecord extends Picture {
	readonly preview: { readonly type: string; readonly hash: string };
	readonly small: { readonly type: string; readonly hash: string };
}

/**
 * How much a packed show may hold, where it is written and where it is read; all but `pictures` in bytes. A ZIP has at most
 * 65,535 entries and 4 GiB, two images each picture; of 1024 pixels a side, four bytes each, an image has 4.2 MB at most.
 */
export const mostPacked = { pictures: 30_000, list: 40_000_000, image: 5_000_000, inAll: 4_000_000_000 };

/** Why a show cannot be packed with its pictures, as what it would hold; undefined where it can. Sizes in bytes. */
export function tooMuchToPack(pictures: number, list: number, images: readonly number[]): string | undefined {
	if (pictures > mostPacked.pictures) return `more than ${mostPacked.pictures} pictures`;
	if (list > mostPacked.list) return 'too many names of pictures';
	if (images.some((size) => size > mostPacked.image)) return 'an image that is too large';
	const inAll = images.reduce((sum, size) => sum + size, 0);
	return inAll + list + mostOfFile > mostPacked.inAll ? 'too many bytes of pictures' : undefined;
}

/** The file of the show, or of all shows: the same as the plain one. */
export const showEntry = 'show.json';
/** The list of the pictures; it stands before them. */
export const listEntry = 'pictures/pictures.json';
const endings: Readonly<Record<string, string>> = { 'image/webp': 'webp', 'image/jpeg': 'jpg', 'image/png': 'png' };

/** Where an image of a picture stands in a packed show. */
export const imageEntry = (hash: string, size: 'preview' | 'small', type: string): string =>
	`pictures/${hash}${size === 'small' ? '.small' : ''}.${endings[type] ?? 'bin'}`;

const u16 = (value: number) => [value & 255, (value >> 8) & 255];
const u32 = (value: number) => [...u16(value & 0xffff), ...u16(value >>> 16)];

const stored = 0;
const deflated = 8;
/** 1 January 1980, the first day that ZIP knows: one show gives one file. */
const noDay = [0, 0, 0x21, 0];

/**
 * Packs entries one after the other, as ZIP has them, and lets go of each at once. Sizes stand before what they are of:
 * whoever reads the file as it comes need not look for the end of an entry. Source: APPNOTE.TXT 6.3.3 (PKWARE)
 * @param onPart called with each part of the file, in order
 */
export function packer(onPart: (part: Uint8Array<ArrayBuffer>) => void) {
	const directory: number[][] = [];
	let offset = 0;
	const put = (part: Uint8Array<ArrayBuffer>) => {
		offset += part.length;
		onPart(part);
	};
	function add(name: string, bytes: Uint8Array<ArrayBuffer>, method: number): void {
		const packed = method === deflated ? deflateSync(bytes) : bytes;
		const letters = [...new TextEncoder().encode(name)];
		const said = [
			...[...u16(20), ...u16(0), ...u16(method), ...noDay, ...u32(checksum(bytes))],
			...[...u32(packed.length), ...u32(bytes.length), ...u16(letters.length), ...u16(0)],
		];
		directory.push([
			...[...u32(0x02014b50), ...u16(20), ...said, ...u16(0), ...u16(0), ...u16(0), ...u32(0), ...u32(offset)],
			...letters,
		]);
		put(Uint8Array.from([...u32(0x04034b50), ...said, ...letters]));
		put(packed);
	}
	return {
		/** A text, made smaller. */
		text: (name: string, text: string) => add(name, new TextEncoder().encode(text), deflated),
		/** Bytes as they are: images are small already. */
		bytes: (name: string, bytes: ArrayBuffer) => add(name, new Uint8Array(bytes), stored),
		end(): void {
			const start = offset;
			for (const entry of directory) put(Uint8Array.from(entry));
			const count = u16(directory.length);
			const end = [...u16(0), ...u16(0), ...count, ...count, ...u32(offset - start), ...u32(start), ...u16(0)];
			put(Uint8Array.from([...u32(0x06054b50), ...end]));
		},
	};
}
