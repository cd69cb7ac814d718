import type { Row } from '../core/show/row.ts';
import type { Session } from './session.svelte.ts';

/**
 * Works rows out before they are in the show, a slice at a time: those that an edit brings are then there at once. Ends with
 * the session.
 * @param onProgress called with how many are done
 */
export async function prepareRows(
	session: Pick<Session, 'ahead' | 'signal'>,
	rows: readonly Row[],
	signal?: AbortSignal,
	onProgress?: (done: number) => void,
): Promise<void> {
	const ended = session.signal;
	for await (const done of session.ahead(rows)) {
		onProgress?.(done);
		ended.throwIfAborted();
		signal?.throwIfAborted();
	}
}
