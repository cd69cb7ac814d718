import { expect, test } from 'vitest';
import { Update } from '../../../src/app/update.svelte.ts';

/** An update with everything it does written down. */
function watched(beforeReload = () => Promise.resolve()) {
	const done: string[] = [];
	const update = new Update(
		() => Promise.resolve(void done.push('start')),
		async () => {
			await beforeReload();
			done.push('saved');
		},
		() => void done.push('reload'),
	);
	return { update, done };
}

test('taken: what was typed is kept, the waiting version starts, and then the page is shown again', async () => {
	const { update, done } = watched();
	expect(update.state).toBe('none');
	update.isWaiting();
	expect(update.state).toBe('waiting');
	await update.apply();
	expect(update.state, 'it is said until it has taken over').toBe('starting');
	expect(done).toEqual(['saved', 'start']);
	update.isWaiting();
	expect(update.state).toBe('starting');
	update.wasReplaced();
	await expect.poll(() => done).toEqual(['saved', 'start', 'saved', 'reload']);
});

test('what is typed as the version takes over, and cannot be kept, is not reloaded over', async () => {
	let problem: Error | undefined;
	const { update, done } = watched(() => (problem ? Promise.reject(problem) : Promise.resolve()));
	update.isWaiting();
	await update.apply();
	problem = new Error('the disk is full');
	update.wasReplaced();
	await Promise.resolve();
	await expect.poll(() => update.state).toBe('replaced');
	expect(done).toEqual(['saved', 'start']);
	problem = undefined;
	await update.apply();
	expect(done).toEqual(['saved', 'start', 'saved', 'reload']);
});

test('taken from another window: nothing happens here until it is asked for', async () => {
	const { update, done } = watched();
	update.isWaiting();
	update.wasReplaced();
	expect(update.state).toBe('replaced');
	expect(done).toEqual([]);
	update.isWaiting();
	expect(update.state, 'the one that waited has started already').toBe('replaced');
	await update.apply();
	expect(done).toEqual(['saved', 'reload']);
});

test('not taken while something typed cannot be kept', async () => {
	const { update, done } = watched(() => Promise.reject(new Error('the disk is full')));
	update.isWaiting();
	await expect(update.apply()).rejects.toThrow('the disk is full');
	expect(done).toEqual([]);
	expect(update.state).toBe('waiting');
	update.wasReplaced();
	expect(done, 'nor when another window starts it later').toEqual([]);
});

test('put off, it is quiet', () => {
	const { update } = watched();
	update.isWaiting();
	update.putOff();
	expect(update.state).toBe('none');
});
