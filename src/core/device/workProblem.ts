/**
 * A sentence for work beside the screen that broke off.
 * @param what it does: "planning boards"
 * @param error as the browser puts it; nothing where the part that does it could not be loaded
 */
export const workStopped = (what: string, error?: string): string =>
	error === undefined || error === ''
		? `The part of Evenhang for ${what} could not be loaded. Check the connection and try again, or load the page again.`
		: `Something went wrong while ${what} (${error.replace(/\.$/, '')}). Try again, or load the page again.`;
