/**
 * Lets the browser ask before it closes a page that holds what is not on disk yet. What is being typed counts: it is
 * entered first, as when one clicks beside it.
 * @returns stops it
 */
export function warnBeforeLeaving(isSaved: () => boolean): () => void {
	if (typeof window === 'undefined') return () => undefined;
	const ask = (event: BeforeUnloadEvent) => {
		const { activeElement } = document;
		if (activeElement?.matches('input, textarea')) (activeElement as HTMLElement).blur();
		if (!isSaved()) event.preventDefault();
	};
	window.addEventListener('beforeunload', ask);
	return () => window.removeEventListener('beforeunload', ask);
}
