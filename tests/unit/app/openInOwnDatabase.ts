import { beforeEach, onTestFinished } from 'vitest';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { namer } from '../core/show/randomEdits.ts';

/**
 * To be called once in a file, for a module is loaded once for all files. @returns what opens a session over a database
 * of the test that runs; the session is closed as the test ends
 */
export function openInOwnDatabase(): () => Promise<Session> {
	let databaseName = '';
	beforeEach(({ task }) => {
		databaseName = task.id;
	});
	return async () => {
		const session = await openSession({ databaseName, makeId: namer() });
		onTestFinished(() => session.close());
		return session;
	};
}
