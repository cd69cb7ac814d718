import type { ToCopy } from './copyShows.ts';
import { LatePart } from './latePart.svelte.ts';

/** What makes second copies of shows, and puts shows back from them: nothing on the first screen needs it. */
export const copiesPart = new LatePart(() => import('./copiesPart.ts'));

/** How long after a change the copy is made, in milliseconds: typing makes many changes. */
const soonMs = 1000;
/** How many times as long as the last copies took, at least: of a large show they are made less often. */
const restShare = 30;
/** How long after a change it is made at the latest: copying takes long, too, where another tab is at it, or sleeps. */
const latestMs = 60_000;

/** Makes a second copy of each show soon after it has changed. */
export class SecondCopying {
	#timer: ReturnType<typeof setTimeout> | undefined;
	#isClosed = false;
	#isCopying = false;
	#isChanged = false;
	#waitMs = soonMs;
	readonly #shelf: ToCopy;
	readonly #onHidden = () => {
		if (document.visibilityState === 'hidden' && this.#timer !== undefined) void this.#copy();
	};

	constructor(shelf: ToCopy) {
		this.#shelf = shelf;
		if (typeof document !== 'undefined') document.addEventListener('visibilitychange', this.#onHidden);
	}

	/** Something has changed. */
	changed(): void {
		if (this.#isClosed || typeof caches === 'undefined') return;
		// Copies that wait for another tab must not queue up.
		if (this.#isCopying) this.#isChanged = true;
		else this.#timer ??= setTimeout(() => void this.#copy(), this.#waitMs);
	}

	async #copy(): Promise<void> {
		clearTimeout(this.#timer);
		this.#timer = undefined;
		const part = await copiesPart.load();
		if (!part || this.#isClosed || this.#isCopying) return;
		this.#isCopying = true;
		const start = performance.now();
		await part.copyShows(this.#shelf).catch(() => undefined); // no room, or no place: with the next change
		this.#waitMs = Math.min(latestMs, Math.max(soonMs, restShare * (performance.now() - start)));
		this.#isCopying = false;
		if (!this.#isChanged) return;
		this.#isChanged = false;
		this.changed();
	}

	close(): void {
		this.#isClosed = true;
		clearTimeout(this.#timer);
		if (typeof document !== 'undefined') document.removeEventListener('visibilitychange', this.#onHidden);
	}
}
