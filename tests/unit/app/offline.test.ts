import { expect, test } from 'vitest';
import { Offline } from '../../../src/app/offline.svelte.ts';

test('ready is said only after a look, and no longer when a look finds something missing', async () => {
	let isWhole = true;
	const offline = new Offline(() => Promise.resolve(isWhole));
	expect(offline.state).toBe('arriving');
	await offline.look();
	expect(offline.state).toBe('ready');
	isWhole = false;
	await offline.look();
	expect(offline.state).toBe('not kept');
});

test('what fails is not kept, and can be tried again', async () => {
	let tries = 0;
	const offline = new Offline(() => (++tries === 1 ? Promise.reject(new Error('no room')) : Promise.resolve(true)));
	await offline.look();
	expect(offline.state).toBe('not kept');
	const again = offline.look();
	expect(offline.state).toBe('arriving');
	await again;
	expect(offline.state).toBe('ready');
});

test('one look at a time', async () => {
	let looks = 0;
	const offline = new Offline(async () => {
		looks++;
		await Promise.resolve();
		return true;
	});
	await Promise.all([offline.look(), offline.look()]);
	expect(looks).toBe(1);
	await offline.look();
	expect(looks).toBe(2);
});

test('where nothing can be kept, that is said', async () => {
	const offline = new Offline(undefined);
	await offline.look();
	expect(offline.state).toBe('impossible');
});
