import { fewestSettings, type SetUpOrder } from '../core/bench/fewestSettings.ts';
import { orderSoFar } from '../core/bench/orderSoFar.ts';
import { jobKey, type OrderJob } from '../core/bench/orderJob.ts';
import { orderInWorker } from '../workers/orderInWorker.ts';

/** Up to so many set-ups the search takes less time than starting a worker. */
const mostAtOnce = 12;

/** Looks for an order beside the screen. */
export type OrderSearch = typeof orderInWorker;

interface Found {
	readonly key: string;
	readonly result: SetUpOrder;
}

/**
 * The order of the set-ups of a bench. Where the fewest changes take a search, it runs beside the screen, the last one
 * wins, and until it is over the order so far stays, with what is new put where it fits best.
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

	/** The order with the fewest changes, or the one so far. */
	orderOf(job: OrderJob): SetUpOrder {
		if (!needsSearch(job)) return fewestSettings(job);
		if (this.#found?.key === jobKey(job)) return this.#found.result;
		return orderSoFar(job, this.#found?.result.order ?? []);
	}

	/** Begins the search for these set-ups, and ends the one for others; does nothing where they are known. */
	async look(asked: OrderJob): Promise<void> {
		const key = needsSearch(asked) ? jobKey(asked) : undefined;
		if (key !== undefined && key === this.#job?.key) return;
		this.stop();
		if (key === undefined || key === this.#found?.key) return;
		const controller = new AbortController();
		const job = { key, controller };
		this.#job = job;
		// Where the search breaks off, the order so far is a right one too, only not proven.
		const result = await this.#search(asked, controller.signal).catch(() => undefined);
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

/** With a guide alone, what waits for nothing asks no search. */
const needsSearch = ({ setUps }: OrderJob): boolean =>
	setUps.length > mostAtOnce && (setUps[0]!.start !== undefined || setUps.some(({ isTaped }) => isTaped));
