import type { ToCopy } from './copyShows.ts';
import { LatePart } from './latePart.svelte.ts';

/** What makes second copies of shows, and puts shows back from them: nothing on the first screen needs it. */
export const copiesPart = new LatePart(() => import('./copiesPart.ts'));

/** How long after a change the copy is made, in milliseconds: typing makes many changes. */
const soonMs = 1000;
/** How many times as long as the last copies took, at least: of a large show they are made less often. */
const restShare = 30;

/** Makes a second copy of each show soon after it has changed. */
export class SecondCopying {
	#timer: ReturnType<typeof setTimeout> | undefined;
	#isClosed = false;
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
		this.#timer ??= setTimeout(() => void this.#copy(), this.#waitMs);
	}

	async #copy(): Promise<void> {
		clearTimeout(this.#timer);
		this.#timer = undefined;
		const part = await copiesPart.load();
		if (!part || this.#isClosed) return;
		const start = performance.now();
		await part.copyShows(this.#shelf).catch(() => undefined); // no room, or no place: with the next change
		this.#waitMs = Math.max(soonMs, restShare * (performance.now() - start));
	}

	close(): void {
		this.#isClosed = true;
		clearTimeout(this.#timer);
		if (typeof document !== 'undefined') document.removeEventListener('visibilitychange', this.#onHidden);
	}
}
