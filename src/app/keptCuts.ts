import { type SetCut, windowCuts } from '../core/bench/windowCuts.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import type { Settings } from '../core/settings/settings.ts';

/** The cuts of rows, kept for as long as their results, places and settings are the same: in a long show most are. */
export class KeptCuts {
	readonly #known = new WeakMap<
		RowResult,
		{ readonly number: number; readonly settings: Settings; readonly cuts: readonly SetCut[] }
	>();
	/** The set-ups that were met under the latest settings: thousands of rows are cut at the same few. */
	readonly #met = new Map<string, Omit<SetCut, 'cut'>>();
	#settings: Settings | undefined;

	/** As `windowCuts`. */
	readonly of: typeof windowCuts = (result, number, settings) => {
		const known = this.#known.get(result);
		if (known?.number === number && known.settings === settings) return known.cuts;
		if (settings !== this.#settings) this.#met.clear();
		this.#settings = settings;
		const cuts = windowCuts(result, number, settings).map((each) => this.#asMet(each));
		this.#known.set(result, { number, settings, cuts });
		return cuts;
	};

	/** Works out the cuts of all rows ahead, a row at each step: less is then to be done at once when they are ordered. */
	*ahead(results: readonly RowResult[], settings: Settings, isStopped: () => boolean): Generator<void, void> {
		for (let place = 0; place < results.length && !isStopped(); place++)
			yield void this.of(results[place]!, place + 1, settings);
	}

	/** A cut with the set-up that was met first. */
	#asMet({ key, setUp, cut }: SetCut): SetCut {
		let met = this.#met.get(key);
		if (!met) this.#met.set(key, (met = { key, setUp }));
		return { key: met.key, setUp: met.setUp, cut };
	}
}
