import { crc32, deflateSync } from 'node:zlib';
import type { Page } from 'playwright-core';

/** A file as it is dropped. */
export interface DroppedFile {
	readonly name: string;
	readonly bytes: Uint8Array;
	/** As the system says it; wrong where the name is. */
	readonly type?: string;
}

const ascii = (text: string) => [...text].map((sign) => sign.charCodeAt(0));
const u16 = (value: number) => [value >> 8, value & 255];
const u32 = (value: number) => [...u16(value >>> 16), ...u16(value & 0xffff)];
const u16le = (value: number) => u16(value).reverse();
const u32le = (value: number) => u32(value).reverse();
const bytes = (...parts: (readonly number[] | Uint8Array)[]) => Uint8Array.from(parts.flatMap((part) => [...part]));

/** An EXIF structure that says an orientation and nothing else. */
export const exif = (orientation: number, isLittleEndian = false): readonly number[] => {
	const [short, long] = isLittleEndian ? [u16le, u32le] : [u16, u32];
	const entry = [...short(0x0112), ...short(3), ...long(1), ...short(orientation), 0, 0];
	return [...ascii(isLittleEndian ? 'II' : 'MM'), ...short(42), ...long(8), ...short(1), ...entry, ...long(0)];
};

const segment = (marker: number, content: readonly number[]) => [0xff, marker, ...u16(content.length + 2), ...content];
const exifSegment = (orientation: number, isLittleEndian?: boolean) =>
	segment(0xe1, [...ascii('Exif'), 0, 0, ...exif(orientation, isLittleEndian)]);

/** A JPEG with an orientation put behind its beginning. */
export const withOrientation = (jpeg: Uint8Array, orientation: number, isLittleEndian?: boolean): Uint8Array =>
	bytes(jpeg.slice(0, 2), exifSegment(orientation, isLittleEndian), jpeg.slice(2));

/** A JPEG with a comment, which makes it another file. */
export const withComment = (jpeg: Uint8Array, comment: string): Uint8Array =>
	bytes(jpeg.slice(0, 2), segment(0xfe, ascii(comment)), jpeg.slice(2));

/** A grey JPEG made by hand, all of whose blocks are alike: of several components, or progressive. */
export function plainJpeg(width: number, height: number, { components = 1, isProgressive = false } = {}): Uint8Array {
	const ids = Array.from({ length: components }, (_, at) => at + 1);
	const blocks = Math.ceil(width / 8) * Math.ceil(height / 8) * components;
	const frame = [8, ...u16(height), ...u16(width), components, ...ids.flatMap((id) => [id, 0x11, 0])];
	// One code for a difference of nothing and one for the end of a block: all bits are zero.
	const oneCode = [1, ...Array<number>(15).fill(0), 0];
	const bits = blocks * (isProgressive ? 1 : 2);
	const data = Array<number>(Math.ceil(bits / 8)).fill(0);
	if (bits % 8 > 0) data[data.length - 1] = 255 >> (bits % 8);
	return bytes(
		[0xff, 0xd8],
		components === 4 ? segment(0xee, [...ascii('Adobe'), 0, 100, 0, 0, 0, 0, 0]) : [],
		segment(0xdb, [0, ...Array<number>(64).fill(1)]),
		segment(isProgressive ? 0xc2 : 0xc0, frame),
		segment(0xc4, [0x00, ...oneCode]),
		segment(0xc4, [0x10, ...oneCode]),
		segment(0xda, [components, ...ids.flatMap((id) => [id, 0]), 0, isProgressive ? 0 : 63, 0]),
		data,
		[0xff, 0xd9],
	);
}

const chunk = (type: string, content: readonly number[] | Uint8Array) => {
	const body = bytes(ascii(type), content);
	return bytes(u32(content.length), body, u32(crc32(body)));
};

/** A grey PNG, of 8 or 16 bits, with an orientation if one is given. */
export function plainPng(width: number, height: number, { bits = 8, orientation = 0 } = {}): Uint8Array {
	const line = 1 + (width * bits) / 8;
	return bytes(
		[0x89, ...ascii('PNG\r\n'), 0x1a, 0x0a],
		chunk('IHDR', [...u32(width), ...u32(height), bits, 0, 0, 0, 0]),
		orientation > 0 ? chunk('eXIf', exif(orientation)) : [],
		chunk('IDAT', deflateSync(new Uint8Array(line * height).map((_, at) => (at % line === 0 ? 0 : 120)))),
		chunk('IEND', []),
	);
}

/** The beginning of a PNG that says to be of a size. */
export const pngHeader = (width: number, height: number): Uint8Array =>
	bytes([0x89, ...ascii('PNG\r\n'), 0x1a, 0x0a], chunk('IHDR', [...u32(width), ...u32(height), 8, 2, 0, 0, 0]));

/** A GIF of two frames, of 2 × 1 pixels. */
export function animatedGif(): Uint8Array {
	const frame = [0x2c, ...u16le(0), ...u16le(0), ...u16le(2), ...u16le(1), 0, 2, 2, 0x44, 0x0a, 0];
	const colours = [0, 0, 0, 255, 255, 255, 0, 0, 0, 255, 255, 255];
	const delay = [0x21, 0xf9, 4, 0, ...u16le(10), 0, 0];
	return bytes(
		ascii('GIF89a'),
		[...u16le(2), ...u16le(1), 0x81, 0, 0],
		colours,
		[0x21, 0xff, 11, ...ascii('NETSCAPE2.0'), 3, 1, ...u16le(0), 0],
		[...delay, ...frame, ...delay, ...frame, 0x3b],
	);
}

/** A WebP with what it says of its orientation, made of one without. */
export function webpWithOrientation(webp: Uint8Array, width: number, height: number, orientation: number): Uint8Array {
	const u24le = (value: number) => u32le(value).slice(0, 3);
	const hasExif = 0x08;
	const said = exif(orientation);
	const chunks = webp.slice(12);
	const isExtended = chunks[3] === 'X'.charCodeAt(0);
	if (isExtended) chunks[8]! |= hasExif;
	const extended = [...ascii('VP8X'), ...u32le(10), hasExif, 0, 0, 0, ...u24le(width - 1), ...u24le(height - 1)];
	const body = bytes(ascii('WEBP'), isExtended ? [] : extended, chunks, ascii('EXIF'), u32le(said.length), said);
	return bytes(ascii('RIFF'), u32le(body.length), body);
}

/** An RGB TIFF without compression, of one strip. Source: TIFF 6.0, section 6 */
export function plainTiff(width: number, height: number): Uint8Array {
	const tags = 9;
	const bits = 8 + 2 + tags * 12 + 4;
	const strip = bits + 6;
	const entry = (tag: number, value: number, count = 1) => [
		...[...u16le(tag), ...u16le(count === 3 || value < 65536 ? 3 : 4), ...u32le(count)],
		...(value < 65536 ? [...u16le(value), 0, 0] : u32le(value)),
	];
	const pixels = new Uint8Array(width * height * 3).fill(120);
	const directory = [
		...[entry(256, width), entry(257, height), entry(258, bits, 3), entry(259, 1), entry(262, 2)],
		...[entry(273, strip), entry(277, 3), entry(278, height), entry(279, pixels.length)],
	];
	return bytes(
		[...ascii('II'), ...u16le(42), ...u32le(8)],
		u16le(tags),
		directory.flat(),
		u32le(0),
		[8, 0, 8, 0, 8, 0],
		pixels,
	);
}

const box = (type: string, ...parts: (readonly number[])[]): readonly number[] => {
	const body = parts.flat();
	return [...u32(8 + body.length), ...ascii(type), ...body];
};

/** The brands and the size of a picture of the family that AVIF and HEIC belong to, and nothing else of it. */
export const stillHeader = (brand: string, width: number, height: number): Uint8Array =>
	bytes(
		box('ftyp', ascii(brand), u32(0), ascii('mif1')),
		box('meta', u32(0), box('iprp', box('ipco', box('ispe', u32(0), u32(width), u32(height))))),
	);

/** The four corners of `paintedPicture` on 96 × 64 pixels as AV1, as the encoder of Chromium writes them. */
const paintedAv1 = Buffer.from(
	'Cg0AAAADLf/AGiAhoDCAMlQQRQAEEEEIABC0Ws0WyZTXZyrRdmlL5nkjYkllXd2/0w9Gff+ppFsuvTGlGbypb76ckJYtYgWbFhivknaqnvQ7ft9gd+VG8kZ2nzWt+AqgTvIU5YA=',
	'base64',
);

/**
 * An AVIF of 96 × 64 pixels, as they are stored, with the corners of `paintedPicture`.
 * @param quarters how many quarters of a turn it is to be turned, against the clock
 * @param mirrored what changes places after that: left and right, or top and bottom
 * Source: ISO/IEC 23008-12, 6.5.10 and 6.5.12 (irot, imir); AV1 Image File Format 1.1, 2 (av01, av1C)
 */
export function paintedAvif(quarters = 0, mirrored?: 'across' | 'down'): Uint8Array {
	const properties = [
		box('ispe', u32(0), u32(96), u32(64)),
		box('pixi', u32(0), [3, 8, 8, 8]),
		box('av1C', [0x81, 0, 0x0c, 0]),
		...(quarters > 0 ? [box('irot', [quarters])] : []),
		...(mirrored ? [box('imir', [mirrored === 'across' ? 1 : 0])] : []),
	];
	const essential = 0x80;
	const places = properties.map((_, at) => at + 1 + (at >= 2 ? essential : 0));
	const type = box('ftyp', ascii('avif'), u32(0), ascii('avif'), ascii('mif1'), ascii('miaf'));
	const meta = (data: number) =>
		box(
			'meta',
			u32(0),
			box('hdlr', u32(0), u32(0), ascii('pict'), u32(0), u32(0), u32(0), [0]),
			box('pitm', u32(0), u16(1)),
			box('iloc', u32(0), [0x44, 0], u16(1), u16(1), u16(0), u16(1), u32(data), u32(paintedAv1.length)),
			box('iinf', u32(0), u16(1), box('infe', u32(0x02000000), u16(1), u16(0), ascii('av01'), [0])),
			box('iprp', box('ipco', properties.flat()), box('ipma', u32(0), u32(1), u16(1), [places.length, ...places])),
		);
	const before = type.length + meta(0).length + 8;
	return bytes(type, meta(before), box('mdat', [...paintedAv1]));
}

/**
 * A picture that the browser writes: red at the top left, green at the top right, blue at the bottom left, white at the
 * bottom right.
 * @param noise whether it is hard to compress, as a photograph is
 */
export async function paintedPicture(
	page: Page,
	width: number,
	height: number,
	type = 'image/jpeg',
	noise = false,
): Promise<Uint8Array> {
	const text = await page.evaluate(
		async ({ width, height, type, noise }) => {
			const canvas = new OffscreenCanvas(width, height);
			const context = canvas.getContext('2d')!;
			const corners = ['#f00', '#0f0', '#00f', '#fff'];
			for (const [at, colour] of corners.entries()) {
				context.fillStyle = colour;
				context.fillRect(((at % 2) * width) / 2, (Math.floor(at / 2) * height) / 2, width / 2, height / 2);
			}
			for (let line = 0; noise && line < 4000; line++) {
				context.fillStyle = `hsl(${(line * 47) % 360} 60% ${(line * 31) % 100}% / .5)`;
				context.fillRect((line * 7919) % width, (line * 104729) % height, width / 40, height / 60);
			}
			const blob = await canvas.convertToBlob({ type, quality: 0.95 });
			const data = new Uint8Array(await blob.arrayBuffer());
			let text = '';
			for (let at = 0; at < data.length; at += 8192) text += String.fromCharCode(...data.subarray(at, at + 8192));
			return btoa(text);
		},
		{ width, height, type, noise },
	);
	return new Uint8Array(Buffer.from(text, 'base64'));
}

/** Drops files on the page, as from a folder. */
export const dropFiles = (page: Page, files: readonly DroppedFile[]): Promise<void> => sendFiles(page, 'drop', files);

/** Pastes files where the focus is, as they were copied in a file manager. @param text what comes with them as text */
export const pasteFiles = (page: Page, files: readonly DroppedFile[], text: string): Promise<void> =>
	sendFiles(page, 'paste', files, text);

async function sendFiles(page: Page, type: 'drop' | 'paste', files: readonly DroppedFile[], text = ''): Promise<void> {
	const given = files.map(({ name, bytes, type = '' }) => ({
		name,
		type,
		data: Buffer.from(bytes).toString('base64'),
	}));
	await page.evaluate(
		({ given, type, text }) => {
			const carried = new DataTransfer();
			for (const { name, type, data } of given) {
				const bytes = Uint8Array.from(atob(data), (sign) => sign.charCodeAt(0));
				carried.items.add(new File([bytes], name, { type }));
			}
			if (text !== '') carried.setData('text/plain', text);
			const all = { bubbles: true, cancelable: true };
			const event =
				type === 'drop'
					? new DragEvent(type, { dataTransfer: carried, ...all })
					: new ClipboardEvent(type, { clipboardData: carried, ...all });
			(type === 'drop' ? document.body : document.activeElement!).dispatchEvent(event);
		},
		{ given, type, text },
	);
}
