let isAsked = false;

/**
 * Asks the browser, once, to keep what is stored here even when room runs short. Some browsers ask the person, so it
 * comes when there is something to keep, not at the first sight of the page.
 */
export function askToPersist(): void {
	if (isAsked || typeof navigator === 'undefined' || !('storage' in navigator)) return;
	isAsked = true;
	navigator.storage.persist().catch(() => undefined); // a refusal changes nothing that is done here
}
