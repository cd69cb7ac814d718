/**
 * One sentence for an edit that could not be kept on the device.
 * @param name the name of the error, as the browser gives it
 */
export function notKept(name: string): string {
	const still = 'What you type stays here until you close the page, and the app keeps trying to save it.';
	switch (name) {
		case 'QuotaExceededError':
			return `There is no room left on this device to save the show. ${still} Save the show as a file, or make room.`;
		case 'VersionError':
			return 'Another tab has opened a newer version of this app. Save the show as a file, then load this page again.';
		case 'SecurityError':
		case 'NotSupportedError':
			return 'Not saved. This browser lets the page store nothing, as in a private window. Save the show as a file before you close the page.';
		default:
			return `The show could not be saved on this device (${name}). ${still} Save the show as a file.`;
	}
}

/** One sentence for something asked of the shelf of shows that could not be done: all of it is as it was. */
export function notDone(name: string): string {
	switch (name) {
		case 'QuotaExceededError':
			return 'There is no room left on this device. Nothing has changed. Make room, or back up and delete what is no longer needed.';
		case 'VersionError':
			return 'Another tab has opened a newer version of this app. Nothing has changed. Load this page again.';
		case 'ShowMissing':
			return 'This show is no longer on this device. Another tab deleted it.';
		default:
			return `This device could not do that (${name}). Nothing has changed. Try it again, or load the page again.`;
	}
}

/** One sentence for a show that cannot be opened, with nothing lost of what is kept. */
export function notOpened(name: string): string {
	switch (name) {
		case 'VersionError':
			return 'A newer version of this app has been used here, and this one cannot read what it keeps. Load the page again to get the newer one.';
		default:
			return `What is saved on this device cannot be opened just now (${name}). Load the page again.`;
	}
}

/** A sentence for damaged records that were put aside. */
export const recordsPutAside = (count: number): string =>
	count === 1
		? 'One damaged record was set aside. Everything else has opened. Save the damaged record as a file to keep it.'
		: `${count} damaged records were set aside. Everything else has opened. Save the damaged records as a file to keep them.`;

/** One sentence for an opening that waits for other tabs. */
export const otherTabsInTheWay = 'Close this app in all other tabs. It is waiting to update your saved shows.';
