import type { Edit } from '../core/show/edit.ts';
import type { Copied } from '../storage/schema.ts';

/** What another tab has done to a show on disk. */
export interface News {
	readonly showId: string;
	/** What it has brought the show to. */
	readonly revision: number;
	/** The edit that has made that revision; absent where it is large, or more than an edit. */
	readonly edit?: Edit;
	/** How many edits since the last copy are no change with it; see `CopyCount.takenBackBy`. */
	readonly takenBack?: number;
	/** The copy of the show that has left, where that is the news. */
	readonly copied?: Copied;
}

/** The other tabs in which the same shows are open. */
export interface OtherTabs {
	/** Tells them what has become of a show on disk. Once closed, nobody hears it. */
	announce(news: News): void;
	close(): void;
}

/** What other tabs, and this one's own sleep, may bring. */
export interface TabEvents {
	/** Another tab has done something to a show on disk. */
	readonly onNews: (news: News) => void;
	/** This tab has come to the front: what was said while the browser had put it to sleep may be lost. */
	readonly onReturn: () => void;
}

/** An edit of more rows, or of more cells in other columns, is read from the disk: to send it takes the page longer than that. */
const mostSent = { rows: 400, others: 20_000 };

function isSmall({ rows }: Edit): boolean {
	if (rows.length > mostSent.rows) return false;
	const others = rows
		.flatMap(({ before, after }) => [before, after])
		.map((row) => Object.keys(row?.extra ?? {}).length);
	return others.reduce((sum, count) => sum + count, 0) <= mostSent.others;
}

/** Listens to the other tabs until closed. */
export function listenToOtherTabs(databaseName: string, { onNews, onReturn }: TabEvents): OtherTabs {
	const channel = new BroadcastChannel(`${databaseName} revisions`);
	let isClosed = false;
	channel.onmessage = ({ data }: MessageEvent<News>) => onNews(data);
	const page = typeof document === 'undefined' ? undefined : document;
	const onVisible = () => {
		if (page?.visibilityState === 'visible') onReturn();
	};
	page?.addEventListener('visibilitychange', onVisible);
	return {
		announce({ edit, ...news }) {
			if (isClosed) return;
			channel.postMessage({ ...news, ...(edit && isSmall(edit) && { edit }) } satisfies News);
		},
		close() {
			isClosed = true;
			channel.close();
			page?.removeEventListener('visibilitychange', onVisible);
		},
	};
}
