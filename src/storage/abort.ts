/** Undoes all that a transaction has done, unless it has failed and done so by itself. */
export function abort(tx: { abort(): void }): void {
	try {
		tx.abort();
	} catch (cause) {
		if ((cause as DOMException).name !== 'InvalidStateError') throw cause;
	}
}
