const megabytes = (bytes: number): string => `${Math.max(1, Math.round(bytes / 1e6))} MB`;

/** How much of the room may be used before it is said, and how much must be left at least, in bytes. */
const warned = { share: 0.8, left: 50_000_000 };

/** Room that pictures leave for what is typed, in bytes: they can be dropped again, what is typed cannot. */
const leftForShows = 10_000_000;

/** Whether pictures have no room left; not where that is not known. @param usage and `quota`: as for `roomRunsShort` */
export const isFullOfPictures = (usage: number | undefined, quota: number | undefined): boolean =>
	usage !== undefined && quota !== undefined && quota > 0 && quota - usage < leftForShows;

/**
 * A sentence where the room that the browser gives runs short; undefined where it does not, or where that is not known.
 * @param usage and `quota`: of all that the app keeps, in bytes
 */
export function roomRunsShort(usage: number | undefined, quota: number | undefined): string | undefined {
	if (usage === undefined || quota === undefined || quota <= 0) return undefined;
	const left = Math.max(0, quota - usage);
	if (usage < quota * warned.share && left > warned.left) return undefined;
	return `Room runs short: ${megabytes(left)} of the ${megabytes(quota)} that this browser gives the app are left. Save a backup, and delete shows that are no longer needed.`;
}

/** A sentence where pictures of a file that opens were not kept. @param errorName as the browser gives it */
export const picturesLeftOut = (left: number, of: number, errorName: string): string =>
	`${left} of ${of === 1 ? '1 picture was' : `${of} pictures were`} not kept: ${pictureNotKept(errorName)}. All else is here; open the file again once they can be kept.`;

/** Why a picture could not be kept, without its name. @param errorName as the browser gives it */
export const pictureNotKept = (errorName: string): string =>
	errorName === 'QuotaExceededError'
		? 'there is no room left on this device'
		: `this device could not save it (${errorName})`;
