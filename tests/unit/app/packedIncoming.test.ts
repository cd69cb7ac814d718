import { expect, test } from 'vitest';
import { openFile } from '../../../src/app/incoming.ts';
import { newShow } from '../../../src/core/show/newShow.ts';
import type { PackedPicture } from '../../../src/files/packShow.ts';
import { writeShowFile } from '../../../src/files/showFile.ts';

const file = new File(['PK\x03\x04'], 'all.evenhang.zip');
const image = { type: 'image/webp', bytes: new ArrayBuffer(4) };
const picture = (sign: string): PackedPicture => ({
	...{ hash: sign.repeat(64), names: [`${sign}.jpg`], pixels: { width: 6, height: 4 }, preview: image, small: image },
});

/** Opens a packed file that holds this text; pictures are kept as long as there is room. */
async function opened(text: string, signs: string, room = Infinity) {
	const kept: string[] = [];
	const seen: string[] = [];
	const pictures = {
		keep: ({ hash }: PackedPicture) => {
			if (kept.length >= room) return Promise.reject(new DOMException('full', 'QuotaExceededError'));
			kept.push(hash[0]!);
			return Promise.resolve();
		},
		announce: () => Promise.resolve(),
	};
	const pictureAt = (place: number) => Promise.resolve(picture(signs[place]!));
	const value = { text, count: signs.length, pictureAt, close: () => void seen.push('closed') };
	const onProgress = (done: number, of: number) => void seen.push(`${done} of ${of}`);
	const read = await openFile(file, undefined, pictures, onProgress, () => Promise.resolve({ value }));
	return { read, kept, seen };
}

const show = writeShowFile(newShow('s', 'mm'));

test('pictures are kept one at a time once the show is found to be sound', async () => {
	const { read, kept, seen } = await opened(show, 'abc');
	expect(read).toMatchObject({ value: { opened: { kind: 'show' }, leftOut: undefined } });
	expect(kept.join('')).toBe('abc');
	expect(seen).toEqual(['0 of 3', '1 of 3', '2 of 3', 'closed']);
});

test('of a show that cannot be read, none is kept', async () => {
	const { read, kept, seen } = await opened(show.slice(0, -20), 'abc');
	expect(read).toHaveProperty('problem');
	expect(kept).toEqual([]);
	expect(seen).toEqual(['closed']);
});

test('without room for pictures, the show opens, and how many were not kept is said', async () => {
	const { read, kept } = await opened(show, 'abc', 1);
	expect(kept).toEqual(['a']);
	expect(read).toMatchObject({
		value: {
			opened: { kind: 'show' },
			leftOut:
				'2 of 3 pictures were not kept: there is no room left on this device. All else is here; open the file again once they can be kept.',
		},
	});
});
