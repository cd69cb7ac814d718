/** What all these sentences end with: nothing is lost, and there are two things to do. */
const still = 'What you have saved is still on this device.';

/** A sentence for a part of the app that did not come, or came as something else. */
export const partMissing = (part: string): string =>
	`A part of Evenhang could not be loaded (${part}). Check the connection, then load the page again. ${still}`;

/** Said while a part of the app is being loaded. */
export const partLate = 'Opening…';

/** A sentence for a part of the app that did not come when it was wanted; all the rest goes on. */
export const partNotHere = `This part of Evenhang could not be loaded. Check the connection, then try again, or load the page again. ${still}`;

/** A sentence for an error of the app's own. @param error as the browser puts it; empty where it says nothing */
export const hasStopped = (error: string): string =>
	`Evenhang has stopped${error === '' ? '' : ` (${error.replace(/\.$/, '')})`}. Load the page again. ${still}`;

/** A sentence for a device that does not answer when the show is to be opened. */
export const storageSilent = `What is saved on this device has not opened yet. Close Evenhang in other tabs, then load the page again. ${still}`;

/** A sentence for what is stored having been saved as a file, without the app. */
export const storedSaved = (shows: number, unread: number, fileName: string): string => {
	const left = unread === 0 ? '' : ` ${unread} damaged ${unread === 1 ? 'record is' : 'records are'} in it as stored.`;
	return `${shows} ${shows === 1 ? 'show' : 'shows'} saved as “${fileName}”.${left} Evenhang opens this file under Shows, on any device.`;
};

/** A sentence for there being nothing to save. */
export const nothingStored = 'Nothing is stored on this device yet.';

/** A sentence for what is stored not having been read. @param error the name of the error */
export const storedNotRead = (error: string): string =>
	`What is stored could not be read (${error}). Close Evenhang in other tabs, then try again.`;
