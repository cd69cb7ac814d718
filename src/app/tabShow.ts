const key = 'evenhang show';

/** The show that was open in this tab, so that two tabs with different shows each open theirs again. */
export function showOfTab(): string | undefined {
	try {
		return sessionStorage.getItem(key) ?? undefined;
	} catch {
		return undefined; // the browser keeps nothing for this page: the show that was open last is opened
	}
}

/** Remembers which show is open in this tab. */
export function rememberShowOfTab(id: string): void {
	try {
		sessionStorage.setItem(key, id);
	} catch {
		// As above.
	}
}
