import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { expect, onTestFinished, test } from 'vitest';
import { openPictureStore, unusedKept, type WholePicture } from '../../../src/storage/pictureStore.ts';

let databases = 0;
function opened() {
	const name = `pictures ${databases++}`;
	const store = openPictureStore(name);
	onTestFinished(() => store.close());
	return { name, store };
}

const hash = (sign: string) => sign.repeat(64);
const image = (...bytes: number[]) => ({ type: 'image/webp', bytes: new Uint8Array(bytes).buffer });
const picture = (sign: string, ...names: string[]): WholePicture => ({
	hash: hash(sign),
	names,
	pixels: { width: 6000, height: 4000 },
	preview: image(1, 2, 3),
	small: image(4),
});

test('a picture is kept once, under every name that it came with', async () => {
	const { store } = opened();
	await store.keep(picture('a', 'one.jpg'));
	await store.keep(picture('a', 'other.jpg'));
	expect(await store.list()).toEqual([
		{ hash: hash('a'), names: ['one.jpg', 'other.jpg'], pixels: { width: 6000, height: 4000 } },
	]);
	expect(new Uint8Array((await store.image(hash('a'), 'preview'))!.bytes)).toEqual(new Uint8Array([1, 2, 3]));
	expect(await store.image(hash('b'), 'small')).toBeUndefined();
});

test('one that is here and sound stays as it is, whatever a file says of it', async () => {
	const { name, store } = opened();
	await store.keep(picture('a', 'one.jpg'));
	const other = { ...picture('a', 'two.jpg'), pixels: { width: 1, height: 1 }, preview: image(9), small: image(9) };
	await store.keep(other);
	const bytes = async () => new Uint8Array((await store.image(hash('a'), 'preview'))!.bytes);
	expect(await store.list()).toEqual([
		{ hash: hash('a'), names: ['one.jpg', 'two.jpg'], pixels: { width: 6000, height: 4000 } },
	]);
	expect(await bytes()).toEqual(new Uint8Array([1, 2, 3]));
	const db = await openDB(`${name} pictures`);
	await db.delete('small', hash('a'));
	db.close();
	await store.keep(other);
	expect(await bytes()).toEqual(new Uint8Array([9]));
});

test('they are listed as they were first kept', async () => {
	const { store } = opened();
	for (const sign of 'cabcd') await store.keep(picture(sign, `${sign}.jpg`));
	expect((await store.list()).map((each) => each.hash[0]).join('')).toBe('cabd');
});

test('an import that is left takes back what it alone has brought, and no row has', async () => {
	const { store } = opened();
	await store.keep(picture('a', 'here before'));
	for (const sign of 'abcd') await store.keep(picture(sign, sign), 'this one');
	await store.keep(picture('c', 'other'), 'another');
	expect(await store.letGo(new Set([hash('d')]), 'this one')).toBe(1);
	expect((await store.list()).map((each) => each.hash[0]).join('')).toBe('acd');
	expect(await store.image(hash('b'), 'small')).toBeUndefined();
	// What two have brought neither takes away.
	expect(await store.letGo(new Set(), 'another')).toBe(0);
});

test('one that no row has is let go after a day, and not where a row has it again before', async () => {
	const { store } = opened();
	await store.keep(picture('a', 'a'));
	await store.keep(picture('b', 'b'));
	const hashes = async () => (await store.list()).map((each) => each.hash[0]).join('');
	expect(await store.sweep(new Set([hash('a')]), 1000)).toBe(0);
	expect(await store.sweep(new Set([hash('a')]), 1000 + unusedKept - 1)).toBe(0);
	expect(await store.sweep(new Set([hash('a'), hash('b')]), 2000 + unusedKept)).toBe(0); // undone
	expect(await store.sweep(new Set([hash('a')]), 3000 + unusedKept)).toBe(0);
	expect(await hashes()).toBe('ab');
	expect(await store.sweep(new Set([hash('a')]), 3000 + 2 * unusedKept)).toBe(1);
	expect(await hashes()).toBe('a');
	expect(await store.image(hash('b'), 'preview')).toBeUndefined();
	expect(await store.sweep(new Set(), 0, 0)).toBe(1); // where room is needed
});

test('damaged records harm no other, and the file dropped again takes their place', async () => {
	const { name, store } = opened();
	for (const sign of 'abcd') await store.keep(picture(sign, sign));
	const db = await openDB(`${name} pictures`);
	await db.put('pictures', 'nothing', hash('a'));
	await db.put('pictures', { hash: hash('b'), names: [1], pixels: { width: 1, height: 1 } }, hash('b'));
	await db.put('pictures', { hash: hash('c'), names: [], pixels: { width: -1, height: 1 } }, hash('c'));
	await db.put('preview', { type: 'image/svg+xml', bytes: new ArrayBuffer(3) }, hash('d'));
	db.close();
	expect((await store.list()).map((each) => each.hash)).toEqual([hash('d')]);
	expect(await store.image(hash('d'), 'preview')).toBeUndefined();
	expect(await store.image(hash('d'), 'small')).toBeDefined();
	await store.keep(picture('a', 'a'));
	expect(await store.list()).toHaveLength(2);
	expect(await store.sweep(new Set([hash('a')]), 5)).toBe(0);
});
