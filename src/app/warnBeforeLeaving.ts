/**
 * Lets the browser ask before it closes a page that holds what is not on disk yet.
 * @returns stops it
 */
export function warnBeforeLeaving(isSaved: () => boolean): () => void {
	if (typeof window === 'undefined') return () => undefined;
	const ask = (event: BeforeUnloadEvent) => {
		if (!isSaved()) event.preventDefault();
	};
	window.addEventListener('beforeunload', ask);
	return () => window.removeEventListener('beforeunload', ask);
}
