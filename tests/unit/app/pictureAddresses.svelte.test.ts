import { flushSync } from 'svelte';
import { expect, test } from 'vitest';
import { PictureAddresses } from '../../../src/app/pictureAddresses.ts';
import { eventually } from '../eventually.ts';

const image = (key: string) => ({ type: 'image/webp', bytes: new TextEncoder().encode(key).buffer });

test('of many images that are asked for few are read at once, each once, and who asked hears of its own alone', async () => {
	let underWay = 0;
	let most = 0;
	const read: string[] = [];
	const addresses = new PictureAddresses(async (key) => {
		read.push(key);
		most = Math.max(most, ++underWay);
		await new Promise((resolve) => setTimeout(resolve));
		underWay--;
		return image(key);
	});
	const keys = Array.from({ length: 30 }, (_, at) => `small ${at}`);
	const seen = new Map<string, (string | undefined)[]>(keys.map((key) => [key, []]));
	const stop = $effect.root(() => {
		for (const key of keys) $effect(() => void seen.get(key)!.push(addresses.get(key)));
	});
	flushSync();
	await eventually(() => {
		flushSync();
		expect([...seen.values()].every((each) => each.at(-1)?.startsWith('blob:'))).toBe(true);
	});
	expect([...seen.values()].map((each) => each.length)).toEqual(keys.map(() => 2));
	expect(read).toEqual(keys);
	expect(most).toBe(4);
	stop();
	addresses.close();
});

test('what is not there, or cannot be read, is read again when it is asked for once more', async () => {
	let reads = 0;
	const addresses = new PictureAddresses((key) => {
		reads++;
		if (reads === 1) return Promise.reject(new Error('not now'));
		return Promise.resolve(reads === 2 ? undefined : image(key));
	});
	addresses.get('a');
	await eventually(() => {
		addresses.get('a');
		expect(reads).toBe(2);
	});
	await new Promise((resolve) => setTimeout(resolve, 1));
	addresses.get('a');
	expect(reads).toBe(2); // it is not there, until something is kept
	addresses.forgetAll();
	await eventually(() => expect(addresses.get('a')).toMatch(/^blob:/));
	expect(reads).toBe(3);
	addresses.close();
});
