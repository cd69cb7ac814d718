import { openShowStore, type ShowStore } from '../storage/showStore.ts';

/** What is noted of a show when a file of it has left. */
export type GivenNotes = Pick<ShowStore, 'keepCopied' | 'exchanges' | 'keepExchange'>;

/** The notes of a session's store; once that is closed, by a connection of their own: a share may end after its session. */
export function outliving(store: ShowStore, databaseName: string, isClosed: () => boolean): GivenNotes {
	async function using<Result>(work: (notes: GivenNotes) => Promise<Result>): Promise<Result> {
		if (!isClosed()) return work(store);
		const late = openShowStore(databaseName);
		try {
			return await work(late);
		} finally {
			late.close();
		}
	}
	return {
		keepCopied: (...copy) => using((notes) => notes.keepCopied(...copy)),
		exchanges: (...show) => using((notes) => notes.exchanges(...show)),
		keepExchange: (...exchange) => using((notes) => notes.keepExchange(...exchange)),
	};
}
