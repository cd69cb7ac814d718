/** How a session ends: it is open, then closing, then closed. Where it cannot close, it is open again. */
export class SessionEnd {
	#state = $state.raw<'open' | 'closing' | 'closed'>('open');
	#closing: Promise<void> | undefined;
	#ending = new AbortController();

	get state(): 'open' | 'closing' | 'closed' {
		return this.#state;
	}

	/** Aborted when closing begins; where that fails there is another. */
	get signal(): AbortSignal {
		return this.#ending.signal;
	}

	/**
	 * Closes, once however often it is asked to.
	 * @param flush what has to be done first; where it rejects, so does this, and all is open as before
	 * @param letGo called at the moment in which it is closed
	 */
	close(flush: () => Promise<void>, letGo: () => void): Promise<void> {
		return (this.#closing ??= this.#close(flush, letGo));
	}

	async #close(flush: () => Promise<void>, letGo: () => void): Promise<void> {
		this.#state = 'closing';
		this.#ending.abort(new DOMException('The show has been closed.', 'AbortError'));
		try {
			await flush();
		} catch (cause) {
			this.#state = 'open';
			this.#closing = undefined;
			this.#ending = new AbortController();
			throw cause;
		}
		this.#state = 'closed';
		letGo();
	}
}
