import type { Exchange } from '../core/merge/exchange.ts';
import type { GivenNotes } from './outliving.ts';

/** What a show was exchanged as with others. */
export class Exchanges {
	readonly #store: Pick<GivenNotes, 'exchanges' | 'keepExchange'>;
	readonly #showId: string;

	constructor(store: Pick<GivenNotes, 'exchanges' | 'keepExchange'>, showId: string) {
		this.#store = store;
		this.#showId = showId;
	}

	/** Those that stand, newest first. */
	all(): Promise<readonly Exchange[]> {
		return this.#store.exchanges(this.#showId);
	}

	/** @param stands false for one that an edit is to name */
	keep(exchange: Exchange, stands: boolean): Promise<void> {
		return this.#store.keepExchange(this.#showId, exchange, stands);
	}
}
