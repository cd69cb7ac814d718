/** The other tabs in which the same shows are open. */
export interface OtherTabs {
	/** Tells them that a show on disk has got to that revision. */
	announce(showId: string, revision: number): void;
	close(): void;
}

interface News {
	readonly showId: string;
	readonly revision: number;
}

/** What other tabs, and this one's own sleep, may bring. */
export interface TabEvents {
	/** Another tab has brought a show on disk to that revision. */
	readonly onNews: (showId: string, revision: number) => void;
	/** This tab has come to the front: what was said while the browser had put it to sleep may be lost. */
	readonly onReturn: () => void;
}

/** Listens to the other tabs until closed. */
export function listenToOtherTabs(databaseName: string, { onNews, onReturn }: TabEvents): OtherTabs {
	const channel = new BroadcastChannel(`${databaseName} revisions`);
	channel.onmessage = ({ data }: MessageEvent<News>) => onNews(data.showId, data.revision);
	const page = typeof document === 'undefined' ? undefined : document;
	const onVisible = () => {
		if (page?.visibilityState === 'visible') onReturn();
	};
	page?.addEventListener('visibilitychange', onVisible);
	return {
		announce: (showId, revision) => channel.postMessage({ showId, revision } satisfies News),
		close() {
			channel.close();
			page?.removeEventListener('visibilitychange', onVisible);
		},
	};
}
