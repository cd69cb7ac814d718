/** Asks the version that waits to start. Pages of every version before say it so. */
export interface StartRequest {
	readonly type: 'SKIP_WAITING';
}

/** Asks whether every file is kept; the answer comes on the port that is sent along. What is not kept is fetched first. */
export interface CheckRequest {
	readonly type: 'CHECK';
	/** The address of the script with which the page that asks was started. */
	readonly script: string;
}

/** The answer to a `CheckRequest`. */
export interface CheckAnswer {
	/** Whether every file is kept, exactly as it was built. */
	readonly isWhole: boolean;
	/** Whether the page is of the version that answers. */
	readonly isOfPage: boolean;
}

/** What a page may say to the service worker. */
export type Request = StartRequest | CheckRequest;

const lockPrefix = 'evenhang page ';

/**
 * The name of the lock that a page shares in as long as it is open: the files of its version are kept until then.
 * @param script the address of the script with which the page was started
 */
export const lockOfPage = (script: string): string => lockPrefix + script;

/** The script of the page that holds a lock; undefined where the lock is another one. */
export const pageOfLock = (name: string): string | undefined =>
	name.startsWith(lockPrefix) ? name.slice(lockPrefix.length) : undefined;

/** The cache in which the service worker leaves what another app has shared with this one. */
export const sharedFiles = 'evenhang-shared';

/** What the address of the page says of `shared` where it could not be kept. */
export const sharedNotKept = 'not-kept';

/** The header of a shared file in which its name stands, encoded. */
export const sharedName = 'x-file-name';
