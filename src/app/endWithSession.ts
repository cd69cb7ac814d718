import type { Session } from './session.svelte.ts';

/**
 * Ends a search when the session that it is made for begins to close.
 * @param search aborted when the search ends, whoever ends it
 * @returns whether it may begin: for a session that closes nothing is searched
 */
export function endWithSession({ signal }: Pick<Session, 'signal'>, search: AbortController, end: () => void): boolean {
	signal.addEventListener('abort', end, { once: true, signal: search.signal });
	return !signal.aborted;
}
