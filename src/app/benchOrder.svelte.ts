import { fewestSettings, type SetUpOrder } from '../core/bench/fewestSettings.ts';
import { orderAtHand } from '../core/bench/orderAtHand.ts';
import { type BoardSetUp, setUpKey } from '../core/bench/setUps.ts';
import { orderInWorker } from '../workers/orderInWorker.ts';

/** Up to so many set-ups all orders are weighed, which takes less time than starting a worker. */
const mostAtOnce = 12;

/** Looks for an order beside the screen. */
export type OrderSearch = typeof orderInWorker;

interface Found {
	readonly key: string;
	readonly result: SetUpOrder;
}

/**
 * The order of the set-ups of a bench. Where the fewest changes take a search, it runs beside the screen, the last one
 * wins, and until it is over the order at hand stays, with what is new put where it fits best.
 */
export class BenchOrder {
	#found = $state.raw<Found>();
	#job = $state.raw<{ readonly key: string; readonly controller: AbortController }>();
	readonly #search: OrderSearch;

	/** @param search replaced in tests */
	constructor(search: OrderSearch = orderInWorker) {
		this.#search = search;
	}

	/** Whether a search is under way. */
	get isSearching(): boolean {
		return this.#job !== undefined;
	}

	/** The order with the fewest changes, or the one at hand. */
	orderOf(setUps: readonly BoardSetUp[]): SetUpOrder {
		if (!needsSearch(setUps)) return fewestSettings(setUps);
		if (this.#found?.key === keyOf(setUps)) return this.#found.result;
		return orderAtHand(setUps, this.#found?.result.order ?? []);
	}

	/** Begins the search for these set-ups, and ends the one for others; does nothing where they are known. */
	async look(setUps: readonly BoardSetUp[]): Promise<void> {
		const key = needsSearch(setUps) ? keyOf(setUps) : undefined;
		if (key !== undefined && key === this.#job?.key) return;
		this.stop();
		if (key === undefined || key === this.#found?.key) return;
		const controller = new AbortController();
		const job = { key, controller };
		this.#job = job;
		// Where the search breaks off, the order at hand is a right one too, only not proven.
		const result = await this.#search({ setUps }, controller.signal).catch(() => undefined);
		if (this.#job !== job) return;
		this.#job = undefined;
		if (result) this.#found = { key, result };
	}

	/** Ends the search that is under way. */
	stop(): void {
		this.#job?.controller.abort(new Error('ended'));
		this.#job = undefined;
	}
}

const needsSearch = (setUps: readonly BoardSetUp[]) => setUps.length > mostAtOnce && setUps[0]!.start !== undefined;

const keyOf = (setUps: readonly BoardSetUp[]) => setUps.map(setUpKey).sort().join(';');
