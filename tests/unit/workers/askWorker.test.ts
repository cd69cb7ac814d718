import { expect, test } from 'vitest';
import { type AskedWorker, askWorker } from '../../../src/workers/askWorker.ts';
import type { Reply } from '../../../src/workers/protocol.ts';

/** A worker that fails as soon as it is asked, with that event. */
const failing = (event: Partial<ErrorEvent>): AskedWorker => ({
	onmessage: null,
	onerror: null,
	terminate: () => undefined,
	postMessage() {
		(this.onerror as (event: Partial<ErrorEvent>) => void)(event);
	},
});

test.each([
	[{}, 'The part of Evenhang for planning boards could not be loaded. Check the connection'],
	[{ message: '' }, 'The part of Evenhang for planning boards could not be loaded.'],
	[{ message: 'out of memory' }, 'Something went wrong while planning boards (out of memory). Try again'],
])('a worker that fails with %j has words', async (event, words) => {
	const asked = askWorker<Reply<number>>(() => failing(event), {}, new AbortController().signal, 'planning boards');
	await expect(asked).rejects.toThrow(words);
});
